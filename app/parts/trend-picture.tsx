import type { PracticeTrend } from '../../core/figures/practice-trend.ts';
import { figureWords } from '../words/figure-words.ts';
import { Explained } from './explained.tsx';
import { Graph } from './graph.tsx';
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
        <Graph
          size={[WIDTH, HEIGHT]}
          label={t.plot(points.length, t.percent(plot.bottom), t.percent(plot.top))}
          top={t.percent(plot.top)}
          bottom={t.percent(plot.bottom)}
          ends={
            <>
              <span>{t.shortDate(first.date)}</span>
              <Explained of="practices">{t.practices(points.length)}</Explained>
              <span>{t.shortDate(last.date)}</span>
            </>
          }
        >
          {plot.line && (
            <path
              class="graph-line"
              d={`M${plot.line.from.x} ${plot.line.from.y}L${plot.line.to.x} ${plot.line.to.y}`}
            />
          )}
          <path class="graph-dots" d={plot.dots.map(({ x, y }) => `M${x} ${y}h0`).join('')} />
        </Graph>
      )}
    </div>
  );
}
