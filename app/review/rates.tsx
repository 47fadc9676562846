import type { Rates } from '../../core/figures/rates.ts';
import { isTelling } from '../../core/figures/telling.ts';
import { type Explainable, Explained } from '../parts/explained.tsx';
import { figureWords } from '../words/figure-words.ts';

/** A rate with its limits. What is not known, or next to nothing, has no row. */
function RateRow({ name, of, rate }: { name: string; of: Explainable; rate: Rates['perMinute'] }) {
  const t = figureWords.value;
  if (!rate || !isTelling(rate)) return null;
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

/** Sets a minute, of one size where one is given; where they are too few for a rate, as they were counted. */
export function SetsRow({ rates, sized }: { rates: Rates; sized?: string }) {
  const { review: t, number } = figureWords.value;
  const { sets, minutes, perMinute } = rates;
  const name = sized === undefined ? t.setsPerMinute : `${t.setsPerMinute}, ${sized}`;
  if (!perMinute || isTelling(perMinute)) return <RateRow name={name} of="rate" rate={perMinute} />;
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        <Explained of="sets">
          <b class="number">{number(sets)}</b> {t.inMinutes(minutes)}
        </Explained>
      </dd>
    </div>
  );
}

/** All touches a minute. */
export const TouchesRow = ({ rates: { touchesPerMinute } }: { rates: Rates }) => (
  <RateRow
    name={figureWords.value.review.touchesPerMinute}
    of="touchRate"
    rate={touchesPerMinute}
  />
);
