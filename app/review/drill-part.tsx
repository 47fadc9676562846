import { reviewDrills } from '../../core/figures/review.ts';
import { isOnTarget, type Stint } from '../../core/figures/stints.ts';
import { Consistent, Touches } from '../parts/figure.tsx';
import { drillName } from '../words/drill-text.ts';
import { figureWords } from '../words/figure-words.ts';
import { SetsRow, TouchesRow } from './rates.tsx';

/** What some stints come to, drill by drill; sets a minute for each size of a set by itself. */
export function DrillPart({ stints }: { stints: Stint[] }) {
  const f = figureWords.value;
  const t = f.review;
  if (stints.length === 0) return null;
  return (
    <section class="part" aria-labelledby="by-drill">
      <h2 id="by-drill">{t.byDrill}</h2>
      {reviewDrills(stints).map((drill) => {
        const onTarget = isOnTarget(drill);
        const { rule } = drill.terms;
        return (
          <details key={`${drill.terms.drill} ${rule}`} class="review-drill">
            <summary class="break">
              <h3>{drillName(drill.terms)}</h3>
            </summary>
            <dl class="review-figures">
              {drill.consistency && (
                <div>
                  <dt>{onTarget ? f.meetsTarget : f.comesBack}</dt>
                  <dd>
                    <Consistent known={drill.consistency} onTarget={onTarget} />
                  </dd>
                </div>
              )}
              {drill.sizes.map(({ size, rates }) => (
                <SetsRow key={size} rates={rates} sized={f.sized[rule](size)} />
              ))}
              <TouchesRow rates={drill.rates} />
              <div>
                <dt>{t.touches}</dt>
                <dd>
                  <Touches touches={drill.rates.touches} />
                </dd>
              </div>
            </dl>
          </details>
        );
      })}
    </section>
  );
}
