import { addDays, daysBetween } from '../../core/calendar.ts';
import type { LinePoint } from '../../core/figures/level-line.ts';
import type { PracticePoint } from '../../core/figures/practice-trend.ts';
import { Graph } from '../parts/graph.tsx';
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
      <Graph
        size={[chart.width, chart.height]}
        label={`${t.line(percent(first.share), percent(last.share), Math.round(first.weeksAgo))} ${t.dots(dots.length)}`}
        top={percent(chart.top)}
        bottom={percent(chart.bottom)}
        ends={
          <>
            <span>{shortDate(addDays(end, -days))}</span>
            <span>{shortDate(end)}</span>
          </>
        }
      >
        <path class="line-band" d={chart.band} />
        <path class="graph-line" d={chart.path} />
        <path class="graph-dots" d={chart.dots} />
      </Graph>
    </figure>
  );
}
