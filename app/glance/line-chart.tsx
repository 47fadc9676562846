import { addDays, daysBetween } from '../../core/calendar.ts';
import type { LinePoint } from '../../core/figures/level-line.ts';
import type { PracticePoint } from '../../core/figures/practice-trend.ts';
import { figureWords } from '../words/figure-words.ts';
import { lookWords } from '../words/look-words.ts';
import { lineChart } from './chart-paths.ts';

/** A level over its weeks, with the practices of these weeks as dots; ends on the day given. */
export function LineChart({
  line,
  points,
  end,
}: {
  line: readonly LinePoint[];
  points: readonly PracticePoint[];
  end: string;
}) {
  const { percent, pictures: t } = lookWords.value;
  const { shortDate } = figureWords.value;
  const [first, last] = [line[0], line.at(-1)];
  if (!first || !last) return null;
  const days = Math.round(7 * first.weeksAgo);
  const dots = points
    .map(({ date, value }) => ({ daysAgo: daysBetween(date, end), value }))
    .filter(({ daysAgo }) => daysAgo >= 0 && daysAgo <= days);
  const chart = lineChart(line, dots);
  return (
    <figure class="line-chart">
      <span class="small number line-top">{percent(chart.top)}</span>
      <svg
        viewBox={`0 0 ${chart.width} ${chart.height}`}
        preserveAspectRatio="none"
        role="img"
        aria-label={`${t.line(percent(first.share), percent(last.share), Math.round(first.weeksAgo))} ${t.dots(dots.length)}`}
      >
        <path class="line-band" d={chart.band} />
        <path class="line-trace" d={chart.path} />
        <path class="line-dots" d={chart.dots} />
      </svg>
      <span class="small number line-bottom">{percent(chart.bottom)}</span>
      <figcaption class="small">
        <span>{shortDate(addDays(end, -days))}</span>
        <span>{shortDate(end)}</span>
      </figcaption>
    </figure>
  );
}
