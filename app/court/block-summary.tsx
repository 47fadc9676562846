import { sumEstimates } from '../../core/figures/all-touches.ts';
import { pairStints } from '../../core/figures/stints.ts';
import { byDrill } from '../../core/figures/totals.ts';
import { estimated } from '../estimates.ts';
import { Explained } from '../parts/explained.tsx';
import { Touches } from '../parts/figure.tsx';
import { openPractice } from '../practices.ts';
import { drillName } from '../words/drill-text.ts';
import { figureWords } from '../words/figure-words.ts';
import { words } from '../words/words.ts';
import './block-summary.css';

/** What the whole squad did in the block of today, at the end of it. */
export function BlockSummary() {
  const f = figureWords.value;
  const t = f.block;
  const practice = openPractice.value;
  const today = estimated.value.filter((summary) => summary.practice === practice?.id);
  const stints = pairStints(today);
  if (stints.length === 0) return null;
  const touches = sumEstimates(stints);
  return (
    <section class="part" aria-labelledby="block-figures">
      <h2 id="block-figures">{t.title}</h2>
      <p class="block-touches">
        <Touches touches={touches} /> {t.touches}
      </p>
      {touches.waiting > 0 && <p class="small">{f.beingWorkedOut(touches.waiting)}</p>}
      <dl class="block-drills">
        {[...byDrill(today)].map(([drill, { terms, rounds, sets }]) => (
          <div key={drill}>
            <dt class="break">{drillName(terms)}</dt>
            <dd>
              <Explained of="rounds">{words.value.today.rounds(rounds)}</Explained>
              <Explained of="sets">{t.sets(sets)}</Explained>
              <Touches
                touches={sumEstimates(stints.filter((stint) => stint.terms.drill === drill))}
              />
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
