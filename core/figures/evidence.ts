import type { Consistency } from '../ledger/summary.ts';
import { type Beta, betaOf } from './consistency.ts';

/** What is known of a share before anything was seen: as the model of touches has it. */
export const SHARE_PRIOR = { back: { a: 4, b: 1 }, onTarget: { a: 1, b: 1 } } as const;

/**
 * What a round itself says of a share, what was known before it taken out: so many hits and misses,
 * not whole numbers. As a binomial count they say it almost without a pull, where the share's logit
 * with a variance says it with one: a high share looks less sure than it is (in 22,700 simulated
 * tallies −0.02 logit against −0.2 to −0.4).
 *
 * A round can leave one less sure than before, but never with fewer hits or misses than none.
 *
 * @param success its consistency strictly between 0 and 1, its sd above 0: else a RangeError
 * @param prior the Beta that the success was reckoned with, `SHARE_PRIOR`
 */
export function evidence(
  { consistency, consistencySd }: Consistency,
  prior: Beta,
): { hits: number; misses: number } {
  if (!(consistency > 0 && consistency < 1)) {
    throw new RangeError(`consistency must be strictly between 0 and 1, not ${consistency}`);
  }
  const { a, b } = betaOf(consistency, consistencySd);
  if (!(consistencySd > 0 && Number.isFinite(a + b))) {
    throw new RangeError(`consistencySd must be above 0 and finite, not ${consistencySd}`);
  }
  return { hits: Math.max(0, a - prior.a), misses: Math.max(0, b - prior.b) };
}
