import { isoWeek, weekDays, weekStep } from '../../core/calendar.ts';
import { trainingWeek } from '../../core/figures/training-load.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { today } from '../device/clock.ts';
import { qualityWords } from '../words/quality-words.ts';

/** The present week and the three before. */
const WEEKS = [0, -1, -2, -3];

/** A player's training load by week, newest first, with what it can and cannot say. */
export function LoadPart({ summaries, player }: { summaries: readonly Summary[]; player: string }) {
  const t = qualityWords.value.effort;
  const now = today();
  const weeks = WEEKS.map((by) => {
    const { year, week } = weekStep(isoWeek(now), by);
    const dates = weekDays(year, week);
    return { dates, ...trainingWeek(summaries, dates, by < 0, player) };
  });
  return (
    <section class="part" aria-labelledby="load">
      <h2 id="load">{t.load}</h2>
      <dl class="quality-facts">
        {weeks.map(({ dates, practices, untold, load, monotony, strain }) => (
          <div key={dates[0]}>
            <dt>{t.week(dates[0] ?? now, dates[6] ?? now)}</dt>
            <dd>
              {practices === 0
                ? t.noPractice
                : load === undefined
                  ? t.untold(untold)
                  : [
                      t.loadIs(load),
                      monotony !== undefined && strain !== undefined
                        ? t.monotony(monotony, strain)
                        : t.noSpread,
                    ].join('; ')}
            </dd>
          </div>
        ))}
      </dl>
      <p class="small faint">{t.loadMeans}</p>
      <p class="small faint">{t.monotonyMeans}</p>
    </section>
  );
}
