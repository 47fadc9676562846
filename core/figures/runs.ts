import { mustCount } from '../arguments.ts';

function mustRun(n: number, p: number): void {
  mustCount('n', n);
  if (n === 0) throw new RangeError('n must be at least 1');
  if (!(p >= 0 && p <= 1)) throw new RangeError(`p must be between 0 and 1, not ${p}`);
}

/**
 * How many shots it takes until n in a row succeed, each with probability p and independently: mean
 * and variance, in shots (Feller, An Introduction to Probability Theory and Its Applications I, 3rd
 * ed. 1968, XIII.7).
 *
 * p = 1 gives n and 0, p = 0 gives Infinity for both. n that is not a whole number from 1 and p outside
 * 0 to 1 are a RangeError.
 *
 * Feller's closed forms lose all digits to cancellation near p = 1. This steps from runs of k − 1 to
 * runs of k instead: after a run of k − 1 one more shot either completes it or starts all over.
 */
export function shotsToRun(n: number, p: number): { mean: number; variance: number } {
  mustRun(n, p);
  if (p === 0) return { mean: Infinity, variance: Infinity };
  let mean = 0;
  let variance = 0;
  for (let k = 1; k <= n; k++) {
    mean = (mean + 1) / p;
    variance = variance / p + (1 - p) * mean * mean;
  }
  return { mean, variance };
}

/**
 * How likely 0, 1, 2 … full runs of n are in a given number of shots, each a success with probability p
 * and independently. After a full run the counting starts anew, as a pair counts its sets (the binomial
 * distribution of order n: Philippou and Makri 1986, Stat. Prob. Lett. 4: 211–215).
 *
 * Element k is the probability of exactly k runs, up to the most that fit into the shots. Numbers that
 * are not whole, shots below 0, n below 1 and p outside 0 to 1 are a RangeError.
 */
export function runCounts(shots: number, n: number, p: number): number[] {
  mustCount('shots', shots);
  mustRun(n, p);
  const most = Math.floor(shots / n);
  // chance[k][l]: k full runs so far, and l successes in the run that is under way.
  let chance = Array.from({ length: most + 1 }, () => new Float64Array(n));
  chance[0]![0] = 1;
  for (let shot = 0; shot < shots; shot++) {
    chance = chance.map((row, k) => {
      const next = new Float64Array(n);
      next.set(row.subarray(0, n - 1), 1);
      for (let l = 1; l < n; l++) next[l]! *= p;
      next[0] = (1 - p) * total(row) + p * (k > 0 ? chance[k - 1]![n - 1]! : 0);
      return next;
    });
  }
  return chance.map(total);
}

const total = (row: Float64Array) => row.reduce((sum, value) => sum + value, 0);
