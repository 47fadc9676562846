import type { AllTouches } from '../../core/figures/all-touches.ts';
import type { PooledConsistency } from '../../core/figures/pooled.ts';
import { figureWords } from '../words/figure-words.ts';
import { Explained } from './explained.tsx';

/** All touches in words: "at least 94, about 210 (190 to 232)". Nothing is said that is not known. */
export function Touches({ touches: { counted, all, doubted } }: { touches: AllTouches }) {
  const t = figureWords.value;
  return (
    <>
      <Explained of={all ? 'touches' : 'counted'}>
        {t.atLeast} <b class="number">{t.number(counted)}</b>
        {all && (
          <>
            , {t.about} <b class="number">{t.rounded(all.touches)}</b>{' '}
            {t.span(t.number(all.low), t.number(all.high))}
          </>
        )}
      </Explained>
      {doubted > 0 && <span class="small"> {t.doubted(doubted)}</span>}
    </>
  );
}

/** How many balls come back, or meet the target, with its limits. */
export function Consistent({ known, onTarget }: { known: PooledConsistency; onTarget: boolean }) {
  const t = figureWords.value;
  return (
    <Explained of={onTarget ? 'target' : 'consistency'}>
      <b class="number">{t.percent(known.consistency)}</b>{' '}
      {t.span(t.percent(known.low), t.percent(known.high))}
    </Explained>
  );
}
