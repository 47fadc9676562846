import { cholesky, solve } from './linear.ts';

/**
 * Hits and misses of several who take equal parts in each row: the share of hits is the mean of
 * their own shares, the logit of each a sum of coefficients.
 */
export interface MeanData {
  /** Each row's, 0 and up, not both 0; they need not be whole. */
  readonly hits: Float64Array;
  readonly misses: Float64Array;
  /** The columns that a row mentions, each once, row after row; row r's from starts[r] to starts[r + 1]. */
  readonly columns: Int32Array;
  readonly starts: Int32Array;
  /** For each who takes part, row after row, the values that the row's columns have in the logit. */
  readonly values: Float64Array;
  /** Where those of row r begin; one more number than there are rows. */
  readonly valueStarts: Int32Array;
  /** A normal prior for each coefficient: its mean and 1/sd². */
  readonly means: Float64Array;
  readonly precisions: Float64Array;
}

export interface MeanFit {
  /** The top of likelihood and prior together. */
  coefficients: Float64Array;
  /** Cholesky factor of the information at the top; its inverse is the covariance. */
  factor: Float64Array;
  /** Share of hits and share of misses that each row is expected to have. */
  shares: Float64Array;
  rests: Float64Array;
}

/** After a step shorter than this the curvature is nearly what it was, and its factor is kept. */
const SHORT = 0.01;
/** Far more than were ever needed. */
const MOST_STEPS = 200;

/**
 * Penalised binomial regression of a mean of shares: maximises
 *
 *   (1/κ) Σ (h ln p + m ln(1 − p)) − ½ Σ precision (w − mean)²,   p_r = mean of 1/(1 + e^{−x'w})
 *
 * over those who take part in row r, by Newton's method with step halving. Where several take part
 * minus the objective need not be convex: where its curvature is no top's, the step is Fisher's, by
 * the expected information, which is always positive definite. (Fisher's alone takes seventeen steps
 * for six on a season, and goes to and fro for long where rows contradict each other.) No second
 * top was met from 40 random starts, 2.5 prior sds wide, on each of eight small data sets
 * (tests/reference/levels.test.ts).
 *
 * The covariance is the inverse of the expected information at the top.
 *
 * Source: McCullagh and Nelder, Generalized Linear Models (1989), ch. 2 and 4, the dispersion κ ch. 9
 * (from memory); the prior is a ridge.
 *
 * @param dispersion κ, 1 where the counts are as even as binomial ones
 * @param enough the largest change of a coefficient that is not worth another step
 * @param from coefficients to start at
 */
export function meanRegression(
  data: MeanData,
  dispersion: number,
  enough: number,
  from: Float64Array = data.means,
): MeanFit {
  let now = placeAt(data, dispersion, from);
  let factor: Float64Array | undefined;
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    factor ??=
      cholesky(curvatureAt(data, dispersion, now, 'seen')) ?? factorAt(data, dispersion, now);
    const step = solve(factor, gradientAt(data, dispersion, now));
    const reach = step.reduce((most, d) => Math.max(most, Math.abs(d)), 0);
    const least = now.objective - 1e-13 * Math.abs(now.objective);
    let share = 1;
    let next = placeAt(data, dispersion, moved(now.coefficients, step, share));
    while (!(next.objective >= least) && share > 1e-9) {
      share /= 2;
      next = placeAt(data, dispersion, moved(now.coefficients, step, share));
    }
    if (!(next.objective >= least)) break; // Rounding lets nothing higher be found.
    now = next;
    if (reach <= enough) break;
    if (reach > SHORT || share < 1) factor = undefined;
  }
  const { coefficients, shares, rests } = now;
  return { coefficients, factor: factorAt(data, dispersion, now), shares, rests };
}

const moved = (from: Float64Array, step: Float64Array, share: number): Float64Array =>
  from.map((coefficient, i) => coefficient + share * step[i]!);

interface Place {
  coefficients: Float64Array;
  objective: number;
  shares: Float64Array;
  rests: Float64Array;
  /** The slope of each row's share in each of its columns. */
  slopes: Float64Array;
  /** How the part of each who takes part bends in the own logit, at the place of the own values. */
  bends: Float64Array;
}

