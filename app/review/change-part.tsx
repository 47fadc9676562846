import type { Change } from '../../core/figures/change.ts';
import type { ChangeReview } from '../../core/figures/review.ts';
import { Explained } from '../parts/explained.tsx';
import { drillName } from '../words/drill-text.ts';
import { figureWords } from '../words/figure-words.ts';
import { kindName } from '../words/kind-name.ts';
import { sayChange } from './say-change.ts';

/** How a player's sets a minute compare with those of the span before. */
export function ChangePart({ changes, weeks }: { changes: ChangeReview[]; weeks: number }) {
  const t = figureWords.value.review;
  return (
    <section class="part" aria-labelledby="change">
      <h2 id="change">{t.change}</h2>
      <p class="small">{t.changeNote(weeks)}</p>
      {changes.every(({ change }) => !change) && <p>{t.noChange}</p>}
      <dl class="review-figures">
        {changes.flatMap((work) => [
          <ChangeRow key={kindName(work)} name={kindName(work)} change={work.change} />,
          ...work.drills.map(({ terms, change }) => (
            <ChangeRow
              key={`${terms.drill} ${terms.rule} ${terms.size}`}
              name={`${drillName(terms)}, ${figureWords.value.sized[terms.rule](terms.size)}`}
              change={change}
              within
            />
          )),
        ])}
      </dl>
    </section>
  );
}

function ChangeRow({
  name,
  change,
  within = false,
}: {
  name: string;
  change: Change | undefined;
  within?: boolean;
}) {
  if (!change) return null;
  const { word, ratio } = sayChange(change);
  return (
    <div class={within ? 'review-within' : undefined}>
      <dt class="break">{name}</dt>
      <dd>
        <Explained of="change">
          {ratio === undefined ? word : !within && <b>{word} · </b>}
          {ratio}
        </Explained>
      </dd>
    </div>
  );
}
