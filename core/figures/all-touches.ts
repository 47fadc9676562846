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
  const told = { counted: 0, waiting: 0, doubted: 0 };
  let mean = 0;
  let offset = 0;
  let split = 0;
  let part = stints[0]?.part ?? 0;
  const shared = new Map<string, number>();
  for (const stint of stints) {
    const { estimate, clock } = stint;
    told.counted += stint.counted;
    if (!estimate) {
      told.waiting += 1;
      continue;
    }
    if (estimate.implausible) told.doubted += 1;
    mean += Math.max(stint.counted, stint.offset + stint.part * estimate.shots);
    offset += stint.offset;
    shared.set(clock, (shared.get(clock) ?? 0) + stint.part * estimate.sd);
    if (stint.part < 1) split += SPLIT_SD ** 2;
    if (stint.part !== part) part = 0; // No one part for all of them.
  }
  if (told.waiting > 0 || stints.length === 0) return told;

  let variance = split;
  for (const sd of shared.values()) variance += sd ** 2;
  const reach = REACH * Math.sqrt(variance);
  const single = stints.length === 1 ? stints[0]?.estimate : undefined;
  const limits = wholeLimits(
    single ? offset + part * single.low : mean - reach,
    single ? offset + part * single.high : mean + reach,
    part,
    offset,
  );
  const low = Math.max(told.counted, limits.low);
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