function placeAt(data: MeanData, dispersion: number, coefficients: Float64Array): Place {
  const { hits, misses, columns, starts, values, valueStarts, means, precisions } = data;
  const shares = new Float64Array(hits.length);
  const rests = new Float64Array(hits.length);
  const slopes = new Float64Array(columns.length);
  const bends = new Float64Array(values.length);
  let likelihood = 0;
  for (let r = 0; r < hits.length; r++) {
    const from = starts[r]!;
    const width = starts[r + 1]! - from;
    const end = valueStarts[r + 1]!;
    const part = width / (end - valueStarts[r]!);
    let p = 0;
    let rest = 0;
    for (let v = valueStarts[r]!; v < end; v += width) {
      let logit = 0;
      for (let c = 0; c < width; c++) logit += values[v + c]! * coefficients[columns[from + c]!]!;
      // The smaller of the two shares keeps its digits.
      const odds = Math.exp(-Math.abs(logit));
      const larger = 1 / (1 + odds);
      const smaller = odds * larger;
      p += part * (logit < 0 ? smaller : larger);
      rest += part * (logit < 0 ? larger : smaller);
      const slope = part * larger * smaller;
      bends[v] = slope * (logit < 0 ? larger - smaller : smaller - larger);
      for (let c = 0; c < width; c++) slopes[from + c]! += slope * values[v + c]!;
    }
    shares[r] = p;
    rests[r] = rest;
    if (hits[r]! > 0) likelihood += hits[r]! * Math.log(p);
    if (misses[r]! > 0) likelihood += misses[r]! * Math.log(rest);
  }
  let penalty = 0;
  for (let i = 0; i < means.length; i++) {
    penalty += precisions[i]! * (coefficients[i]! - means[i]!) ** 2;
  }
  const objective = likelihood / dispersion - penalty / 2;
  return { coefficients, objective, shares, rests, slopes, bends };
}

function gradientAt(
  { hits, misses, columns, starts, means, precisions }: MeanData,
  dispersion: number,
  { coefficients, shares, rests, slopes }: Place,
): Float64Array {
  const gradient = precisions.map((precision, i) => precision * (means[i]! - coefficients[i]!));
  for (let r = 0; r < hits.length; r++) {
    const p = shares[r]!;
    const rest = rests[r]!;
    // (h − n p) / (p (1 − p)), n = h + m.
    const pull = (hits[r]! / p - misses[r]! / rest) / dispersion;
    for (let c = starts[r]!; c < starts[r + 1]!; c++) gradient[columns[c]!]! += pull * slopes[c]!;
  }
  return gradient;
}

/**
 * Minus the second derivatives of the objective, as hits and misses were seen or as they are to be
 * expected; the lower triangle only, which is all that a factor reads.
 */
function curvatureAt(
  { hits, misses, columns, starts, values, valueStarts, precisions }: MeanData,
  dispersion: number,
  { shares, rests, slopes, bends }: Place,
  as: 'seen' | 'expected',
): Float64Array {
  const n = precisions.length;
  const curvature = new Float64Array(n * n);
  for (let i = 0; i < n; i++) curvature[i * n + i] = precisions[i]!;
  const add = (i: number, j: number, amount: number) => {
    curvature[i > j ? i * n + j : j * n + i]! += amount;
  };
  for (let r = 0; r < hits.length; r++) {
    const h = hits[r]!;
    const m = misses[r]!;
    const p = shares[r]!;
    const rest = rests[r]!;
    const from = starts[r]!;
    const width = starts[r + 1]! - from;
    const weight = as === 'seen' ? h / (p * p) + m / (rest * rest) : (h + m) / (p * rest);
    for (let a = 0; a < width; a++) {
      const weighed = (weight / dispersion) * slopes[from + a]!;
      for (let b = 0; b <= a; b++) {
        add(columns[from + a]!, columns[from + b]!, weighed * slopes[from + b]!);
      }
    }
    // Where hits and misses are as expected the shares' own bends cancel.
    if (as === 'expected') continue;
    const pull = (h / p - m / rest) / dispersion;
    for (let v = valueStarts[r]!; v < valueStarts[r + 1]!; v += width) {
      for (let a = 0; a < width; a++) {
        if (values[v + a] === 0) continue;
        const bent = pull * bends[v]! * values[v + a]!;
        for (let b = 0; b <= a; b++) {
          if (values[v + b] !== 0) {
            add(columns[from + a]!, columns[from + b]!, -bent * values[v + b]!);
          }
        }
      }
    }
  }
  return curvature;
}

function factorAt(data: MeanData, dispersion: number, place: Place): Float64Array {
  const factor = cholesky(curvatureAt(data, dispersion, place, 'expected'));
  if (!factor)
    throw new RangeError('precisions: rounding hides them beside so many hits and misses');
  return factor;
}
