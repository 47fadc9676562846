import { type Attempts, attempts } from './attempts.ts';
import { even, fromLogit } from './logit.ts';
import { phi } from './normal.ts';
import {
  logScore,
  logVariance,
  PAUSE_VARIATION,
  REFEED_VARIATION,
  SHOT_VARIATION,
} from './round-clock.ts';
import { quantile } from './spread.ts';
import type { ShotEstimate } from './touches.ts';
import type { CheckedRound, Lognormal } from './touches-round.ts';

/** Seconds that a tap stands off the end of its set: sd. */
const TAP_DELAY = 0.2;
/** Ways that many sd too slow for the seconds seen are left out: e^(−7²/2) is 2e-11. */
const TOO_SLOW = -7;
const NEGLIGIBLE = 1e-9;
/** Nodes that far below the best in the log are dropped: e^−14 is 8e-7. */
const HOPELESS = 14;

/** One guess at the seconds of a pair's round. */
interface ClockNode {
  tempo: number;
  refeed: number;
  pause: number;
  logPrior: number;
}

/** One guess at the share of its shots that succeed. */
interface ShareNode {
  share: number;
  logShare: number;
  logPrior: number;
}

/** What the stretches of the round so far say of each node, by clock and, within it, by share. */
interface Tally {
  /** −Infinity once a node is dropped. */
  logWeight: Float64Array;
  /** Moments of the shots beyond those of the completed sets. */
  mean: Float64Array;
  variance: Float64Array;
  misses: Float64Array;
}

/**
 * Takes in how well numbers of shots from `least` to below `end` agree with a stretch's seconds where
 * it had so many misses; `kind` says which of the orders of its shots are meant.
 */
type TakeIn = (
  kind: keyof Attempts,
  misses: number,
  agreement: Float64Array,
  least: number,
  end: number,
) => void;

/**
 * The touches of a round from the seconds of its marks, for two sets or more of a rule that starts
 * again: each time between two marks tells how much of it went into misses. The constants do not
 * integrate out of that, so they lie on a fixed grid of nodes; given a node the stretches between the
 * marks are independent, and a round's moments are the sums of theirs. Undefined where no node can
 * explain the times.
 */
export function touchesFromTimes(
  round: CheckedRound,
  times: readonly number[],
): Omit<ShotEstimate, 'implausible'> | undefined {
  const { size, sets, seconds, showing } = round;
  const clocks = clockNodes(round);
  const shares = shareNodes(round.a, round.b);
  const starts = [0, ...times];
  const lengths = starts.map((start, i) => (times[i] ?? seconds) - start);
  const most = mostShots(clocks, Math.max(...lengths));
  const tables = shares.map(({ share }) => attempts(share, size, most, { showing }));

  const tally = startTally(clocks, shares);
  lengths.forEach((length, i) => {
    const untilHorn = i === sets;
    for (let c = 0; c < clocks.length; c++) {
      addStretch(tally, c, shares, tables, untilHorn ? 0 : size, (takeIn) => {
        if (untilHorn) waysToHorn(clocks[c]!, length, size, showing, most, takeIn);
        else waysToSet(clocks[c]!, length, size, i > 0 ? 1 : 0, most, takeIn);
      });
    }
    dropHopeless(tally.logWeight);
  });
  return mixture(tally, shares, size * sets);
}

function clockNodes(round: CheckedRound): ClockNode[] {
  const nodes = ([median, sdLog]: Lognormal, count: number, reach: number) =>
    even(count, -reach, reach).map((z) => ({
      value: median * Math.exp(sdLog * z),
      logPrior: (-z * z) / 2,
    }));
  const pauses = nodes(round.pause, 3, 1.75);
  const refeeds = nodes(round.refeed, 3, 1.75);
  return nodes(round.tempo, 7, 2.4).flatMap((tempo) =>
    refeeds.flatMap((refeed) =>
      pauses.map((pause) => ({
        tempo: tempo.value,
        refeed: refeed.value,
        pause: pause.value,
        logPrior: tempo.logPrior + refeed.logPrior + pause.logPrior,
      })),
    ),
  );
}

/** Even in the logit, so the Beta density comes with a factor p (1 − p). */
function shareNodes(a: number, b: number): ShareNode[] {
  return even(a + b > 30 ? 25 : 13, -1, 6.2).map((logit) => {
    const { share, logShare, logRest } = fromLogit(logit);
    return { share, logShare, logPrior: a * logShare + b * logRest };
  });
}

