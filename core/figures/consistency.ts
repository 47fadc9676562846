import { mustLevel, mustMeasure } from '../arguments.ts';
import type { Consistency } from '../ledger/summary.ts';
import { fromLogit } from './logit.ts';

/** How much a pair's consistency moves from one practice to the next, as a part of p (1 − p). */
const MOVES_BETWEEN_PRACTICES = 0.3;

/** What is carried over says no more than this: a Beta with a + b = 2 is as wide as an even one. */
const WIDEST = 2;

/** A Beta distribution by its two parameters, as it is told by a hits and b misses. */
export interface Beta {
  a: number;
  b: number;
}

/**
 * The Beta distribution with this mean (strictly between 0 and 1) and sd (above 0). With `leastSum`
 * a + b is at least that, so that a large sd is taken as a smaller one.
 */
export function betaOf(mean: number, sd: number, leastSum = 0): Beta {
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
 * of the Beta with its mean and sd), to 1e-6 where its a and b are 0.3 or more. An sd that no Beta
 * with this mean has is a RangeError.
 *
 * The Beta is integrated over the logit, where its density falls off exponentially at both ends, in
 * cells that grow outwards from its mode: some 20 µs, for a screen shows hundreds.
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

  const mode = Math.log(a / b);
  const logDensity = (x: number) => {
    const { logShare, logRest } = fromLogit(x);
    return a * logShare + b * logRest;
  };
  const top = logDensity(mode);
  const density = (x: number) => Math.exp(logDensity(x) - top);
  const step = FIRST_CELL / Math.sqrt((a * b) / (a + b));
  const cells = [...outwards(density, mode, -step).reverse(), ...outwards(density, mode, step)];
  const whole = cells.reduce((sum, { mass }) => sum + mass, 0);

  const quantile = (share: number) => {
    let rest = share * whole;
    const cell = cells.find(({ mass }) => {
      if (rest <= mass) return true;
      rest -= mass;
      return false;
    });
    if (!cell) return fromLogit(cells.at(-1)!.to).share; // Only rounding in the sum leads here.
    let x = cell.from + ((cell.to - cell.from) * rest) / cell.mass;
    for (let i = 0; i < NEWTON_STEPS; i++) {
      const off = (rest - integral(density, cell.from, x)) / density(x);
      x = Math.min(cell.to, Math.max(cell.from, x + off));
    }
    return fromLogit(x).share;
  };
  return { low: quantile((1 - level) / 2), high: quantile((1 + level) / 2) };
}

/** Width of the two innermost cells, in sds of a normal density with the same top. */
const FIRST_CELL = 0.5;
/** How much wider each cell is than the one inside it. */
const WIDER = 1.2;
const NEWTON_STEPS = 5;

/** The cells from the mode to where the density has fallen to nothing, the innermost first. */
function outwards(
  density: (x: number) => number,
  mode: number,
  step: number,
): { from: number; to: number; mass: number }[] {
  const cells = [];
  for (let x = mode, width = step; ; x += width, width *= WIDER) {
    const [from, to] = width > 0 ? [x, x + width] : [x + width, x];
    cells.push({ from, to, mass: integral(density, from, to) });
    if (density(x + width) < 1e-12) return cells;
  }
}

/** Gauss and Legendre's rule with four points (Abramowitz and Stegun 1964, table 25.4). */
const NODES = [
  [0.3399810435848563, 0.6521451548625461],
  [0.8611363115940526, 0.3478548451374538],
] as const;

function integral(f: (x: number) => number, from: number, to: number): number {
  const half = (to - from) / 2;
  const middle = from + half;
  let sum = 0;
  for (const [node, weight] of NODES) {
    sum += weight * (f(middle - half * node) + f(middle + half * node));
  }
  return half * sum;
}

/** Throws a RangeError unless the consistency is a share and its sd is finite and 0 or more. */
export function mustBeConsistency({ consistency, consistencySd }: Consistency): void {
  if (!(consistency >= 0 && consistency <= 1))
    throw new RangeError(`consistency must be from 0 to 1, not ${consistency}`);
  mustMeasure('consistencySd', consistencySd);
}
