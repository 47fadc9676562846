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

/**
 * How far a player's touches of a round are from the player's part of the pair's: whoever feeds has
 * more, up to two at the most. Of simulated rounds struck in turn the root mean square is 1.5.
 */
const SPLIT_SD = 1.5;

/** The limits are the 10% and the 90% quantile. */
const REACH = normalQuantile(0.9);

/**
 * Adds up all touches. Means add. Of a round's spread most comes from the pair's clock, its tempo and
 * what a miss costs, so where rounds share that clock they err together and their sds add: rounds of
 * one drill that the same players played in one practice, and all rounds of it that lean on the same
 * tempo check. Everything else is taken as independent: variances add, among them that of who of the
 * pair struck more. The limits are those of a normal value; those of a single round are its own
 * quantiles.
 *
 * What this does not hold: a squad whose clock differs from the usual one in every round. That errs
 * all one way, and only a tempo check mends it. Over the invented season, which has no such squad,
 * the limits hold the touches of a player's day and week in 82 to 88 of 100, those of a whole season
 * in 55 to 73: there the model's own error of nearly one per cent shows.
 */
export function sumEstimates(stints: readonly Stint[]): AllTouches {
  const counted = stints.reduce((sum, stint) => sum + stint.counted, 0);
  const waiting = stints.filter(({ estimate }) => !estimate).length;
  const doubted = stints.filter(({ estimate }) => estimate?.implausible).length;
  const told = { counted, waiting, doubted };
  const [first] = stints;
  if (!first || waiting > 0) return told;

  let mean = 0;
  let offset = 0;
  let split = 0;
  const shared = new Map<string, number>();
  for (const stint of stints) {
    const { estimate, part, clock } = stint;
    if (!estimate) continue;
    mean += Math.max(stint.counted, stint.offset + part * estimate.shots);
    offset += stint.offset;
    shared.set(clock, (shared.get(clock) ?? 0) + part * estimate.sd);
    if (part < 1) split += SPLIT_SD ** 2;
  }
  const sd = Math.hypot(Math.sqrt(split), ...shared.values());
  const part = stints.every((stint) => stint.part === first.part) ? first.part : 0;
  const single = stints.length === 1 ? first.estimate : undefined;
  const limits = wholeLimits(
    single ? offset + part * single.low : mean - REACH * sd,
    single ? offset + part * single.high : mean + REACH * sd,
    part,
    offset,
  );
  const low = Math.max(counted, limits.low);
  return { ...told, all: { touches: mean, low, high: Math.max(low, limits.high) } };
}

/**
 * Whole limits of `offset` and a part of whole shots. The shots from ⌈low⌉ to ⌊high⌋ hold what the
 * interval promises, where ordinary rounding would hold four points more; what comes of them is
 * rounded outwards. Where there is no one part for all, the limits themselves are.
 */
function wholeLimits(
  low: number,
  high: number,
  part: number,
  offset: number,
): { low: number; high: number } {
  const outwards = { low: Math.floor(tidy(low)), high: Math.ceil(tidy(high)) };
  if (part === 0) return outwards;
  const least = Math.ceil(tidy((low - offset) / part));
  const most = Math.floor(tidy((high - offset) / part));
  // Limits that lie between two whole numbers hold none: both are meant.
  if (least > most) return outwards;
  return {
    low: Math.floor(tidy(offset + part * least)),
    high: Math.ceil(tidy(offset + part * most)),
  };
}

/** Without the last digits, where a whole number that was cut into parts and put together has its errors. */
const tidy = (shots: number) => Math.round(shots * 1e6) / 1e6;
