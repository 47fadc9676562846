import { normalQuantile } from './normal.ts';
import type { Stint } from './stints.ts';

/** All touches over some stints. */
export interface AllTouches {
  /** Touches in completed sets: so many at the least. */
  counted: number;
  /** Stints whose estimate is not there yet. */
  waiting: number;
  /** Stints with more sets than their clock allows. */
  doubted: number;
  /**
   * All touches, with whole limits that hold them four times in five and are never below what was
   * counted. Undefined where an estimate is waited for, and of no stints at all.
   */
  all?: { touches: number; low: number; high: number };
}

/** The limits are the 10% and the 90% quantile. */
const REACH = normalQuantile(0.9);

/**
 * Adds up all touches. Means add. Of the spread most comes from a pair's clock, its tempo and what a
 * miss costs, so where rounds share that clock they err together and their sds add: rounds of one
 * drill that the same players played in one practice, and all rounds of it that lean on the same
 * tempo check. Everything else is taken as independent: variances add. The limits are those of a normal
 * value; of a single round its own quantiles.
 *
 * What this does not hold: a squad whose clock differs from the usual one in every round. That errs
 * all one way, and only a tempo check mends it.
 */
export function sumEstimates(stints: readonly Stint[]): AllTouches {
  const counted = stints.reduce((sum, stint) => sum + stint.counted, 0);
  const waiting = stints.filter(({ estimate }) => !estimate).length;
  const doubted = stints.filter(({ estimate }) => estimate?.implausible).length;
  const told = { counted, waiting, doubted };
  const [first] = stints;
  if (!first || waiting > 0) return told;

  let mean = 0;
  const shared = new Map<string, number>();
  for (const { estimate, part, clock } of stints) {
    if (!estimate) continue;
    const share = part[0] / part[1];
    mean += share * estimate.shots;
    shared.set(clock, (shared.get(clock) ?? 0) + share * estimate.sd);
  }
  const sd = Math.hypot(...shared.values());
  const single = stints.length === 1 ? first.estimate : undefined;
  const share = first.part[0] / first.part[1];
  const limits = wholeLimits(
    single ? share * single.low : mean - REACH * sd,
    single ? share * single.high : mean + REACH * sd,
    commonPart(stints),
  );
  const low = Math.max(counted, limits.low);
  return {
    ...told,
    all: { touches: Math.max(counted, mean), low, high: Math.max(low, limits.high) },
  };
}

/**
 * Whole limits of a share of whole shots. The shots from ⌈low⌉ to ⌊high⌋ hold what the interval
 * promises, where ordinary rounding would hold four points more; their share is rounded outwards.
 */
function wholeLimits(
  low: number,
  high: number,
  [of, parts]: readonly [number, number],
): { low: number; high: number } {
  const least = Math.ceil(tidy((low * parts) / of));
  const most = Math.floor(tidy((high * parts) / of));
  // Limits that lie between two whole numbers hold none: both are meant.
  if (least > most) return { low: Math.floor(low), high: Math.ceil(high) };
  return { low: Math.floor((least * of) / parts), high: Math.ceil((most * of) / parts) };
}

/** Without the last digits, where a whole number that was cut into parts and added up again has its errors. */
const tidy = (shots: number) => Math.round(shots * 1e6) / 1e6;

/** The part that all stints are, or the largest one that each is a multiple of. */
function commonPart(stints: readonly Stint[]): readonly [number, number] {
  const parts = stints.map(({ part }) => part).filter(([of]) => of > 0);
  const [first = [1, 1] as const] = parts;
  if (parts.every(([of, all]) => of === first[0] && all === first[1])) return first;
  return [1, parts.reduce((common, [, all]) => leastCommonMultiple(common, all), 1)];
}

const leastCommonMultiple = (a: number, b: number): number => (a * b) / greatestCommonDivisor(a, b);
const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);