/** More shots than any way that is not too slow can have in the longest stretch. */
function mostShots(clocks: readonly ClockNode[], longest: number): number {
  const fastest = Math.min(...clocks.map(({ tempo }) => tempo));
  const variancePerMean = Math.max(
    ...clocks.map(({ tempo, refeed, pause }) =>
      Math.max(
        SHOT_VARIATION ** 2 * tempo,
        REFEED_VARIATION ** 2 * refeed,
        PAUSE_VARIATION ** 2 * pause,
      ),
    ),
  );
  const logLongest = Math.log(longest);
  let mean = longest;
  const score = () =>
    logScore(logLongest, mean, logVariance(mean, mean * variancePerMean + 2 * TAP_DELAY ** 2));
  while (score() > TOO_SLOW) mean *= 1.1;
  return Math.ceil(mean / fastest);
}

function startTally(clocks: readonly ClockNode[], shares: readonly ShareNode[]): Tally {
  const nodes = clocks.length * shares.length;
  return {
    logWeight: Float64Array.from(
      clocks.flatMap((clock) => shares.map((share) => clock.logPrior + share.logPrior)),
    ),
    mean: new Float64Array(nodes),
    variance: new Float64Array(nodes),
    misses: new Float64Array(nodes),
  };
}

/** Adds one stretch, ending in a set of so many shots (0: in none), to the nodes of one clock. */
function addStretch(
  tally: Tally,
  clock: number,
  shares: readonly ShareNode[],
  tables: readonly Attempts[],
  setShots: number,
  eachWay: (takeIn: TakeIn) => void,
): void {
  const count = shares.length;
  const alive: number[] = [];
  for (let j = 0; j < count; j++)
    if (tally.logWeight[clock * count + j]! > -Infinity) alive.push(j);
  if (alive.length === 0) return;

  const total = new Float64Array(count);
  const shots = new Float64Array(count);
  const shotsSquared = new Float64Array(count);
  const missed = new Float64Array(count);
  eachWay((kind, misses, agreement, least, end) => {
    for (const j of alive) {
      const chances = tables[j]![kind](misses);
      let sum = 0;
      let sumShots = 0;
      let sumSquared = 0;
      for (let n = least; n < end; n++) {
        const weight = agreement[n]! * chances[n]!;
        sum += weight;
        sumShots += weight * n;
        sumSquared += weight * n * n;
      }
      total[j]! += sum;
      shots[j]! += sumShots;
      shotsSquared[j]! += sumSquared;
      missed[j]! += sum * misses;
    }
  });

  for (const j of alive) {
    const node = clock * count + j;
    const sum = total[j]!;
    tally.logWeight[node]! += Math.log(sum) + setShots * shares[j]!.logShare;
    if (sum === 0) continue;
    const mean = shots[j]! / sum;
    tally.mean[node]! += mean;
    tally.variance[node]! += Math.max(0, shotsSquared[j]! / sum - mean * mean);
    tally.misses[node]! += missed[j]! / sum;
  }
}

/** Failed attempts, then the set: the seconds to its mark have a lognormal density. */
function waysToSet(
  { tempo, refeed, pause }: ClockNode,
  seconds: number,
  size: number,
  pauses: number,
  most: number,
  takeIn: TakeIn,
): void {
  const logSeconds = Math.log(seconds);
  const density = new Float64Array(most + 1);
  for (let misses = 0; ; misses++) {
    const end = Math.min(size * misses, most) + 1;
    let n = misses;
    for (; n < end; n++) {
      const mean = (size + n) * tempo + misses * refeed + pauses * pause;
      const variance =
        (size + n) * (SHOT_VARIATION * tempo) ** 2 +
        misses * (REFEED_VARIATION * refeed) ** 2 +
        pauses * (PAUSE_VARIATION * pause) ** 2 +
        (1 + pauses) * TAP_DELAY ** 2;
      const spread = logVariance(mean, variance);
      const score = logScore(logSeconds, mean, spread);
      if (score < TOO_SLOW) break;
      density[n] = Math.exp((-score * score) / 2) / Math.sqrt(spread);
    }
    if (n === misses) return;
    takeIn('failed', misses, density, misses, n);
  }
}

