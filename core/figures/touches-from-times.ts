import { even } from './logit.ts';
import { phi } from './normal.ts';
import {
  logScore,
  logVariance,
  PAUSE_VARIATION,
  REFEED_VARIATION,
  SHOT_VARIATION,
} from './round-clock.ts';
import { type AttemptsByShare, type ShareGrid, shareGrid } from './share-grid.ts';
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

/** So many guesses at the tempo, the re-feed and the pause, and how many sd they reach to both sides. */
const TEMPOS = 7;
const TEMPO_REACH = 2.4;
const REFEEDS = 3;
const PAUSES = 3;
const REACH = 1.75;

/** One guess at the seconds of a pair's round. */
interface ClockNode {
  tempo: number;
  refeed: number;
  pause: number;
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
  const shares = shareGrid(round.a, round.b);
  const starts = [0, ...times];
  const lengths = starts.map((start, i) => (times[i] ?? seconds) - start);
  const most = mostShots(clocks, Math.max(...lengths));
  const tally = startTally(round, clocks, shares);
  const stretch = stretchOf(tally, shares, size, most);

  const [toFirst = 0, ...toLater] = lengths.slice(0, sets);
  clocks.forEach((clock, c) => {
    // There is no pause before the first set: clocks that differ in nothing else do not differ yet.
    if (c % PAUSES > 0) stretch.repeat(c);
    else {
      stretch.begin(c);
      waysToSet(setSeconds(clock, size, 0, toFirst, most), toFirst, stretch);
    }
    stretch.end(size, true);
  });
  dropHopeless(tally.logWeight);

  const longest = Math.max(...toLater);
  const laterSets: (SetSeconds | undefined)[] = [];
  for (const length of toLater) {
    clocks.forEach((clock, c) => {
      if (!stretch.begin(c)) return;
      laterSets[c] ??= setSeconds(clock, size, 1, longest, most);
      waysToSet(laterSets[c], length, stretch);
      stretch.end(size, true);
    });
    dropHopeless(tally.logWeight);
  }

  const toHorn = lengths[sets] ?? 0;
  const room = [new Float64Array(most + 2), new Float64Array(most + 2)] as const;
  clocks.forEach((clock, c) => {
    if (!stretch.begin(c)) return;
    waysToHorn(clock, toHorn, size, showing, most, room, stretch);
    stretch.end(showing ?? 0, false);
  });
  dropHopeless(tally.logWeight);
  return mixture(tally, shares, size * sets);
}

function clockNodes(round: CheckedRound): ClockNode[] {
  const tempos = guesses(round.tempo, TEMPOS, TEMPO_REACH);
  const refeeds = guesses(round.refeed, REFEEDS, REACH);
  const pauses = guesses(round.pause, PAUSES, REACH);
  const nodes: ClockNode[] = [];
  for (const tempo of tempos)
    for (const refeed of refeeds)
      for (const pause of pauses)
        nodes.push({
          tempo: tempo.value,
          refeed: refeed.value,
          pause: pause.value,
          logPrior: tempo.logPrior + refeed.logPrior + pause.logPrior,
        });
  return nodes;
}

const guesses = ([median, sdLog]: Lognormal, count: number, reach: number) =>
  even(count, -reach, reach).map((z) => ({
    value: median * Math.exp(sdLog * z),
    logPrior: (-z * z) / 2,
  }));

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

function startTally(
  { a, b }: CheckedRound,
  clocks: readonly ClockNode[],
  { points }: ShareGrid,
): Tally {
  // Even in the logit, so the Beta density comes with a factor p (1 − p).
  const logPriors = points.map(({ logShare, logRest }) => a * logShare + b * logRest);
  const nodes = clocks.length * points.length;
  const logWeight = new Float64Array(nodes);
  for (let c = 0, node = 0; c < clocks.length; c++)
    for (const logPrior of logPriors) logWeight[node++] = clocks[c]!.logPrior + logPrior;
  return {
    logWeight,
    mean: new Float64Array(nodes),
    variance: new Float64Array(nodes),
    misses: new Float64Array(nodes),
  };
}

