import { FEWEST_LOOKS, ownFoci } from '../../core/figures/focus-held.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { timesHeld } from '../words/focus-text.ts';
import { qualityWords } from '../words/quality-words.ts';
import { HeldFacts } from './foci-part.tsx';
import './quality.css';

/**
 * How one player holds what was looked at in the last four weeks, in words that help.
 *
 * @param coach whether the coach reads it: then with the share, its limits and its change
 */
export function OwnFociHeld({
  summaries,
  player,
  coach = false,
}: {
  summaries: readonly Summary[];
  player: string;
  coach?: boolean;
}) {
  const t = qualityWords.value.looks;
  const foci = ownFoci(summaries, player);
  if (foci.length === 0) return null;
  return (
    <section class="part" aria-labelledby="own-foci">
      <h2 id="own-foci">{t.ownTitle}</h2>
      {foci.map((focus) => {
        const { held, looks } = focus.now;
        return (
          <div key={focus.focus}>
            <p class="break">
              <b>{timesHeld(focus.focus, held, looks)}</b>
            </p>
            {coach ? (
              <HeldFacts focus={focus} />
            ) : (
              looks < FEWEST_LOOKS && <p class="small">{t.fewOwn}</p>
            )}
          </div>
        );
      })}
    </section>
  );
}
