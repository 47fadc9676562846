import type { Rates } from '../../core/figures/rates.ts';
import { Explained } from '../parts/explained.tsx';
import { figureWords } from '../words/figure-words.ts';

/** Sets a minute with their limits, or that they are not known. */
export const SetsPerMinute = ({ rates: { perMinute } }: { rates: Rates }) => (
  <Explained of="rate">
    <Rate known={perMinute} />
  </Explained>
);

/** Touches a minute with their limits, or that they are not known. */
export const TouchesPerMinute = ({ rates: { touchesPerMinute } }: { rates: Rates }) => (
  <Explained of="touchRate">
    <Rate known={touchesPerMinute} />
  </Explained>
);

function Rate({ known }: { known: Rates['perMinute'] }) {
  const t = figureWords.value;
  if (!known) return <>{t.notKnown}</>;
  return (
    <>
      <b class="number">{t.rate(known.rate)}</b> {t.span(t.rate(known.low), t.rate(known.high))}
    </>
  );
}
