import { mustBePositive, mustLevel } from '../arguments.ts';
import { normalQuantile, phi } from './normal.ts';

export interface Trend {
  /** Change of the value per unit of `at`: the median of the slopes between all pairs of points. */
  slope: number;
  /** The interval of the slope; left out where there are too few points to give one. */
  low?: number;
  high?: number;
  /** Kendall's S: pairs of points that rise minus pairs that fall. */
  s: number;
  /** Two-sided p of no trend at all. */
  p: number;
  /** Number of points. */
  n: number;
}

/** Up to this many points without ties p is counted out exactly, beyond it the normal curve is close. */
const EXACT_UP_TO = 10;

/**
 * Whether something rises or falls over time, without being led by one odd day: Theil and Sen's slope
 * (Sen 1968, J. Am. Stat. Assoc. 63: 1379–1389) and the Mann-Kendall test.
 *
 * `at` in any unit of time, `value` in any unit. p is exact for up to ten points without ties; with a
 * tie (two points with the same `at` or the same `value`) or more points it comes from the normal
 * approximation with continuity correction and Kendall's (1975) variance for ties in both. The interval
 * is Gilbert's (Statistical Methods for Environmental Pollution Monitoring, 1987, 16.5): slopes by rank,
 * interpolated; `low` and `high` are left out where the ranks lie outside the slopes there are, and
 * where the points say nothing at all about a trend.
 *
 * `undefined` below three points, and where all `at` are equal. Numbers that are not finite and a level
 * outside 0 to 1 are a RangeError.
 */
export function trend(
  points: readonly { at: number; value: number }[],
  level = 0.9,
): Trend | undefined {
  mustLevel(level);
  for (const { at, value } of points) {
    if (!Number.isFinite(at)) throw new RangeError(`at must be a finite number, not ${at}`);
    if (!Number.isFinite(value))
      throw new RangeError(`value must be a finite number, not ${value}`);
  }
  const n = points.length;
  if (n < 3 || points.every(({ at }) => at === points[0]!.at)) return undefined;

  const found = new Float64Array((n * (n - 1)) / 2);
  let used = 0;
  let s = 0;
  for (let i = 0; i < n; i++) {
    const { at, value } = points[i]!;
    for (let j = i + 1; j < n; j++) {
      const later = points[j]!.at - at;
      if (later === 0) continue;
      const slope = (points[j]!.value - value) / later;
      found[used++] = slope;
      s += Math.sign(slope);
    }
  }
  const slopes = found.subarray(0, used).sort();

  const inAt = ties(points.map(({ at }) => at));
  const inValue = ties(points.map(({ value }) => value));
  const variance = varianceOfS(n, inAt, inValue);
  const untied = inAt.length === 0 && inValue.length === 0;
  const result = {
    slope: ranked(slopes, (slopes.length + 1) / 2),
    s,
    p: untied && n <= EXACT_UP_TO ? exactP(n, s) : normalP(s, variance),
    n,
  };

  const reach = -normalQuantile((1 - level) / 2) * Math.sqrt(variance);
  const lowest = (slopes.length - reach) / 2;
  // The two ranks leave the list together: the upper one is as far from its end.
  if (variance === 0 || lowest < 1) return result;
  return {
    ...result,
    low: ranked(slopes, lowest),
    high: ranked(slopes, slopes.length + 1 - lowest),
  };
}

/** The value at a rank from 1, interpolated between its neighbours. */
function ranked(sorted: ArrayLike<number>, rank: number): number {
  const below = Math.floor(rank);
  const lower = sorted[below - 1]!;
  return lower + (rank - below) * (sorted[Math.ceil(rank) - 1]! - lower);
}

/** The sizes of the groups of equal values, without those that stand alone. */
function ties(values: readonly number[]): number[] {
  const sizes = new Map<number, number>();
  for (const value of values) sizes.set(value, (sizes.get(value) ?? 0) + 1);
  return [...sizes.values()].filter((size) => size > 1);
}

/** Variance of S if the values were shuffled, with groups of ties in both (Kendall 1975, ch. 4). */
function varianceOfS(n: number, inAt: readonly number[], inValue: readonly number[]): number {
  const over = (sizes: readonly number[], term: (t: number) => number) =>
    sizes.reduce((sum, t) => sum + term(t), 0);
  const spread = (t: number) => t * (t - 1) * (2 * t + 5);
  const pairs = (t: number) => t * (t - 1);
  const triples = (t: number) => t * (t - 1) * (t - 2);
  return (
    (spread(n) - over(inAt, spread) - over(inValue, spread)) / 18 +
    (over(inAt, pairs) * over(inValue, pairs)) / (2 * pairs(n)) +
    (over(inAt, triples) * over(inValue, triples)) / (9 * triples(n))
  );
}

/** Twice the share of all orders of n values whose S is at least |s|, at most 1. */
function exactP(n: number, s: number): number {
  // orders[i]: the orders of k values with i pairs that fall; one more value adds 0 to k of them.
  let orders = [1];
  for (let k = 1; k < n; k++) {
    const next = new Array<number>(orders.length + k).fill(0);
    orders.forEach((count, falling) => {
      for (let more = 0; more <= k; more++) next[falling + more]! += count;
    });
    orders = next;
  }
  const fewest = (orders.length - 1 - Math.abs(s)) / 2;
  const extreme = orders.slice(0, fewest + 1).reduce((sum, count) => sum + count, 0);
  const all = orders.reduce((sum, count) => sum + count, 0);
  return Math.min(1, (2 * extreme) / all);
}

function normalP(s: number, variance: number): number {
  if (s === 0 || variance === 0) return 1;
  return 2 * phi(-(Math.abs(s) - 1) / Math.sqrt(variance));
}

/** What a person reads from a trend. `unclear`: there are enough practices, and it is not clear yet. */
export const trendWords = ['rising', 'steady', 'falling', 'unclear', 'too-few'] as const;
export type TrendWord = (typeof trendWords)[number];

/** A trend of fewer practices than this gets no word at all. */
export const ENOUGH_PRACTICES = 6;
/** A trend is called rising or falling only below this p. */
const CLEAR_BELOW = 0.1;

/**
 * The one word for a trend whose points are practices, one each.
 *
 * `matters` is the change of the value that would matter to a coach, `span` the stretch of `at` in which
 * it would (so 0.05 and 28 for five hundredths in four weeks of days). Rising and falling need p below
 * 0.1; steady needs an interval narrower than the change that would matter, since not having seen a
 * change is not the same as having seen none. Fewer than six practices, or no trend, are too few. A
 * `matters` or `span` that is not positive and finite is a RangeError.
 */
export function trendWord(
  trend: Trend | undefined,
  { matters, span }: { matters: number; span: number },
): TrendWord {
  mustBePositive('matters', matters);
  mustBePositive('span', span);
  if (!trend || trend.n < ENOUGH_PRACTICES) return 'too-few';
  const { slope, low, high, p } = trend;
  if (p < CLEAR_BELOW && slope !== 0) return slope > 0 ? 'rising' : 'falling';
  if (low !== undefined && high !== undefined && (high - low) * span < matters) return 'steady';
  return 'unclear';
}
