import {
  type ShoulderLoad,
  type ShoulderStroke,
  shoulderLoad,
  shoulderStrokes,
} from '../../core/figures/shoulder-load.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { today } from '../device/clock.ts';
import { qualityWords } from '../words/quality-words.ts';
import { words } from '../words/words.ts';
import { careBars } from './care-bars.ts';

/** A player's overheads and serves a week beside the own usual, with its one sentence of caution. */
export function CarePart({ summaries, player }: { summaries: readonly Summary[]; player: string }) {
  const t = qualityWords.value.care;
  const load = shoulderLoad(summaries, today(), player);
  const unheard = load.weeks.at(-1)?.unheard ?? 0;
  return (
    <section class="part" aria-labelledby="care">
      <h2 id="care">{t.title}</h2>
      <p class="small">{t.means}</p>
      {shoulderStrokes.map((stroke) => (
        <Weeks key={stroke} load={load} stroke={stroke} />
      ))}
      {unheard > 0 && <p class="small">{t.unheard(unheard)}</p>}
      <p>{t.caution}</p>
    </section>
  );
}

function Weeks({ load, stroke }: { load: ShoulderLoad; stroke: ShoulderStroke }) {
  const t = qualityWords.value.care;
  const { bars, usual } = careBars(load, stroke);
  const told = load.weeks.map(({ week: { week }, struck }) =>
    struck ? t.inWeek(week, struck[stroke]) : t.notInWeek(week),
  );
  return (
    <div>
      <h3>{t.strokes[stroke]}</h3>
      <p class="small">{load.usual ? t.usual(load.usual[stroke]) : t.noUsual}</p>
      <div
        class="care-weeks"
        role="img"
        aria-label={words.value.named(t.strokes[stroke], words.value.list(told))}
      >
        {bars.map((bar, at) => (
          <i
            key={at}
            data-none={bar === undefined || undefined}
            style={{ blockSize: `${100 * (bar ?? 0)}%` }}
          />
        ))}
        {usual !== undefined && <b style={{ insetBlockEnd: `${100 * usual}%` }} />}
      </div>
      <div class="care-numbers" aria-hidden="true">
        {load.weeks.map(({ week: { week }, struck }) => (
          <span key={week}>
            <b class="number">{struck ? words.value.number(struck[stroke]) : t.noRound}</b>
            <span class="small faint">{t.week(week)}</span>
          </span>
        ))}
      </div>
    </div>
  );
}
