import { countsByPlayer } from '../../core/drill/counting-rules.ts';
import type { Drill } from '../../core/drill/drill.ts';
import type { Step } from '../../core/round/block.ts';
import type { Pair } from '../../core/round/pair.ts';
import { lettered } from '../../core/round/pairs.ts';
import { textOf } from '../words/drill-text.ts';
import { planningWords } from '../words/planning-words.ts';

/** Where nobody is ticked as here yet, paper has room for six pairs of two. */
const UNKNOWN = lettered(Array.from({ length: 6 }, () => ['', '']));

/**
 * A page of its own to tally on: a row a round, a box a pair, or a player where each counts alone.
 * Where partners turn, later rounds have other pairs under the same letters.
 */
export function TallyBoxes({
  steps,
  pairs,
}: {
  steps: readonly { step: Step; drill: Drill }[];
  pairs: readonly Pair[] | undefined;
}) {
  const t = planningWords.value.sheet;
  const columns = pairs ?? UNKNOWN;
  const rounds = steps.flatMap(({ step, drill }) =>
    Array.from({ length: step.rounds }, () => drill),
  );
  return (
    <section class="sheet-tally">
      <h2>{t.tally}</h2>
      <p>{t.tallyMeans}</p>
      <table aria-label={t.tally}>
        <thead>
          <tr>
            <td />
            {columns.map(({ letter }) => (
              <th key={letter} scope="col">
                {letter}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rounds.map((drill, at) => (
            <tr key={at}>
              <th scope="row" class="break">
                {at + 1}. {textOf(drill).name}
              </th>
              {columns.map(({ letter, players }) => (
                <td key={letter}>
                  {countsByPlayer(drill.rule) && (
                    <span class="sheet-boxes">
                      {players.map((_, place) => (
                        <small key={place}>{place + 1}</small>
                      ))}
                    </span>
                  )}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
