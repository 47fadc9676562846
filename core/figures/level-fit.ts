import { type LevelDesign, levelDesign } from './level-design.ts';
import { LEVEL_PRIORS, type LevelPriors } from './level-priors.ts';
import type { LevelData } from './level-tallies.ts';
import { dot, inverseDiagonal, solveLower } from './linear.ts';
import { type MeanData, type MeanFit, meanRegression } from './mean-regression.ts';

/** Levels and changes of a squad, as far as its tallies tell them. */
export interface LevelFit extends Pick<LevelDesign, 'kinds' | 'players' | 'tallies' | 'age'> {
  onTarget: boolean;
  priors: LevelPriors;
  /** κ: how many times more the tallies vary than balls that come back or do not by chance alone. */
  dispersion: number;
  /** A sum of unknowns, each so many times: its mean and sd. */
  sum(parts: Iterable<readonly [unknown: number, times: number]>): { mean: number; sd: number };
}

/** Smaller steps than this change no digit that a screen shows. */
const ENOUGH = 1e-5;
/** What the dispersion is drawn to, with the weight of so many tallies: as simulated seasons had it. */
const USUAL_DISPERSION = 1.15;
const USUAL_WEIGHT = 20;

/**
 * The level of every player at every kind of work and its change, from all tallies of the last twelve
 * weeks at once: a penalised binomial regression (see `levelDesign` for its terms, `LEVEL_PRIORS` for
 * what it knows beforehand). The same tallies give the same answer, in whatever order they come to
 * within rounding.
 *
 * A count of balls varies by more than chance: clocks are guessed, days have their form, some suit
 * each other. So a first fit measures the dispersion κ = max(1, (X² + 20 · 1.15)/(N − edf + 20)) over
 * N tallies, X² Pearson's and edf the unknowns less those that the prior decides, and a second fit
 * takes it for known.
 *
 * Undefined where no tally tells anything. `RangeError` for a share of exactly 0 or 1, or one that
 * is sure beyond measure.
 *
 * Sources: mixed-model equations, Henderson, Biometrics 31 (1975) 423-447; random slopes, Laird and
 * Ware, Biometrics 38 (1982) 963-974; penalised quasi-likelihood, Breslow and Clayton, JASA 88 (1993)
 * 9-25; dispersion, Wedderburn, Biometrika 61 (1974) 439-447 (all from memory). The mean of shares in
 * a pair and every constant are this project's.
 *
 * @param options `dispersion` where it is known; `enough`, the largest step that ends the search; both
 *   and `priors` for tests
 */
export function fitLevels(
  data: LevelData,
  options: { priors?: LevelPriors; dispersion?: number; enough?: number } = {},
): LevelFit | undefined {
  const { onTarget } = data;
  const { priors = LEVEL_PRIORS[onTarget ? 'onTarget' : 'back'], enough = ENOUGH } = options;
  const design = levelDesign(data, priors);
  if (!design) return undefined;
  const first = meanRegression(design.data, options.dispersion ?? 1, enough);
  const dispersion = options.dispersion ?? dispersionOf(design.data, first);
  const { coefficients, factor } =
    dispersion === (options.dispersion ?? 1)
      ? first
      : meanRegression(design.data, dispersion, enough, first.coefficients);

  const { kinds, players, tallies, age } = design;
  return {
    ...{ kinds, players, tallies, age, onTarget, priors, dispersion },
    sum(parts) {
      const times = new Float64Array(coefficients.length);
      let mean = 0;
      for (const [unknown, part] of parts) {
        times[unknown]! += part;
        mean += part * coefficients[unknown]!;
      }
      const scaled = solveLower(factor, times);
      return { mean, sd: Math.sqrt(dot(scaled, scaled)) };
    },
  };
}

function dispersionOf(
  { hits, misses, precisions }: MeanData,
  { factor, shares, rests }: MeanFit,
): number {
  let squares = 0;
  for (let r = 0; r < hits.length; r++) {
    const n = hits[r]! + misses[r]!;
    const p = shares[r]!;
    squares += (hits[r]! * rests[r]! - misses[r]! * p) ** 2 / (n * p * rests[r]!);
  }
  // Of each unknown the part that the tallies decide.
  const decided = inverseDiagonal(factor).reduce((sum, v, i) => sum + 1 - precisions[i]! * v, 0);
  const free = hits.length - decided;
  return Math.max(1, (squares + USUAL_WEIGHT * USUAL_DISPERSION) / (free + USUAL_WEIGHT));
}
