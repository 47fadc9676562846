import { mustCount, mustLevel, mustMeasure } from '../arguments.ts';
import { normalQuantile } from './normal.ts';
import { binomial, poisson, tail, thetaWithTail } from './tails.ts';

/** The standard normal value that the level leaves (1 − level) / 2 above. */
const zOf = (level: number) => -normalQuantile((1 - level) / 2);

/**
 * The lower end of Wilson's score interval of a share, in the form that does not cancel. The upper end
 * is 1 minus the lower end of the misses' share.
 */
function scoreLow(hits: number, looks: number, z: number): number {
  // Not 0 / 0, at a level so low that z is 0.
  if (hits === 0) return 0;
  const half = (z * z) / 2;
  const root = z * Math.sqrt((hits * (looks - hits)) / looks + half / 2);
  return (hits * hits) / looks / (hits + half + root);
}

/**
 * How sure a rate is: the exact (Garwood 1936, Biometrika 28: 437–442) interval of a Poisson rate, in
 * events a minute where `exposure` is in minutes.
 *
 * `low` is the rate at which this count or more has a chance of (1 − level) / 2, `high` the one at
 * which this count or less has it; both to 1e-13, in a time that grows as the root of the count.
 * `undefined` where exposure is 0. A count that is not a whole number from 0, a negative or infinite
 * exposure and a level outside 0 to 1 are a RangeError.
 */
export function rateInterval(
  count: number,
  exposure: number,
  level = 0.95,
): { rate: number; low: number; high: number } | undefined {
  mustCount('count', count);
  mustMeasure('exposure', exposure);
  mustLevel(level);
  if (exposure === 0) return undefined;
  const chance = (1 - level) / 2;
  const z = zOf(level);
  // The search starts at the score limits: of `count` below, and of the next count above.
  const reach = (k: number) => k + (z * z) / 2 + z * Math.sqrt(k + (z * z) / 4);
  const low =
    count === 0
      ? 0
      : thetaWithTail(count, poisson, 'or-more', chance, (count * count) / reach(count));
  const high = thetaWithTail(count, poisson, 'or-less', chance, reach(count + 1));
  return { rate: count / exposure, low: low / exposure, high: high / exposure };
}

/**
 * How sure a share is: Wilson's score interval of `hits` out of `looks` (Newcombe 1998, Stat. Med. 17:
 * 857–872, method 3), without continuity correction; all three between 0 and 1.
 *
 * `undefined` where there were no looks. Numbers that are not whole or negative, more hits than looks
 * and a level outside 0 to 1 are a RangeError.
 */
export function shareInterval(
  hits: number,
  looks: number,
  level = 0.95,
): { share: number; low: number; high: number } | undefined {
  mustCount('hits', hits);
  mustCount('looks', looks);
  if (hits > looks) throw new RangeError(`hits must not exceed looks: ${hits} of ${looks}`);
  mustLevel(level);
  if (looks === 0) return undefined;
  const z = zOf(level);
  return {
    share: hits / looks,
    low: scoreLow(hits, looks, z),
    high: 1 - scoreLow(looks - hits, looks, z),
  };
}

/** The odds at which `hits` or more out of `tries` have the given chance: Clopper-Pearson's lower end. */
function oddsLow(hits: number, tries: number, chance: number, z: number): number {
  if (hits === 0) return 0;
  const share = scoreLow(hits, tries + 1, z);
  return thetaWithTail(hits, binomial(tries), 'or-more', chance, share / (1 - share));
}

/**
 * Whether one rate is higher than another: the ratio of rate A to rate B with its exact interval and p.
 *
 * Given their sum, the counts split as a binomial whose odds are the ratio times exposureA / exposureB
 * (Przyborowski and Wilenski 1940, Biometrika 31: 313–323); the limits are Clopper and Pearson's (1934)
 * for those odds, to 1e-13. `p` tests a ratio of 1: twice the smaller one-sided p, at most 1. (R's
 * poisson.test gives the same interval and another two-sided p, which adds up all splits that are not
 * more likely than the one seen.)
 *
 * `undefined` where an exposure or both counts are 0. With countB = 0 `ratio` and `high` are Infinity.
 * Counts that are not whole numbers from 0, negative or infinite exposures and a level outside 0 to 1
 * are a RangeError.
 */
export function rateRatio(
  countA: number,
  exposureA: number,
  countB: number,
  exposureB: number,
  level = 0.95,
): { ratio: number; low: number; high: number; p: number } | undefined {
  mustCount('countA', countA);
  mustMeasure('exposureA', exposureA);
  mustCount('countB', countB);
  mustMeasure('exposureB', exposureB);
  mustLevel(level);
  const sum = countA + countB;
  if (exposureA === 0 || exposureB === 0 || sum === 0) return undefined;
  const chance = (1 - level) / 2;
  const z = zOf(level);
  const equal = exposureA / exposureB;
  const more = tail(countA, equal, binomial(sum), 'or-more').chance;
  const less = tail(countA, equal, binomial(sum), 'or-less').chance;
  return {
    ratio: countA / countB / equal,
    low: oddsLow(countA, sum, chance, z) / equal,
    high: 1 / oddsLow(countB, sum, chance, z) / equal,
    p: Math.min(1, 2 * Math.min(more, less)),
  };
}
