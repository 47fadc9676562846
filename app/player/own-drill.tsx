import { countsByPlayer } from '../../core/drill/counting-rules.ts';
import { sumEstimates } from '../../core/figures/all-touches.ts';
import { pooledConsistency } from '../../core/figures/pooled.ts';
import type { Stint } from '../../core/figures/stints.ts';
import type { OwnWork } from '../../core/figures/usual.ts';
import { Explained } from '../parts/explained.tsx';
import { Consistent, Touches } from '../parts/figure.tsx';
import { drillName } from '../words/drill-text.ts';
import { figureWords } from '../words/figure-words.ts';
import { lookWords } from '../words/look-words.ts';
import { words } from '../words/words.ts';
import { OwnMeasure } from './own-measure.tsx';

/** What a player did at one drill in the stints given, beside the player's own usual and best. */
export function OwnDrill({ work, stints }: { work: OwnWork; stints: Stint[] }) {
  const t = lookWords.value.player;
  const f = figureWords.value;
  const { terms, usual, best } = work;
  const onTarget = countsByPlayer(terms.rule);
  const known = pooledConsistency(stints);
  return (
    <section class="part">
      <h2 class="break">{drillName(terms)}</h2>
      <p class="small faint">{words.value.setCounts(terms.rule, terms.size)}</p>
      <Counts work={work} />
      <dl class="own-kinds">
        <div>
          <dt>{t.touches}</dt>
          <dd>
            <Touches touches={sumEstimates(stints)} />
          </dd>
        </div>
        {known && (
          <div>
            <dt>{onTarget ? f.meetsTarget : f.comesBack}</dt>
            <dd>
              <Consistent known={known} onTarget={onTarget} />
            </dd>
          </div>
        )}
      </dl>
      <OwnMeasure work={work} />
      {usual === undefined || best === undefined ? (
        <p>{t.first}</p>
      ) : (
        <p class="own-signs">
          <Explained of="usual">
            <i class="own-usual" /> {t.usual(usual)}
          </Explained>
          <Explained of="best">
            <i class="own-best" /> {t.best(best)}
          </Explained>
        </p>
      )}
      {work.beaten && <p class="own-beaten">{t.newBest}</p>}
    </section>
  );
}

function Counts({ work: { terms, sets } }: { work: OwnWork }) {
  const t = lookWords.value.player;
  const onTarget = countsByPlayer(terms.rule);
  if (sets === 0) return <p>{onTarget ? t.noneOnTarget : t.noSet}</p>;
  return (
    <p class="own-counts">
      <Explained of="sets">
        <b class="number">{words.value.number(sets)}</b> {onTarget ? t.onTarget : t.sets(sets)}
      </Explained>
    </p>
  );
}
