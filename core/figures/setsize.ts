import { mustBePositive, mustMeasure } from '../arguments.ts';
import type { Consistency } from '../ledger/summary.ts';
import { carriedBeta, mustBeConsistency } from './consistency.ts';
import { even, fromLogit } from './logit.ts';
import { PAUSE_VARIATION, REFEED_VARIATION, SHOT_VARIATION } from './round-clock.ts';
import { USUAL_PAUSE, USUAL_REFEED, USUAL_TEMPO } from './touches-round.ts';

/** What a pair needs for a shot, a miss and a completed set, in seconds; usual values by default. */
interface Pace {
  /** From hit to hit. */
  tempo?: number;
  /** What a miss costs before the next hit. */
  refeed?: number;
  /** From a completed set to the next hit. */
  pause?: number;
}

const paceOf = ({
  tempo = USUAL_TEMPO[0],
  refeed = USUAL_REFEED[0],
  pause = USUAL_PAUSE[0],
}: Pace): Required<Pace> => {
  mustBePositive('tempo', tempo);
  mustMeasure('refeed', refeed);
  mustMeasure('pause', pause);
  return { tempo, refeed, pause };
};

/**
 * The shots of one set and what fails on the way. The number of failures has mean
 * `missing` / `done` and variance `missing` / `done`²: kept apart, so that a set which is all but
 * impossible divides nothing by 0.
 */
interface SetShots {
  size: number;
  done: number;
  missing: number;
  /** Shots that a failure takes: mean and variance. */
  failure: { mean: number; variance: number };
}

/** In a row and in a sequence: a miss loses the whole attempt, and attempts fail in 1 … size shots. */
function fromTheStart(size: number, p: number): SetShots {
  let weight = 1;
  let total = 0;
  let mean = 0;
  let square = 0;
  for (let shots = 1; shots <= size; shots++) {
    total += weight;
    mean += shots * weight;
    square += shots * shots * weight;
    weight *= p;
  }
  mean /= total;
  // After the loop `weight` is p^size, and (1 − p) Σ p^j is 1 − p^size without its cancellation.
  return {
    size,
    done: weight,
    missing: (1 - p) * total,
    failure: { mean, variance: Math.max(0, square / total - mean * mean) },
  };
}

/**
 * Sets in a round. They and their pauses are a renewal process, T / μ + (σ² / μ² − 1) / 2 for large T
 * (Feller 1941, Ann. Math. Stat. 12), with one pause added to T because the first set has none before
 * it. Against simulated rounds of two minutes the largest error is 0.035 sets, where T / μ alone errs
 * by 0.33.
 */
function renewals(seconds: number, pace: Required<Pace>, set: SetShots): number {
  const { tempo, refeed, pause } = pace;
  const { size, done, missing, failure } = set;
  const shotVariance = (SHOT_VARIATION * tempo) ** 2;
  const failed = failure.mean * tempo + refeed;
  const failedVariance =
    failure.mean * shotVariance + tempo ** 2 * failure.variance + (REFEED_VARIATION * refeed) ** 2;
  // Mean and variance of a cycle times `done` and its square.
  const mean = done * (pause + size * tempo) + missing * failed;
  const variance =
    done ** 2 * ((PAUSE_VARIATION * pause) ** 2 + size * shotVariance) +
    missing * (done * failedVariance + failed ** 2);
  return Math.max(0, (done * (seconds + pause)) / mean + (variance / mean ** 2 - 1) / 2);
}

/** Common practice, no source: about four sets in a round keep a pair both busy and proud. */
const USUAL_TARGET = 4;
const SMALLEST = 2;
const LARGEST = 30;

/** Up to this sd the grid of the usual range is too coarse for the Beta, so it gets its own. */
const NARROW = 0.03;
const NODES = 25;

/**
 * The size (2 … 30) of a set in a row at which a pair's expected sets in a round come nearest the
 * target (four unless set), the smaller of two equals; with the expected sets at that size, and at
 * one shot less and one more. They are averaged over what is known of the pair's consistency, as a
 * Beta no wider than a + b = 2. In simulated rounds, after one at ten in a row and with a target of
 * four, it puts the next round's sets between two and six in three rounds of four, against less than
 * half when staying at ten. A value that makes no sense is a RangeError that names it.
 */
export function adviseSize(pair: Consistency & { seconds: number; target?: number } & Pace): {
  size: number;
  expected: number;
  smaller: number;
  larger: number;
} {
  const { target = USUAL_TARGET } = pair;
  mustBePositive('target', target);
  const expected = setsBySize(pair);
  let best = { size: SMALLEST, expected: expected(SMALLEST) };
  for (let size = SMALLEST + 1; size <= LARGEST; size++) {
    const next = { size, expected: expected(size) };
    if (Math.abs(next.expected - target) < Math.abs(best.expected - target)) best = next;
  }
  return { ...best, smaller: expected(best.size - 1), larger: expected(best.size + 1) };
}

/**
 * The sets in a row that are to be expected of a pair in a round at each size from 1, averaged over
 * what is known of its consistency, as a Beta no wider than a + b = 2; of a share that is known (an sd
 * of 0) where shots succeed independently. A value that makes no sense is a RangeError that names it.
 */
export function setsBySize(
  pair: Consistency & { seconds: number } & Pace,
): (size: number) => number {
  const { seconds } = pair;
  mustBeConsistency(pair);
  mustBePositive('seconds', seconds);
  const pace = paceOf(pair);
  const nodes = consistencyNodes(pair);
  return (size) =>
    nodes.reduce(
      (sum, { share, weight }) => sum + weight * renewals(seconds, pace, fromTheStart(size, share)),
      0,
    );
}

/** Shares and their weights, which sum to 1: even in the logit, so the density gains p (1 − p). */
function consistencyNodes(known: Consistency): { share: number; weight: number }[] {
  const { consistency, consistencySd } = known;
  const { a, b } = carriedBeta(known);
  const certain = !(a + b < Infinity) || consistency === 0 || consistency === 1;
  if (certain) return [{ share: consistency, weight: 1 }];
  let [from, to] = [-1, 6.2];
  if (consistencySd <= NARROW) {
    const centre = Math.log(consistency / (1 - consistency));
    const reach = 4.5 / Math.sqrt((a + b) * consistency * (1 - consistency));
    [from, to] = [centre - reach, centre + reach];
  }
  const nodes = even(NODES, from, to).map((logit) => {
    const { share, logShare, logRest } = fromLogit(logit);
    return { share, log: a * logShare + b * logRest };
  });
  const top = Math.max(...nodes.map(({ log }) => log));
  const weights = nodes.map(({ log }) => Math.exp(log - top));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return nodes.map(({ share }, i) => ({ share, weight: weights[i]! / total }));
}