/** After the last set: its pause, failed attempts, and the horn during any of it or inside a run. */
function waysToHorn(
  { tempo, refeed, pause }: ClockNode,
  seconds: number,
  size: number,
  showing: number | undefined,
  most: number,
  takeIn: TakeIn,
): void {
  const logSeconds = Math.log(seconds);
  const fits = (shots: number, misses: number): number => {
    const mean = shots * tempo + misses * refeed + pause;
    const variance =
      shots * (SHOT_VARIATION * tempo) ** 2 +
      misses * (REFEED_VARIATION * refeed) ** 2 +
      (PAUSE_VARIATION * pause) ** 2 +
      TAP_DELAY ** 2;
    return phi(logScore(logSeconds, mean, logVariance(mean, variance)));
  };
  const atRest = !showing;
  if (atRest) takeIn('failed', 0, Float64Array.of(1 - fits(1, 0)), 0, 1);

  const inside = new Float64Array(most + 1);
  const atMiss = new Float64Array(most + 1);
  let fewer: Float64Array | undefined;
  for (let misses = 0; ; misses++) {
    const first = Math.max(1, misses);
    const last = Math.min(most, Math.max(first, size * (misses + 1) - 1));
    const here = new Float64Array(most + 2);
    here[first] = fits(first, misses);
    let n = first;
    for (; n <= last; n++) {
      if (Math.max(here[n]!, fewer?.[n] ?? 0) < NEGLIGIBLE) break;
      here[n + 1] = fits(n + 1, misses);
      inside[n] = Math.max(0, here[n]! - here[n + 1]!);
      if (fewer) atMiss[n] = Math.max(0, fewer[n]! - here[n + 1]!);
    }
    if (n === first) return;
    takeIn('goingOn', misses, inside, first, n);
    if (fewer && atRest) takeIn('failed', misses, atMiss, first, n);
    fewer = here;
  }
}

/**
 * Drops nodes far below the best at the same stretch; to compare with nodes that have taken in more
 * would be wrong, for a stretch's log can be positive.
 */
function dropHopeless(logWeight: Float64Array): void {
  let best = -Infinity;
  for (const weight of logWeight) best = Math.max(best, weight);
  for (let i = 0; i < logWeight.length; i++)
    if (logWeight[i]! < best - HOPELESS) logWeight[i] = -Infinity;
}

/** Joins the nodes; for the quantiles each is a normal over the whole numbers that the sets allow. */
function mixture(
  { logWeight, mean, variance, misses }: Tally,
  shares: readonly ShareNode[],
  done: number,
): Omit<ShotEstimate, 'implausible'> | undefined {
  const best = logWeight.reduce((most, weight) => Math.max(most, weight), -Infinity);
  if (best === -Infinity) return undefined;
  let total = 0;
  let sumBeyond = 0;
  let sumSquared = 0;
  let sumShare = 0;
  let sumShareSquared = 0;
  let sumMisses = 0;
  const byShots: number[] = [];
  logWeight.forEach((log, node) => {
    const weight = Math.exp(log - best);
    if (weight === 0) return;
    const { share } = shares[node % shares.length]!;
    const beyond = mean[node]!;
    total += weight;
    sumBeyond += weight * beyond;
    sumSquared += weight * (variance[node]! + beyond * beyond);
    sumShare += weight * share;
    sumShareSquared += weight * share * share;
    sumMisses += weight * misses[node]!;
    addNormal(byShots, beyond, variance[node]! + 1 / 12, weight);
  });
  const beyond = sumBeyond / total;
  const consistency = sumShare / total;
  const weights = Float64Array.from(byShots);
  return {
    shots: done + beyond,
    sd: Math.sqrt(Math.max(0, sumSquared / total - beyond * beyond)),
    low: Math.max(done, quantile(weights, done, 0.1)),
    high: Math.max(done, quantile(weights, done, 0.9)),
    consistency,
    consistencySd: Math.sqrt(Math.max(0, sumShareSquared / total - consistency * consistency)),
    misses: sumMisses / total,
  };
}

/** Adds a normal density at the whole numbers from 0, together as heavy as `weight`. */
function addNormal(byNumber: number[], mean: number, variance: number, weight: number): void {
  const reach = 8 * Math.sqrt(variance);
  const from = Math.max(0, Math.floor(mean - reach));
  const densities: number[] = [];
  let sum = 0;
  for (let n = from; n <= mean + reach; n++) {
    const density = Math.exp(-((n - mean) ** 2) / (2 * variance));
    densities.push(density);
    sum += density;
  }
  while (byNumber.length < from + densities.length) byNumber.push(0);
  densities.forEach((density, i) => {
    byNumber[from + i]! += (weight * density) / sum;
  });
}
