import { cholesky, dot, solve } from './linear.ts';

/** Counts and what they are explained by. */
export interface PoissonData {
  /** How often it happened, one number an observation, 0 and up. */
  readonly counts: ArrayLike<number>;
  /** How long or how often it could have happened, above 0. */
  readonly exposures: ArrayLike<number>;
  /** For each observation the columns that are 1 in it, each once; all others are 0. */
  readonly rows: readonly (readonly number[])[];
  /** For each column λ of its penalty (λ/2) coefficient², 0 for none; its length is the number of columns. */
  readonly penalty: ArrayLike<number>;
}

export interface PoissonFit {
  coefficients: Float64Array;
  /** Expected count of each observation. */
  fitted: Float64Array;
  /** `poissonDeviance` of the fit; the penalty is no part of it. */
  deviance: number;
  /** Cholesky factor of the penalised information XᵀWX + diag(penalty) at the maximum; its inverse is the covariance. */
  factor: Float64Array;
}

/**
 * Penalised Poisson regression with a log link and indicator columns: maximises
 * Σ (y ln m − m) − ½ Σ penalty · coefficient², m = exposure · exp(sum of the row's coefficients),
 * by Newton's method with step halving, to a gradient of 1e-10 or as far as rounding allows.
 *
 * The objective is concave, so there is one maximum. Where an unpenalised column saw no counts it
 * lies at −∞, and the coefficient stops where the gradient is 1e-10. Columns that neither the
 * observations nor the penalty can tell apart are a RangeError.
 *
 * Source: McCullagh and Nelder, Generalized Linear Models (1989), sections 2.5 and 6.2 (from
 * memory); the penalty is the usual ridge.
 *
 * @param start coefficients to begin from; those of a fit nearby save a third of the work
 */
export function poissonRegression(data: PoissonData, start?: Float64Array): PoissonFit {
  const { counts, exposures, rows, penalty } = data;
  const width = penalty.length;

  const factorAt = (weights: Float64Array) => {
    const information = new Float64Array(width * width);
    for (let j = 0; j < width; j++) information[j * width + j] = penalty[j]!;
    for (let r = 0; r < rows.length; r++) {
      for (const i of rows[r]!)
        for (const j of rows[r]!) information[i * width + j]! += weights[r]!;
    }
    const factor = cholesky(information);
    if (!factor) throw new RangeError('rows: some columns cannot be told apart at this penalty');
    return factor;
  };

  const sumByColumn = (value: (r: number) => number) => {
    const sums = new Float64Array(width);
    for (let r = 0; r < rows.length; r++) {
      const v = value(r);
      for (const j of rows[r]!) sums[j]! += v;
    }
    return sums;
  };

  const at = (coefficients: Float64Array) => {
    const fitted = new Float64Array(rows.length);
    let objective = 0;
    for (let j = 0; j < width; j++) objective -= 0.5 * penalty[j]! * coefficients[j]! ** 2;
    for (let r = 0; r < rows.length; r++) {
      let linear = 0;
      for (const j of rows[r]!) linear += coefficients[j]!;
      fitted[r] = exposures[r]! * Math.exp(linear);
      objective += counts[r]! * linear - fitted[r]!;
    }
    return { coefficients, fitted, objective };
  };

  // The weighted least-squares fit to the logs of the raw rates, half an event added so that a
  // count of 0 has a log: near enough for Newton's method to converge at once.
  const nearby = () => {
    const smoothed = Float64Array.from(counts, (count) => count + 0.5);
    const right = sumByColumn((r) => smoothed[r]! * Math.log(smoothed[r]! / exposures[r]!));
    return solve(factorAt(smoothed), right);
  };

  let now = at(start ?? nearby());
  let factor = factorAt(now.fitted);
  for (let iteration = 0; iteration < 200; iteration++) {
    const gradient = sumByColumn((r) => counts[r]! - now.fitted[r]!);
    for (let j = 0; j < width; j++) gradient[j]! -= penalty[j]! * now.coefficients[j]!;
    if (gradient.every((slope) => Math.abs(slope) <= 1e-10)) break;
    const step = solve(factor, gradient);
    // Twice the gain still to come. With very many counts the gradient's own rounding is above
    // 1e-10, but no coefficient is then off by more than 1e-12 of its standard error.
    if (dot(step, gradient) <= 1e-24) break;
    const slack = 1e-14 * Math.abs(now.objective);
    let share = 1;
    let next = at(now.coefficients.map((c, j) => c + step[j]!));
    while (!(next.objective >= now.objective - slack) && share > 1e-12) {
      share /= 2;
      next = at(now.coefficients.map((c, j) => c + share * step[j]!));
    }
    now = next;
    factor = factorAt(now.fitted);
  }

  const { coefficients, fitted } = now;
  return { coefficients, fitted, deviance: poissonDeviance(counts, fitted), factor };
}

/** 2 Σ (y ln(y/m) − (y − m)) of counts y and expected counts m: 0 where they agree, about 1 an observation by chance. */
export function poissonDeviance(counts: ArrayLike<number>, fitted: ArrayLike<number>): number {
  let deviance = 0;
  for (let r = 0; r < counts.length; r++) {
    const y = counts[r]!;
    const m = fitted[r]!;
    deviance += 2 * ((y === 0 ? 0 : y * Math.log(y / m)) - (y - m));
  }
  return deviance;
}
