import { mustBePositive, mustCount, mustMeasure } from '../arguments.ts';
import { ruleMeanings } from '../drill/counting-rules.ts';
import { type CountingRule, countingRules } from '../drill/drill.ts';

/** The median of a constant over pairs, and the standard deviation of its logarithm. */
export type Lognormal = readonly [median: number, sdLog: number];

/** What is known before a round about a pair and its clock; what is left out has its default. */
export interface TouchesPriors {
  /** Beta(a, b) of the share of shots that succeed: 4 and 1, on target 1 and 1. */
  a?: number;
  b?: number;
  /** Seconds from hit to hit. */
  tempo?: Lognormal;
  /** Seconds that a miss costs before the next hit. */
  refeed?: Lognormal;
  /** Seconds between a completed set and the next hit. */
  pause?: Lognormal;
}

/** What was seen of one pair (on target: of one player) in one round. */
export interface TouchesRound {
  rule: CountingRule;
  /** Shots in a set; of a sequence its shots; on target 1. */
  size: number;
  /** Completed sets. */
  sets: number;
  /** Live clock. */
  seconds: number;
  /** Seconds from the start to each mark: as many as sets, rising, in (0, seconds]. */
  times?: readonly number[];
  /** How far the unfinished set had come at the horn: 0 … size − 1. */
  showing?: number;
  /** Longest run seen, 0 … size − 1; tells something where no set was completed. */
  best?: number;
  /** How far `best` may be off: 1 where it is recalled (the default), 0 where it was observed. */
  bestTolerance?: number;
  /** Misses, where they were counted. */
  misses?: number;
  /** Whether the rally in progress at the horn was played to its end. */
  playedOut?: boolean;
  /** Measured seconds between hits. */
  tempo?: number;
  priors?: TouchesPriors;
}

/** A round with every default filled in and every value checked. */
export interface CheckedRound {
  /** Whether a miss starts the set again: in a row and in a sequence. */
  startsAgain: boolean;
  size: number;
  sets: number;
  seconds: number;
  times: readonly number[] | undefined;
  showing: number | undefined;
  /** The longest run lies between these two. */
  longestRun: { least: number; most: number };
  misses: number | undefined;
  playedOut: boolean;
  a: number;
  b: number;
  tempo: Lognormal;
  refeed: Lognormal;
  pause: Lognormal;
}

/**
 * Seconds, with 80% ranges of 1.3–1.8 between hits, 4–8 after a miss and 3–6 after a set: guesses
 * about juniors (common practice, no source). A measured tempo and a second look narrow them.
 */
export const USUAL_TEMPO: Lognormal = [1.53, 0.127];
export const USUAL_REFEED: Lognormal = [5.66, 0.27];
export const USUAL_PAUSE: Lognormal = [4.24, 0.27];

/** A ball at a target is fed by the clock of the hits alone. */
const NO_TIME: Lognormal = [0, 0];

/** Sd of the log of a tempo measured as the last of ten hits minus the first, over nine. */
export const MEASURED_TEMPO_SD = 0.06;

/** Fills in the defaults. A value that makes no sense is a RangeError that names it. */
export function checkedRound(round: TouchesRound): CheckedRound {
  const { rule, size, sets, seconds, times, showing, misses, priors = {} } = round;
  if (!countingRules.includes(rule)) throw new RangeError(`rule must not be ${rule}`);
  const { size: sized, startsAgain, feedsAnew, prior } = ruleMeanings[rule];

  mustCount('size', size);
  mustBePositive('size', size);
  if (sized === 'one' && size !== 1) throw new RangeError(`size must be 1 on target, not ${size}`);
  mustCount('sets', sets);
  mustBePositive('seconds', seconds);
  if (times) mustBeMarks(times, sets, seconds);
  if (showing !== undefined) mustBeShort('showing', showing, size);
  if (misses !== undefined) mustCount('misses', misses);

  const { a = prior.a, b = prior.b } = priors;
  mustBePositive('priors.a', a);
  mustBePositive('priors.b', b);

  return {
    startsAgain,
    size,
    sets,
    seconds,
    times,
    showing,
    longestRun: longestRun(round, startsAgain),
    misses,
    playedOut: startsAgain && round.playedOut === true,
    a,
    b,
    tempo: joinedTempo(priors.tempo, round.tempo),
    refeed: feedsAnew ? lognormal('priors.refeed', priors.refeed, USUAL_REFEED) : NO_TIME,
    pause: feedsAnew ? lognormal('priors.pause', priors.pause, USUAL_PAUSE) : NO_TIME,
  };
}

function longestRun(round: TouchesRound, startsAgain: boolean): { least: number; most: number } {
  const { size, sets, best, bestTolerance = 1 } = round;
  mustCount('bestTolerance', bestTolerance);
  const any = { least: 0, most: size - 1 };
  if (best === undefined || !startsAgain) return any;
  mustBeShort('best', best, size);
  if (sets > 0) return any;
  return {
    least: Math.max(0, best - bestTolerance),
    most: Math.min(size - 1, best + bestTolerance),
  };
}

function joinedTempo(prior: Lognormal | undefined, measured: number | undefined): Lognormal {
  const known = lognormal('priors.tempo', prior, USUAL_TEMPO);
  mustBePositive('priors.tempo', known[0]);
  if (measured === undefined) return known;
  mustBePositive('tempo', measured);
  return joined(known, measured, MEASURED_TEMPO_SD);
}

/**
 * What is usual and what was measured, weighted by their precisions; `measuredSd` is the standard
 * deviation of the logarithm of what was measured. All above 0, but for the spread of what is usual.
 */
export function joined(
  [median, sdLog]: Lognormal,
  measured: number,
  measuredSd: number,
): Lognormal {
  // Written with the share of the variance, so that a prior without any spread stays as it is.
  const measuredVariance = measuredSd ** 2;
  const towards = sdLog ** 2 / (sdLog ** 2 + measuredVariance);
  return [
    median * Math.exp(towards * Math.log(measured / median)),
    Math.sqrt(towards * measuredVariance),
  ];
}

function lognormal(name: string, given: Lognormal | undefined, usual: Lognormal): Lognormal {
  const [median, sdLog] = given ?? usual;
  mustMeasure(name, median);
  mustMeasure(name, sdLog);
  return [median, sdLog];
}

/** How far an unfinished set has come is a whole number below its size. */
function mustBeShort(name: string, shots: number, size: number): void {
  mustCount(name, shots);
  if (shots >= size) throw new RangeError(`${name} must be below the size ${size}, not ${shots}`);
}

function mustBeMarks(times: readonly number[], sets: number, seconds: number): void {
  if (times.length !== sets) throw new RangeError(`times must be ${sets}, not ${times.length}`);
  times.forEach((time, i) => {
    if (!(time > (times[i - 1] ?? 0) && time <= seconds))
      throw new RangeError(`times must rise from above 0 to ${seconds} at most, not to ${time}`);
  });
}