/** The sums over the ways in which one stretch can have gone, for all shares of one clock. */
interface Stretch {
  /** Starts on a clock; false where all its nodes are dropped. */
  begin(clock: number): boolean;
  /** Moves on to a clock that has the same sums as the last one, and the same nodes left. */
  repeat(clock: number): void;
  /** How well each number of shots agrees with the seconds, written before `add`. */
  agreement: Float64Array;
  /**
   * Takes in the agreement of numbers of shots from `least` to below `end` where there were so many
   * misses; `kind` says which of the orders of the shots are meant.
   */
  add(kind: keyof AttemptsByShare, misses: number, least: number, end: number): void;
  /**
   * Adds the stretch to the nodes. It ended in so many hits in a row that are certain; `counted` says
   * whether they are a completed set, whose shots are not among those beyond.
   */
  end(hits: number, counted: boolean): void;
}

/** One for the whole round: the room for each of its many short sums would cost more than the sum. */
function stretchOf(
  tally: Tally,
  { points, attempts }: ShareGrid,
  size: number,
  most: number,
): Stretch {
  const ways = attempts(size, most);
  const count = points.length;
  const { logWeight } = tally;
  const agreement = new Float64Array(most + 1);
  const total = new Float64Array(count);
  const shots = new Float64Array(count);
  const shotsSquared = new Float64Array(count);
  const missed = new Float64Array(count);
  let firstNode = 0;
  // The shares from the first to the last whose nodes are left; one dropped between them stays dropped.
  let from = 0;
  let to = 0;

  return {
    agreement,
    begin(clock) {
      firstNode = clock * count;
      from = 0;
      to = count;
      while (from < to && logWeight[firstNode + from] === -Infinity) from++;
      while (from < to && logWeight[firstNode + to - 1] === -Infinity) to--;
      for (let j = from; j < to; j++) {
        total[j] = 0;
        shots[j] = 0;
        shotsSquared[j] = 0;
        missed[j] = 0;
      }
      return from < to;
    },
    repeat(clock) {
      firstNode = clock * count;
    },
    add(kind, misses, least, end) {
      const byShare = ways[kind](misses);
      for (let j = from; j < to; j++) {
        const chances = byShare[j]!;
        let sum = 0;
        let sumShots = 0;
        let sumSquared = 0;
        for (let n = least; n < end; n++) {
          const weight = agreement[n]! * chances[n]!;
          const weightedShots = weight * n;
          sum += weight;
          sumShots += weightedShots;
          sumSquared += weightedShots * n;
        }
        total[j]! += sum;
        shots[j]! += sumShots;
        shotsSquared[j]! += sumSquared;
        missed[j]! += sum * misses;
      }
    },
    end(hits, counted) {
      const { mean, variance, misses } = tally;
      for (let j = from; j < to; j++) {
        const node = firstNode + j;
        const sum = total[j]!;
        logWeight[node]! += Math.log(sum) + hits * points[j]!.logShare;
        if (sum === 0) continue;
        const here = shots[j]! / sum;
        mean[node]! += counted ? here : here + hits;
        variance[node]! += Math.max(0, shotsSquared[j]! / sum - here * here);
        misses[node]! += missed[j]! / sum;
      }
    },
  };
}

/**
 * The lognormal seconds from a set (or the start) to the next one, for every way that is not too slow
 * for the longest time that will be asked about. Row by row of misses, and in each row shot by shot
 * from as many as the misses: `centre` is ln m − ς²/2 and `precision` 1/ς.
 */
interface SetSeconds {
  centre: number[];
  precision: number[];
  /** Where each row begins, and where the last one ends. */
  rows: number[];
}

