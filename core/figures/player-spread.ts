import { cholesky, dot, inverse, logDeterminant, solveLower } from './linear.ts';
import { maximise } from './maximise.ts';
import { poissonRegression } from './poisson-regression.ts';

/** Counts of pairs, with drills and players as numbers from 0. */
export interface PairCounts {
  /** Sets of each record. */
  readonly sets: readonly number[];
  /** Minutes of each record, above 0. */
  readonly exposures: readonly number[];
  readonly drillOf: readonly number[];
  readonly pairOf: readonly (readonly [number, number])[];
  /** How many drills there are; each has at least one set. */
  readonly drills: number;
  /** How many players there are; each has at least one record. */
  readonly players: number;
}

/** ln of each drill's pooled rate: what μ is where all players are alike. */
export function pooledRates({ sets, exposures, drillOf, drills }: PairCounts): Float64Array {
  const made = new Float64Array(drills);
  const spent = new Float64Array(drills);
  drillOf.forEach((d, r) => {
    made[d]! += sets[r]!;
    spent[d]! += exposures[r]!;
  });
  return made.map((k, d) => Math.log(k / spent[d]!));
}

/**
 * The Laplace approximation, at one μ and one σ² above 0, of the marginal log-likelihood of
 * sets ~ Poisson(exposure · exp(μ + θ_a + θ_b)), θ ~ N(0, σ²) independently, without the constant
 * −Σ ln sets!:
 *
 * ℓ = Σ (y ln m − m) − Σ θ²/(2σ²) − ½ ln det(I + σ² ZᵀWZ) at the mode θ, Z the players of each
 * record, W = diag(m).
 *
 * Beside it the mode, the slopes in μ and in σ² (the mode moves along), and the curvature of ℓ in
 * μ, drills × drills, all but the small part that comes from the determinant.
 *
 * Source: Tierney and Kadane, JASA 81 (1986) 82-86, for the approximation (from memory); it is that
 * of lme4's glmer with nAGQ = 1. The slopes follow by differentiating.
 *
 * @param start effects to look for the mode from; those of a place nearby save a third of the work
 */
export function laplace(
  counts: PairCounts,
  mu: ArrayLike<number>,
  variance: number,
  start?: Float64Array,
) {
  const { sets, exposures, drillOf, pairOf, drills, players: n } = counts;
  const fit = poissonRegression(
    {
      counts: sets,
      exposures: exposures.map((minutes, r) => minutes * Math.exp(mu[drillOf[r]!]!)),
      rows: pairOf,
      penalty: new Float64Array(n).fill(1 / variance),
    },
    start,
  );
  const { coefficients: theta, fitted, factor } = fit;
  // Quadratic forms in the effects' covariance H⁻¹ = (L Lᵀ)⁻¹ are taken as products of L⁻¹x: where
  // counts are large or players few, the entries of H⁻¹ itself cancel to nothing in a pair's sum.
  const whiten = (x: Float64Array) => solveLower(factor, x);
  const whitePairs = new Map<number, Float64Array>();
  const whitePair = (a: number, b: number) => {
    const known = whitePairs.get(a * n + b);
    if (known) return known;
    const pair = new Float64Array(n);
    pair[a] = 1;
    pair[b] = 1;
    const white = whiten(pair);
    whitePairs.set(a * n + b, white);
    return white;
  };

  let loglik =
    -0.5 * (logDeterminant(factor) + dot(theta, theta) / variance) - (n / 2) * Math.log(variance);
  // The mean of a record times the variance of its log rate: how far ½ ln det moves with that rate.
  const pull = new Float64Array(sets.length);
  const pullOn = new Float64Array(n);
  for (let r = 0; r < sets.length; r++) {
    const [a, b] = pairOf[r]!;
    const white = whitePair(a, b);
    loglik -= fitted[r]!;
    if (sets[r]! > 0) loglik += sets[r]! * Math.log(fitted[r]!);
    pull[r] = fitted[r]! * dot(white, white);
    pullOn[a]! += pull[r]!;
    pullOn[b]! += pull[r]!;
  }
  // What the mode's own movement adds to that.
  const drift = whiten(pullOn);

  const slopeMu = new Float64Array(drills);
  const weight = new Float64Array(drills);
  const weightOn = Array.from({ length: drills }, () => new Float64Array(n));
  for (let r = 0; r < sets.length; r++) {
    const [a, b] = pairOf[r]!;
    const d = drillOf[r]!;
    const m = fitted[r]!;
    slopeMu[d]! += sets[r]! - m - 0.5 * (pull[r]! - m * dot(whitePair(a, b), drift));
    weight[d]! += m;
    weightOn[d]![a]! += m;
    weightOn[d]![b]! += m;
  }

  // At the mode θ/σ² is the slope of the log-likelihood, which stays finite as σ goes to 0.
  const slopes = theta.map((effect) => effect / variance);
  const pulls = pull.reduce((sum, part) => sum + part, 0);
  const slopeVariance =
    0.5 * (dot(slopes, slopes) - (pulls + dot(whiten(slopes), drift)) / variance);

  const whiteDrill = weightOn.map(whiten);
  const curvature = new Float64Array(drills * drills);
  for (let d = 0; d < drills; d++) {
    curvature[d * drills + d] = weight[d]!;
    for (let e = 0; e < drills; e++) {
      curvature[d * drills + e]! -= dot(whiteDrill[d]!, whiteDrill[e]!);
    }
  }
  return { loglik, theta, slopeMu, slopeVariance, curvature };
}

