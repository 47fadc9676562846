import type { PracticeTrend } from '../../core/figures/practice-trend.ts';
import { figureWords } from '../words/figure-words.ts';
import { Explained } from './explained.tsx';
import { HEIGHT, plotOf, WIDTH } from './plot.ts';
import './trend-picture.css';

/** A trend in one word over the dots that it rests on, one a practice. */
export function TrendPicture({ name, trend }: { name: string; trend: PracticeTrend }) {
  const t = figureWords.value;
  const { points, word } = trend;
  const plot = plotOf(points, word === 'too-few' ? undefined : trend.trend);
  const [first, last] = [points[0], points.at(-1)];
  return (
    <div class="trend">
      <p class="trend-name">
        <span class="grow break">{name}</span>
        <Explained of="trend">
          <b>{t.trendWords[word]}</b>
        </Explained>
      </p>
      {!plot || !first || !last ? (
        <p class="small">{t.noPoint}</p>
      ) : (
        <>
          <div class="trend-plot">
            <span class="small number">{t.percent(plot.top)}</span>
            <svg
              viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
              preserveAspectRatio="none"
              role="img"
              aria-label={t.plot(points.length, t.percent(plot.bottom), t.percent(plot.top))}
            >
              {plot.line && (
                <path
                  class="trend-line"
                  d={`M${plot.line.from.x} ${plot.line.from.y}L${plot.line.to.x} ${plot.line.to.y}`}
                />
              )}
              <path class="trend-dots" d={plot.dots.map(({ x, y }) => `M${x} ${y}h0`).join('')} />
            </svg>
            <span class="small number">{t.percent(plot.bottom)}</span>
          </div>
          <p class="trend-ends small">
            <span>{t.shortDate(first.date)}</span>
            <Explained of="practices">{t.practices(points.length)}</Explained>
            <span>{t.shortDate(last.date)}</span>
          </p>
        </>
      )}
    </div>
  );
}
