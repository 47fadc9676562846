import type { OwnWork } from '../../core/figures/usual.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import { measure } from './measure.ts';

/** What a player did at one drill, beside the player's own usual and best. */
export function OwnDrill({ work }: { work: OwnWork }) {
  const t = words.value.player;
  const { terms, usual, best } = work;
  return (
    <section class="part">
      <h2 class="break">{drillName(terms)}</h2>
      <p class="small faint">{words.value.setCounts(terms.rule, terms.size)}</p>
      <Counts work={work} />
      <Picture work={work} />
      {usual === undefined || best === undefined ? (
        <p>{t.first}</p>
      ) : (
        <p class="own-signs">
          <span>
            <i class="own-usual" /> {t.usual(usual)}
          </span>
          <span>
            <i class="own-best" /> {t.best(best)}
          </span>
        </p>
      )}
      {work.beaten && <p class="own-beaten">{t.newBest}</p>}
    </section>
  );
}

function Counts({ work: { terms, sets, touches } }: { work: OwnWork }) {
  const t = words.value.player;
  const onTarget = terms.rule === 'on-target';
  if (sets === 0) return <p>{onTarget ? t.noneOnTarget : t.noSet}</p>;
  return (
    <p class="own-counts">
      <span>
        <b class="number">{words.value.number(sets)}</b> {onTarget ? t.onTarget : t.sets(sets)}
      </span>
      {!onTarget && (
        <span>
          <b class="number">{words.value.number(touches)}</b> {t.touchesOf(touches)}
        </span>
      )}
    </p>
  );
}

/** Today as a painted line, with the signs of usual and best where they stand on it. */
function Picture({ work }: { work: OwnWork }) {
  const at = measure(work);
  if (!at) return null;
  const part = (share: number) => `${100 * share}%`;
  return (
    <div class="own-measure" aria-hidden="true">
      <div class="own-line" style={{ inlineSize: part(at.sets) }} />
      <i class="own-usual" style={{ insetInlineStart: part(at.usual) }} />
      <i class="own-best" style={{ insetInlineStart: part(at.best) }} />
    </div>
  );
}
