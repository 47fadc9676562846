import type { Rates } from '../../core/figures/rates.ts';
import { type Explainable, Explained } from '../parts/explained.tsx';
import { figureWords } from '../words/figure-words.ts';

/** A row of figures: sets, or touches, a minute with their limits. What is not known has no row. */
export function RateRow({
  name,
  of,
  rate,
}: {
  name: string;
  of: Explainable;
  rate: Rates['perMinute'];
}) {
  const t = figureWords.value;
  if (!rate) return null;
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <Explained of={of}>
          <b class="number">{t.rate(rate.rate)}</b> {t.span(t.rate(rate.low), t.rate(rate.high))}
        </Explained>
      </dd>
    </div>
  );
}
