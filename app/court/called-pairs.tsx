import type { OpenRound } from '../../core/ledger/practice.ts';
import { library } from '../ledger.ts';
import { Letter } from '../parts/letter.tsx';
import { PairNames } from '../parts/pair-names.tsx';
import { textOf } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import './called-pairs.css';

/** The pairs that count for themselves, and the cue: what a coach looks at while nothing is tapped. */
export function CalledPairs({
  round,
  turned,
  whole,
}: {
  round: OpenRound;
  turned: boolean;
  whole: boolean;
}) {
  const drill = library.value.drills.get(round.terms.drill);
  const called = round.tallies.filter(({ pair }) => round.called.includes(pair.letter));
  return (
    <section class="called" data-whole={whole || undefined}>
      <ul class="called-pairs">
        {called.map(({ pair }) => (
          <li key={pair.letter}>
            <Letter letter={pair.letter} />
            <span class="break pair-list">
              <PairNames
                players={pair.players}
                terms={round.terms}
                turned={turned && round.turns}
              />
            </span>
          </li>
        ))}
      </ul>
      {whole && drill && <p class="called-cue">{textOf(drill).cue}</p>}
      <p class="small">{words.value.court.calledMeans}</p>
    </section>
  );
}
