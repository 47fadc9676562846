import { reviewWork } from '../../core/figures/review.ts';
import type { Stint } from '../../core/figures/stints.ts';
import { Consistent, Touches } from '../parts/figure.tsx';
import { figureWords } from '../words/figure-words.ts';
import { kindName } from '../words/kind-name.ts';
import { SetsRow, TouchesRow } from './rates.tsx';

/** What some stints come to, by kind of work. */
export function WorkPart({ stints, note }: { stints: Stint[]; note: string }) {
  const f = figureWords.value;
  const t = f.review;
  return (
    <section class="part" aria-labelledby="by-kind">
      <h2 id="by-kind">{t.byKind}</h2>
      <p class="small">{note}</p>
      {stints.length === 0 && <p>{t.noneInSpan}</p>}
      {reviewWork(stints).map((work) => (
        <div key={kindName(work)} class="review-work">
          <h3>{kindName(work)}</h3>
          <dl class="review-figures">
            {work.consistency && (
              <div>
                <dt>{work.onTarget ? f.meetsTarget : f.comesBack}</dt>
                <dd>
                  <Consistent known={work.consistency} onTarget={work.onTarget} />
                </dd>
              </div>
            )}
            <SetsRow rates={work.rates} />
            <TouchesRow rates={work.rates} />
            <div>
              <dt>{t.touches}</dt>
              <dd>
                <Touches touches={work.rates.touches} />
              </dd>
            </div>
          </dl>
        </div>
      ))}
    </section>
  );
}
