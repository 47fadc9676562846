import { type Attempts, attempts } from './attempts.ts';
import { logRising } from './rising-factorial.ts';
import { chanceToFit, roundClock } from './round-clock.ts';
import { quantile } from './spread.ts';
import type { ShotEstimate } from './touches.ts';
import type { CheckedRound } from './touches-round.ts';

/** Chances below this are left out. */
const NEGLIGIBLE = 1e-9;
/** Misses looked at where the clock hardly allows the sets, so that nothing may be cut for its chance. */
const MISSES_WHERE_IMPLAUSIBLE = 12;
/**
 * The success share at which `attempts` are tabulated. Any value gives the same result; one in the
 * usual range keeps the tables inside the range of a double.
 */
const TABLE_SHARE = 0.8;

/** One way of scoring the cell of N shots with M misses. */
interface Cells {
  /** Least and most shots that can go with so many misses. */
  shots(misses: number): [least: number, most: number];
  /** The largest of the chances that the cell is made of: it falls as shots and misses rise. */
  largest(shots: number, misses: number): number;
  /** Chance of the cell and of what was seen, but for the Beta factor and `logWays`. */
  chance(shots: number, misses: number): number;
  /** Logarithm of the number of orders that the chance is a part of. */
  logWays(shots: number, misses: number): number;
}

/**
 * The touches of a round from its counts alone: a sum over all pairs of shots N and misses M. Given
 * both, the order of hits and misses enters through a number of sequences only, and the success share
 * through p^(N − M) (1 − p)^M only, so that its Beta prior integrates out exactly. Undefined where no
 * cell is possible.
 */
export function touchesFromCounts(
  round: CheckedRound,
  implausible: boolean,
): Omit<ShotEstimate, 'implausible'> | undefined {
  const { size, sets, a, b } = round;
  const done = size * sets;
  const most = mostShots(round);
  const fits = chances(round, most + 1);
  const logFactorial = logRising(1, most);
  const cells = round.startsAgain
    ? restarting(round, fits, logFactorial, most)
    : continuing(round, fits, logFactorial, most);

  const logHits = logRising(a, most);
  const logMisses = logRising(b, most);
  const logShots = logRising(a + b, most);
  const counted = round.misses !== undefined;
  const cut = !counted && !implausible;
  const first = round.misses ?? 0;
  const last = round.misses ?? (implausible ? MISSES_WHERE_IMPLAUSIBLE : most - done);

  const byShots = new Float64Array(most + 1 - done);
  let total = 0;
  let sumMisses = 0;
  let sumShare = 0;
  let sumShareSquared = 0;
  for (let m = first; m <= last; m++) {
    if (cut && m > 0 && fits(done + m, m - 1, Math.max(0, sets - 1)) < NEGLIGIBLE) break;
    const [from, to] = cells.shots(m);
    for (let n = from; n <= to; n++) {
      if (cut && cells.largest(n, m) < NEGLIGIBLE) break;
      if (fits(n + 1, m, sets) > 1 - NEGLIGIBLE) continue;
      const chance = cells.chance(n, m);
      if (chance <= 0) continue;
      const logBeta = logHits[n - m]! + logMisses[m]! - logShots[n]!;
      const weight = Math.exp(logBeta + cells.logWays(n, m) + Math.log(chance));
      // Given N and M the success share is Beta(hits, rest).
      const hits = a + n - m;
      const all = a + b + n;
      byShots[n - done]! += weight;
      total += weight;
      sumMisses += weight * m;
      sumShare += (weight * hits) / all;
      sumShareSquared += (weight * hits * (hits + 1)) / (all * (all + 1));
    }
  }
  if (!(total > 0)) return undefined;

  let beyond = 0;
  for (let i = 0; i < byShots.length; i++) beyond += (i * byShots[i]!) / total;
  let variance = 0;
  for (let i = 0; i < byShots.length; i++) variance += ((i - beyond) ** 2 * byShots[i]!) / total;
  const consistency = sumShare / total;
  return {
    shots: done + beyond,
    sd: Math.sqrt(variance),
    low: Math.max(done, quantile(byShots, done, 0.1)),
    high: Math.max(done, quantile(byShots, done, 0.9)),
    consistency,
    consistencySd: Math.sqrt(Math.max(0, sumShareSquared / total - consistency ** 2)),
    misses: sumMisses / total,
  };
}

/** More shots than this are out of the question: even of a pair four and a half sd faster than usual. */
function mostShots({ size, sets, seconds, tempo, misses }: CheckedRound): number {
  const [median, sdLog] = tempo;
  const byClock = Math.ceil((1.05 * seconds) / (median * Math.exp(-4.5 * sdLog))) + 1;
  return Math.max(byClock, size * sets + size + 5 + (misses ?? 0));
}

type Chances = (shots: number, refeeds: number, pauses: number) => number;

/**
 * The chance that so much fits into the round. Each is asked for several times, and only while the sum
 * is at as many misses or one more, so that two rows of them are kept: with and without the last
 * set's pause.
 */