/**
 * What ℓ is where σ = 0, the same as `laplace` in the limit, and the most that the records tell of
 * one player there: the largest diagonal entry of ZᵀWZ.
 */
export function laplaceAtZero(counts: PairCounts, mu: ArrayLike<number>) {
  const { sets, exposures, drillOf, pairOf, players } = counts;
  let loglik = 0;
  const told = new Float64Array(players);
  pairOf.forEach((pair, r) => {
    const m = exposures[r]! * Math.exp(mu[drillOf[r]!]!);
    loglik -= m;
    if (sets[r]! > 0) loglik += sets[r]! * Math.log(m);
    for (const player of pair) told[player]! += m;
  });
  return { loglik, information: Math.max(...told) };
}

/** The μ that makes ℓ highest at a σ above 0, and `laplace` there; `from` is a place near it. */
export function bestLevels(
  counts: PairCounts,
  sigma: number,
  from: { mu: Float64Array; theta: Float64Array; curvature: Float64Array },
  enough?: number,
) {
  let { theta } = from;
  return maximise(
    (mu) => {
      const here = laplace(counts, mu, sigma ** 2, theta);
      theta = here.theta;
      return { ...here, value: here.loglik, gradient: here.slopeMu };
    },
    from.mu,
    inverse(cholesky(from.curvature)!),
    enough,
  );
}

/**
 * How much players differ: σ ≥ 0, the standard deviation of their effects, and μ, which together
 * maximise the Laplace approximation of the marginal likelihood; with them the modes of the effects
 * and ℓ as in `laplace`. σ to 1e-7 of itself and better.
 *
 * σ = 0 is a proper answer: the records differ no more than chance makes them.
 *
 * ℓ can have a top at 0 and another above it, so the climb starts from the best of a row of σ, each
 * twice the one before, that begins where the prior is as sharp as the records ever are. Beyond some
 * σ ℓ falls for good, as the determinant grows and no fit gets better than perfect.
 */
export function fitSpread(counts: PairCounts): {
  sigma: number;
  mu: Float64Array;
  theta: Float64Array;
  loglik: number;
} {
  const { drills, players } = counts;
  const pooled = pooledRates(counts);
  const alike = laplaceAtZero(counts, pooled);

  let sigma = 0.5 / Math.sqrt(alike.information);
  let last = { mu: pooled, sigma, ...laplace(counts, pooled, sigma ** 2) };
  let best = last;
  while (sigma < 2 || last === best) {
    sigma *= 2;
    const { point, ...top } = bestLevels(counts, sigma, last, 1e-4);
    last = { mu: point, sigma, ...top };
    if (last.loglik > best.loglik) best = last;
  }

  // The unknowns are μ and ln σ, in which ℓ is nearly a parabola. The information in ln σ is that of
  // a variance seen directly, 2 for each player, as an upper guess.
  const guess = new Float64Array((drills + 1) ** 2);
  const covariance = inverse(cholesky(best.curvature)!);
  for (let d = 0; d < drills; d++) {
    guess.set(covariance.subarray(d * drills, (d + 1) * drills), d * (drills + 1));
  }
  guess[guess.length - 1] = 1 / (2 * players);
  let { theta } = best;
  const top = maximise(
    (point) => {
      const variance = Math.exp(2 * point[drills]!);
      const here = laplace(counts, point, variance, theta);
      theta = here.theta;
      const gradient = [...here.slopeMu, 2 * variance * here.slopeVariance];
      return { value: here.loglik, gradient, theta: here.theta };
    },
    Float64Array.of(...best.mu, Math.log(best.sigma)),
    guess,
  );
  // Where 0 is the only top the climb ends just above it. So little a gain is not evidence of a σ.
  if (alike.loglik >= top.value - 1e-10) {
    return { sigma: 0, mu: pooled, theta: new Float64Array(players), loglik: alike.loglik };
  }
  return {
    sigma: Math.exp(top.point[drills]!),
    mu: top.point.slice(0, drills),
    theta: top.theta,
    loglik: top.value,
  };
}