function setSeconds(
  { tempo, refeed, pause }: ClockNode,
  size: number,
  pauses: number,
  longest: number,
  most: number,
): SetSeconds {
  const logLongest = Math.log(longest);
  const shotVariance = (SHOT_VARIATION * tempo) ** 2;
  const refeedVariance = (REFEED_VARIATION * refeed) ** 2;
  const otherVariance = pauses * (PAUSE_VARIATION * pause) ** 2 + (1 + pauses) * TAP_DELAY ** 2;
  const centre: number[] = [];
  const precision: number[] = [];
  const rows = [0];
  for (let misses = 0; ; misses++) {
    const end = Math.min(size * misses, most) + 1;
    for (let n = misses; n < end; n++) {
      const mean = (size + n) * tempo + misses * refeed + pauses * pause;
      const variance = (size + n) * shotVariance + misses * refeedVariance + otherVariance;
      const spread = logVariance(mean, variance);
      const middle = Math.log(mean) - spread / 2;
      const perSd = 1 / Math.sqrt(spread);
      if ((logLongest - middle) * perSd < TOO_SLOW) break;
      centre.push(middle);
      precision.push(perSd);
    }
    if (centre.length === rows[misses]) return { centre, precision, rows };
    rows.push(centre.length);
  }
}

/** Failed attempts, then the set: the seconds to its mark have a lognormal density. */
function waysToSet(
  { centre, precision, rows }: SetSeconds,
  seconds: number,
  { agreement, add }: Stretch,
): void {
  const logSeconds = Math.log(seconds);
  for (let misses = 0; misses + 1 < rows.length; misses++) {
    const end = rows[misses + 1]!;
    let n = misses;
    for (let at = rows[misses]!; at < end; at++, n++) {
      const perSd = precision[at]!;
      const score = (logSeconds - centre[at]!) * perSd;
      if (score < TOO_SLOW) break;
      agreement[n] = Math.exp((-score * score) / 2) * perSd;
    }
    if (n === misses) return;
    add('failed', misses, misses, n);
  }
}

/**
 * After the last set: its pause, failed attempts, and the horn during any of it or inside a run.
 * `room` is for two rows of chances.
 */
function waysToHorn(
  { tempo, refeed, pause }: ClockNode,
  seconds: number,
  size: number,
  showing: number | undefined,
  most: number,
  room: readonly [Float64Array, Float64Array],
  { agreement, add }: Stretch,
): void {
  const logSeconds = Math.log(seconds);
  const shotVariance = (SHOT_VARIATION * tempo) ** 2;
  const refeedVariance = (REFEED_VARIATION * refeed) ** 2;
  const otherVariance = (PAUSE_VARIATION * pause) ** 2 + TAP_DELAY ** 2;
  const fits = (shots: number, misses: number): number => {
    const mean = shots * tempo + misses * refeed + pause;
    const variance = shots * shotVariance + misses * refeedVariance + otherVariance;
    return phi(logScore(logSeconds, mean, logVariance(mean, variance)));
  };
  const atRest = !showing;
  if (atRest) {
    agreement[0] = 1 - fits(1, 0);
    add('failed', 0, 0, 1);
  }

  let [here, fewer] = room;
  // What fits with one miss fewer is known up to here.
  let fewerEnd = 0;
  for (let misses = 0; ; misses++) {
    const first = Math.max(1, misses + (showing ?? 0));
    const last = Math.min(most, Math.max(first, size * misses + (showing || size - 1)));
    here[first] = fits(first, misses);
    let n = first;
    for (; n <= last; n++) {
      if (here[n]! < NEGLIGIBLE && !(n < fewerEnd && fewer[n]! >= NEGLIGIBLE)) break;
      here[n + 1] = fits(n + 1, misses);
    }
    if (n === first) return;
    if (showing === undefined) {
      for (let i = first; i < n; i++) agreement[i] = above(here[i]! - here[i + 1]!);
      add('goingOn', misses, first, n);
    } else if (showing > 0) {
      // A run that was seen is certain; what is left open is the failed attempts before it.
      for (let i = first; i < n; i++) agreement[i - showing] = above(here[i]! - here[i + 1]!);
      add('failed', misses, first - showing, n - showing);
    }
    if (atRest && misses > 0) {
      const end = Math.min(n, fewerEnd);
      for (let i = first; i < end; i++) agreement[i] = above(fewer[i]! - here[i + 1]!);
      add('failed', misses, first, end);
    }
    [here, fewer] = [fewer, here];
    fewerEnd = n + 1;
  }
}