function chances(round: CheckedRound, most: number): Chances {
  const { sets, seconds, refeed, pause } = round;
  const clock = roundClock(round);
  const logSeconds = Math.log(seconds);
  // Where neither a miss nor a set takes any time, as on target, all rows are one.
  const shotsOnly = refeed[0] === 0 && pause[0] === 0;
  const rows = Array.from({ length: 4 }, () => ({
    refeeds: -1,
    chances: new Float64Array(most + 1),
  }));
  return (shots, refeeds, pauses) => {
    if (shots <= 0) return 1;
    const row = rows[shotsOnly ? 0 : 2 * (refeeds % 2) + (pauses === sets ? 0 : 1)]!;
    if (row.refeeds !== refeeds && !(shotsOnly && row.refeeds >= 0)) {
      row.refeeds = refeeds;
      row.chances.fill(UNKNOWN);
    }
    let chance = row.chances[shots]!;
    if (chance === UNKNOWN) {
      chance = chanceToFit(clock, logSeconds, shots, refeeds, pauses);
      row.chances[shots] = chance;
    }
    return chance;
  };
}

const UNKNOWN = -1;

const above = (x: number): number => Math.max(0, x);

/** In a row and in a sequence: a miss starts the set again. */
function restarting(
  round: CheckedRound,
  fits: Chances,
  logFactorial: Float64Array,
  most: number,
): Cells {
  const { size, sets, showing, playedOut, longestRun } = round;
  const done = size * sets;
  const table = playedOut
    ? attempts(TABLE_SHARE, size, most - done)
    : attempts(TABLE_SHARE, longestRun.most + 1, most - done, {
        reach: longestRun.least,
        showing,
      });
  const logHit = Math.log(TABLE_SHARE);
  const logMiss = Math.log(1 - TABLE_SHARE);
  return {
    shots: (m) => [Math.max(1, done + m), most],
    // Orders of M misses and K sets, out of the tables' share.
    logWays: (n, m) =>
      logFactorial[m + sets]! -
      logFactorial[m]! -
      logFactorial[sets]! -
      m * logMiss -
      (n - done - m) * logHit,
    ...(playedOut
      ? playedOutHorn(size, sets, table, fits)
      : plainHorn(size, sets, table, fits, !showing)),
  };
}

type Horn = Pick<Cells, 'largest' | 'chance'>;

/**
 * The horn stops play at once: inside a run, during a re-feed or during a pause. `atRest` is false
 * where a run was seen to go on. Of the orders of M misses and K sets, a share M / (M + K) ends in a
 * miss and the others in a set.
 */
function plainHorn(
  size: number,
  sets: number,
  table: Attempts,
  fits: Chances,
  atRest: boolean,
): Horn {
  const done = size * sets;
  return {
    largest(n, m) {
      let largest = fits(n, m, sets);
      if (m > 0) largest = Math.max(largest, fits(n, m - 1, sets));
      if (sets > 0) largest = Math.max(largest, fits(n, m, sets - 1));
      return largest;
    },
    chance(n, m) {
      const more = fits(n + 1, m, sets);
      let chance = table.goingOn(m)[n - done]! * above(fits(n, m, sets) - more);
      if (atRest && m + sets > 0) {
        let last = 0;
        if (m > 0) last += (m / (m + sets)) * above(fits(n, m - 1, sets) - more);
        if (sets > 0) last += (sets / (m + sets)) * above(fits(n, m, sets - 1) - more);
        chance += table.failed(m)[n - done]! * last;
      }
      return chance;
    },
  };
}

/**
 * The rally in progress at the horn is played to its end: only its first shot has to fit, and the
 * round ends in a miss after l shots or in a set.
 */
function playedOutHorn(size: number, sets: number, table: Attempts, fits: Chances): Horn {
  const done = size * sets;
  return {
    largest(n, m) {
      let largest = 0;
      if (m > 0) largest = fits(n - size + 1, m - 1, sets);
      if (sets > 0) largest = Math.max(largest, fits(n - size + 1, m, sets - 1));
      return largest;
    },
    chance(n, m) {
      const more = fits(n + 1, m, sets);
      const beyond = n - done;
      let chance = 0;
      if (m > 0) {
        const before = table.failed(m - 1);
        let sum = 0;
        let lastAttempt = 1 - TABLE_SHARE;
        for (let l = 1; l <= Math.min(size, beyond); l++) {
          sum += before[beyond - l]! * lastAttempt * above(fits(n - l + 1, m - 1, sets) - more);
          lastAttempt *= TABLE_SHARE;
        }
        chance += (m / (m + sets)) * sum;
      }
      if (sets > 0) {
        const fitting = above(fits(n - size + 1, m, sets - 1) - more);
        chance += (sets / (m + sets)) * table.failed(m)[beyond]! * fitting;
      }
      return chance;
    },
  };
}

/** In total and on target: a miss does not start the set again, so any order of hits and misses counts. */
function continuing(
  { size, sets, showing }: CheckedRound,
  fits: Chances,
  logFactorial: Float64Array,
  most: number,
): Cells {
  const done = size * sets;
  // Just after a set its pause has not yet passed.
  const pausesAt = (n: number, m: number) => (n - m === done && sets > 0 ? sets - 1 : sets);
  return {
    shots: (m) => [
      Math.max(1, done + m + (showing ?? 0)),
      Math.min(most, done + m + (showing ?? size - 1)),
    ],
    logWays: (n, m) => logFactorial[n]! - logFactorial[m]! - logFactorial[n - m]!,
    largest: (n, m) =>
      Math.max(m > 0 ? fits(n, m - 1, sets) : 0, n > m ? fits(n, m, pausesAt(n, m)) : 0),
    chance(n, m) {
      const more = fits(n + 1, m, sets);
      let chance = 0;
      if (m > 0) chance += (m / n) * above(fits(n, m - 1, sets) - more);
      if (n > m) chance += ((n - m) / n) * above(fits(n, m, pausesAt(n, m)) - more);
      return chance;
    },
  };
}
