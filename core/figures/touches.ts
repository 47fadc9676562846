import { chanceToFit, roundClock } from './round-clock.ts';
import { touchesFromCounts } from './touches-from-counts.ts';
import { touchesFromTimes } from './touches-from-times.ts';
import { type CheckedRound, checkedRound, type TouchesRound } from './touches-round.ts';

export type { Lognormal, TouchesPriors, TouchesRound } from './touches-round.ts';

/** The version of the model, kept beside every stored estimate; it rises when a result changes. */
export const TOUCHES_MODEL_VERSION = 1;

/** All touches of a round, and what else the same sum tells. */
export interface ShotEstimate {
  /** Mean number of shots, the one that ends a rally in an error included. */
  shots: number;
  sd: number;
  /**
   * The 10% and the 90% quantile, not yet whole numbers: the whole numbers from ⌈low⌉ to ⌊high⌋ hold
   * 80%, where ordinary rounding would cover four points too much.
   */
  low: number;
  high: number;
  /** Share of shots that succeed, and its standard deviation. */
  consistency: number;
  consistencySd: number;
  misses: number;
  /** More sets than the clock allows: the count needs a check. */
  implausible: boolean;
}

/** Below this chance that the counted sets fit into the round, the count is doubted. */
const DOUBTFUL = 1e-4;

/**
 * All touches of one pair in one round, from its completed sets and from what else was seen. A pair's
 * touches are half for each of the two; on target they are one player's.
 *
 * The model, made for this program: each shot succeeds with the same unknown probability and takes a
 * gamma-distributed time; a miss costs a re-feed, a set a pause. Counts give the rest by an exact sum
 * over shots and misses; where the seconds of the marks are known for two sets or more of a rule
 * that starts again (and neither were misses counted nor was the last rally played out), they take the
 * counts' place. A round that breaks the model's terms — drift inside it, partners of unequal skill —
 * keeps a coverage of 83 to 86%; a wrong tempo or re-feed costs more: see the priors.
 *
 * Nothing is ever NaN. Where the counts contradict each other or the clock so far that no way is left,
 * `shots`, `low` and `high` are what was counted and `implausible` is true. A value that makes no
 * sense is a RangeError that names it. A two-minute round costs a server's core one to two
 * milliseconds (tests/bench/touches.ts); the cost rises with the square of the seconds over the tempo.
 */
export function estimateShots(given: TouchesRound): ShotEstimate {
  const round = checkedRound(given);
  const implausible = chanceOfSets(round) < DOUBTFUL;
  if (contradictory(round)) return whatWasCounted(round);
  const times = tellingTimes(round);
  const estimate = times ? touchesFromTimes(round, times) : touchesFromCounts(round, implausible);
  return estimate ? { ...estimate, implausible } : whatWasCounted(round);
}

/** The marks' times, where they tell more than the counts do. */
function tellingTimes(round: CheckedRound): readonly number[] | undefined {
  const { times, sets, startsAgain, misses, playedOut } = round;
  return sets >= 2 && startsAgain && misses === undefined && !playedOut ? times : undefined;
}

/** The chance that the sets alone fit into the round, with no miss and no pause after the last. */
function chanceOfSets({ size, sets, seconds, ...known }: CheckedRound): number {
  return chanceToFit(
    roundClock(known),
    Math.log(seconds),
    Math.max(1, size * sets),
    0,
    Math.max(0, sets - 1),
  );
}

/** Whether not even the shortest round that was counted has any chance: spares a sum of zeros. */
function contradictory({
  size,
  sets,
  misses = 0,
  playedOut,
  seconds,
  ...known
}: CheckedRound): boolean {
  const fitting = size * sets + misses - (playedOut ? size - 1 : 0);
  return (
    chanceToFit(
      roundClock(known),
      Math.log(seconds),
      Math.max(1, fitting),
      Math.max(0, misses - 1),
      Math.max(0, sets - 1),
    ) === 0
  );
}

function whatWasCounted({ size, sets, misses = 0, a, b }: CheckedRound): ShotEstimate {
  const shots = Math.max(1, size * sets + misses);
  const hits = a + shots - misses;
  const all = a + b + shots;
  return {
    shots,
    sd: 0,
    low: shots,
    high: shots,
    consistency: hits / all,
    consistencySd: Math.sqrt((hits * (all - hits)) / (all * all * (all + 1))),
    misses,
    implausible: true,
  };
}
