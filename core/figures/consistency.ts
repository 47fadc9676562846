import { mustLevel, mustMeasure } from './arguments.ts';
import { fromLogit } from './logit.ts';

/** What is known of the share of a pair's shots that succeed. */
export interface Consistency {
  /** Mean, 0 to 1. */
  consistency: number;
  /** Standard deviation. */
  consistencySd: number;
}

/** How much a pair's consistency moves from one practice to the next, as a part of p (1 − p). */
const MOVES_BETWEEN_PRACTICES = 0.3;

/** What is carried over says no more than this: a Beta with a + b = 2 is as wide as an even one. */
const WIDEST = 2;

/**
 * The Beta distribution with this mean (strictly between 0 and 1) and sd (above 0). With `leastSum`
 * a + b is at least that, so that a large sd is taken as a smaller one.
 */
export function betaOf(mean: number, sd: number, leastSum = 0): { a: number; b: number } {
  const sum = Math.max(leastSum, (mean * (1 - mean)) / sd ** 2 - 1);
  return { a: mean * sum, b: (1 - mean) * sum };
}

/** As `betaOf`, for a consistency that is carried into an advice: no wider than a + b = 2. */
export const carriedBeta = ({ consistency, consistencySd }: Consistency) =>
  betaOf(consistency, consistencySd, WIDEST);

/**
 * What the consistency of one practice says about the next one: the same mean, less sure. For the
 * advice on a set size; never wider than a + b = 2.
 */
export function carriedOver(known: Consistency): Consistency {
  mustBeConsistency(known);
  const { consistency, consistencySd } = known;
  const spread = consistency * (1 - consistency);
  const variance = consistencySd ** 2 + (MOVES_BETWEEN_PRACTICES * spread) ** 2;
  return {
    consistency,
    consistencySd: Math.sqrt(Math.min(variance, spread / (WIDEST + 1))),
  };
}

/**
 * The interval that holds a consistency with the given level (0.8: from the 10% to the 90% quantile
 * of the Beta with its mean and sd), to 1e-6 where its a and b are 0.1 or
 * more. An sd that no Beta with this mean has is a RangeError.
 *
 * The Beta is integrated over the logit, where its density falls off exponentially at both ends, by
 * Simpson's rule.
 */
export function consistencyInterval(
  known: Consistency,
  level = 0.8,
): { low: number; high: number } {
  mustBeConsistency(known);
  const { consistency: mean, consistencySd: sd } = known;
  mustLevel(level);
  if (sd === 0) return { low: mean, high: mean };
  const { a, b } = betaOf(mean, sd);
  if (!(a > 0 && b > 0)) throw new RangeError('consistencySd is too large for this consistency');

  const logDensity = (x: number) => {
    const { logShare, logRest } = fromLogit(x);
    return a * logShare + b * logRest;
  };
  const centre = Math.log(a / b);
  const top = logDensity(centre);
  const density = (x: number) => Math.exp(logDensity(x) - top);
  const from = edge(density, centre, -1 / Math.sqrt((a * b) / (a + b)));
  const to = edge(density, centre, 1 / Math.sqrt((a * b) / (a + b)));

  const step = (to - from) / CELLS;
  const below = new Float64Array(CELLS + 1);
  for (let i = 0; i < CELLS; i++)
    below[i + 1] = below[i]! + simpson(density, from + i * step, from + (i + 1) * step);

  const quantile = (share: number) => {
    const target = share * below[CELLS]!;
    let cell = 0;
    while (cell < CELLS - 1 && below[cell + 1]! < target) cell++;
    const start = from + cell * step;
    let x = start + step / 2;
    for (let i = 0; i < 4; i++)
      x += (target - below[cell]! - simpson(density, start, x)) / density(x);
    return fromLogit(x).share;
  };
  return { low: quantile((1 - level) / 2), high: quantile((1 + level) / 2) };
}

const CELLS = 2000;

/** Where the density has fallen to nothing, looked for in growing steps. */
function edge(density: (x: number) => number, centre: number, step: number): number {
  let x = centre + step;
  for (let grown = step; density(x) > 1e-16; grown *= 1.5) x += grown;
  return x;
}

const simpson = (f: (x: number) => number, from: number, to: number): number =>
  ((to - from) / 6) * (f(from) + 4 * f((from + to) / 2) + f(to));

/** Throws a RangeError unless the consistency is a share and its sd is finite and 0 or more. */
export function mustBeConsistency({ consistency, consistencySd }: Consistency): void {
  if (!(consistency >= 0 && consistency <= 1))
    throw new RangeError(`consistency must be from 0 to 1, not ${consistency}`);
  mustMeasure('consistencySd', consistencySd);
}