const above = (x: number): number => Math.max(0, x);

/**
 * Drops nodes far below the best at the same stretch; to compare with nodes that have taken in more
 * would be wrong, for a stretch's log can be positive.
 */
function dropHopeless(logWeight: Float64Array): void {
  let best = -Infinity;
  for (let node = 0; node < logWeight.length; node++)
    if (logWeight[node]! > best) best = logWeight[node]!;
  const least = best - HOPELESS;
  for (let node = 0; node < logWeight.length; node++)
    if (logWeight[node]! < least) logWeight[node] = -Infinity;
}

/** Joins the nodes; for the quantiles each is a normal over the whole numbers that the sets allow. */
function mixture(
  { logWeight, mean, variance, misses }: Tally,
  { points }: ShareGrid,
  done: number,
): Omit<ShotEstimate, 'implausible'> | undefined {
  let best = -Infinity;
  let reach = 0;
  for (let node = 0; node < logWeight.length; node++) {
    if (logWeight[node] === -Infinity) continue;
    best = Math.max(best, logWeight[node]!);
    reach = Math.max(reach, mean[node]! + halfWidth(variance[node]! + WITHIN_ONE));
  }
  if (best === -Infinity) return undefined;
  let total = 0;
  let sumBeyond = 0;
  let sumSquared = 0;
  let sumShare = 0;
  let sumShareSquared = 0;
  let sumMisses = 0;
  const byShots = new Float64Array(Math.floor(reach) + 1);
  const density = new Float64Array(byShots.length);
  for (let node = 0; node < logWeight.length; node++) {
    const weight = Math.exp(logWeight[node]! - best);
    if (weight === 0) continue;
    const { share } = points[node % points.length]!;
    const beyond = mean[node]!;
    total += weight;
    sumBeyond += weight * beyond;
    sumSquared += weight * (variance[node]! + beyond * beyond);
    sumShare += weight * share;
    sumShareSquared += weight * share * share;
    sumMisses += weight * misses[node]!;
    addNormal(byShots, beyond, variance[node]! + WITHIN_ONE, weight, density);
  }
  const beyond = sumBeyond / total;
  const consistency = sumShare / total;
  return {
    shots: done + beyond,
    sd: Math.sqrt(Math.max(0, sumSquared / total - beyond * beyond)),
    low: Math.max(done, quantile(byShots, done, 0.1)),
    high: Math.max(done, quantile(byShots, done, 0.9)),
    consistency,
    consistencySd: Math.sqrt(Math.max(0, sumShareSquared / total - consistency * consistency)),
    misses: sumMisses / total,
  };
}

/** Variance of a value that lies anywhere between a half below and a half above a whole number. */
const WITHIN_ONE = 1 / 12;

/** A normal density is looked at up to eight sd from its mean. */
const halfWidth = (variance: number): number => 8 * Math.sqrt(variance);

/**
 * Adds a normal density at the whole numbers from 0, together as heavy as `weight`. From one whole
 * number to the next its logarithm falls by a step that grows evenly, so that two products take the
 * place of an exponential. `density` is room to work in, as long as `byNumber`.
 */
function addNormal(
  byNumber: Float64Array,
  mean: number,
  variance: number,
  weight: number,
  density: Float64Array,
): void {
  const reach = halfWidth(variance);
  const from = Math.max(0, Math.floor(mean - reach));
  const to = Math.floor(mean + reach);
  let here = Math.exp(-((from - mean) ** 2) / (2 * variance));
  let step = Math.exp((mean - from - 0.5) / variance);
  const stepOfStep = Math.exp(-1 / variance);
  let sum = 0;
  for (let n = from; n <= to; n++) {
    density[n] = here;
    sum += here;
    here *= step;
    step *= stepOfStep;
  }
  const scale = weight / sum;
  for (let n = from; n <= to; n++) byNumber[n]! += density[n]! * scale;
}
