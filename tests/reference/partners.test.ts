import { describe, expect, it } from 'vitest';
import { inverse, solveLower } from '../../core/figures/linear.ts';
import { normalQuantile } from '../../core/figures/normal.ts';
import { fitPartners } from '../../core/figures/partners.ts';
import {
  bestLevels,
  fitSpread,
  laplace,
  laplaceAtZero,
  type PairCounts,
  pooledRates,
} from '../../core/figures/player-spread.ts';
import { poissonRegression } from '../../core/figures/poisson-regression.ts';
import { groups, neverParted } from '../../core/figures/told-apart.ts';
import { agree, type Check, check, checks, named } from './values.ts';

/*
 * Topic E without its two linear regressions (NIST's Norris and Longley: nothing here fits a line by
 * least squares). Sources are in each test's name.
 */

interface Row {
  a: number;
  b: number;
  drills: number;
  sets: number;
}

const recordsOf = (c: Check) =>
  (c.inputs.records as Row[]).map(({ a, b, drills, sets }) => ({
    a: String(a),
    b: String(b),
    exposure: drills,
    sets,
  }));

/** The same for the parts that `fitPartners` is made of, players counted from 0. */
const countsOf = (c: Check): PairCounts => {
  const rows = c.inputs.records as Row[];
  return {
    sets: rows.map(({ sets }) => sets),
    exposures: rows.map(({ drills }) => drills),
    drillOf: rows.map(() => 0),
    pairOf: rows.map(({ a, b }) => [a - 1, b - 1]),
    drills: 1,
    players: c.inputs.n_players,
  };
};

/** As `agree`, but what the source gives as 3e-17 is its own rounding of 0. */
const near = (actual: number | undefined, expected: number, tolerance = 1e-9, what = '') =>
  agree(actual, Math.abs(expected) < 1e-12 ? 0 : expected, tolerance, what);

const errorOf = (factor: Float64Array, combination: number[]) =>
  Math.hypot(...solveLower(factor, combination));

describe('Poisson regression', () => {
  const dobson = check('E.dobson');
  it(named(dobson), () => {
    const { counts, outcome, treatment } = dobson.inputs;
    const exposures = counts.map(() => 1);
    const rows = counts.map((_: number, i: number) => [
      0,
      ...(outcome[i] > 1 ? [outcome[i] - 1] : []),
      ...(treatment[i] > 1 ? [treatment[i] + 1] : []),
    ]);
    const fit = poissonRegression({ counts, exposures, rows, penalty: [0, 0, 0, 0, 0] });
    const covariance = inverse(fit.factor);
    for (let j = 0; j < 5; j++) {
      near(fit.coefficients[j], dobson.expected.coef[j]);
      near(Math.sqrt(covariance[6 * j]!), dobson.expected.se[j]);
    }
    fit.fitted.forEach((m, i) => {
      near(m, dobson.expected.fitted[i]);
    });
    near(fit.deviance, dobson.expected.deviance);

    const alike = poissonRegression({
      counts,
      exposures,
      rows: counts.map(() => [0]),
      penalty: [0],
    });
    near(alike.deviance, dobson.expected.null_deviance);
  });

  it.each(checks('E.mle.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { sets, exposures, pairOf, players } = countsOf(c);
    const penalty = new Float64Array(players);
    const fit = poissonRegression({ counts: sets, exposures, rows: pairOf, penalty });
    const alpha = Array.from(fit.coefficients);
    const mean = alpha.reduce((sum, a) => sum + a, 0) / players;
    near(2 * mean, c.expected.mu);
    alpha.forEach((a, i) => {
      near(a, c.expected.alpha[i]);
      near(a - mean, c.expected.theta[i]);
      const unit = alpha.map((_, j) => +(i === j));
      // R's glm takes its errors from the last step but one; 30-digit arithmetic agrees with these.
      near(errorOf(fit.factor, unit), c.expected.se_alpha[i], 1e-8);
    });
    near(fit.deviance, c.expected.deviance);
  });

  it.each(checks('E.pen.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { lambda } = c.inputs;
    const { sets, exposures, pairOf, players: n } = countsOf(c);
    const fit = poissonRegression({
      counts: sets,
      exposures,
      rows: pairOf.map(([a, b]) => [0, 1 + a, 1 + b]),
      penalty: [0, ...new Array(n).fill(lambda)],
    });
    const unit = (...ones: number[]) => Array.from({ length: n + 1 }, (_, j) => +ones.includes(j));
    near(errorOf(fit.factor, unit(0)), c.expected.se_mu);
    const difference = unit(1);
    difference[2] = -1;
    near(errorOf(fit.factor, difference), c.expected.se_theta1_minus_theta2);
    [c.expected.fitted_sets].flat().forEach((m: number, r) => {
      near(fit.fitted[r], m);
    });

    const covariance = inverse(fit.factor);
    let free = n + 1;
    for (let i = 1; i <= n; i++) {
      const error = errorOf(fit.factor, unit(i));
      near(error, c.expected.se_theta[i - 1]);
      near(errorOf(fit.factor, unit(0, i)), c.expected.se_mu_plus_theta[i - 1]);
      // H⁻¹ XᵀWX = I − H⁻¹ P with the penalty P, so its trace and H⁻¹ XᵀWX H⁻¹ follow from H⁻¹.
      free -= lambda * error ** 2;
      let sandwich = covariance[i * (n + 2)]!;
      for (let j = 1; j <= n; j++) sandwich -= lambda * covariance[i * (n + 1) + j]! ** 2;
      // Half of the digits are lost where the two cancel, all where nothing is left.
      agree(
        Math.sqrt(Math.max(0, sandwich)),
        c.expected.se_theta_sandwich[i - 1],
        c.expected.se_theta_sandwich[i - 1] === 0 ? 1e-7 : 1e-9,
      );
    }
    near(free, c.expected.effective_df);
  });
});

describe('fitPartners', () => {
  it.each(checks('E.data.').map((c) => [named(c), c] as const))(
    'pools all sets over all drills where the penalty is infinite: %s',
    (_, c) => {
      const fit = fitPartners(recordsOf(c), { lambda: Number.POSITIVE_INFINITY })!;
      const pooled = c.expected.total_sets / c.expected.total_drills;
      near(fit.mu[''], Math.log(pooled));
      expect(fit.players).toHaveLength(c.inputs.n_players);
      for (const { rateWithAveragePartner } of fit.players) near(rateWithAveragePartner, pooled);
    },
  );

  it.each(checks('E.pen.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const fit = fitPartners(recordsOf(c), { lambda: c.inputs.lambda })!;
    near(fit.mu[''], c.expected.mu);
    near(fit.sigma, c.inputs.prior_sd);
    near(fit.deviance, c.expected.deviance);
    expect(fit.lambda).toBe(c.inputs.lambda);
    expect(fit.players).toHaveLength(c.inputs.n_players);
    for (const player of fit.players) {
      const i = Number(player.id) - 1;
      near(player.effect, c.expected.theta[i], 1e-9, `effect of ${player.id}`);
      near(player.se, c.expected.se_theta_centred[i]);
      near(player.rateWithAveragePartner, c.expected.adjusted_rate_with_average_partner[i]);
      const error = c.expected.se_log_rate_with_average_partner[i];
      const reach = Math.exp(normalQuantile(0.975) * error);
      near(player.low, c.expected.adjusted_rate_with_average_partner[i] / reach);
      near(player.high, c.expected.adjusted_rate_with_average_partner[i] * reach);
    }
  });

  it.each(checks('E.mle.').map((c) => [named(c), c] as const))(
    'comes to the fit without a penalty as λ goes to 0: %s',
    (_, c) => {
      const fit = fitPartners(recordsOf(c), { lambda: 1e-10 })!;
      near(fit.mu[''], c.expected.mu, 1e-8);
      near(fit.deviance, c.expected.deviance, 1e-8);
      for (const player of fit.players) {
        near(player.effect, c.expected.theta[Number(player.id) - 1], 1e-8);
      }
    },
  );

  it.each(checks('E.laplace.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const tolerance = c.tol as Record<string, number>;
    const counts = countsOf(c);
    // ℓ is told without −Σ ln sets!.
    const constant = counts.sets.reduce((sum, sets) => {
      for (let k = 2; k <= sets; k++) sum -= Math.log(k);
      return sum;
    }, 0);

    const { sigma, lambda, players } = fitPartners(recordsOf(c))!;
    near(sigma, c.expected.sigma, tolerance.sigma);
    if (c.expected.implied_lambda === 'Infinity') expect(lambda).toBe(Number.POSITIVE_INFINITY);
    else near(lambda, c.expected.implied_lambda, 2 * tolerance.sigma!);
    expect(players.every(({ se }) => (se === undefined) === (sigma === 0))).toBe(true);

    const spread = fitSpread(counts);
    near(spread.sigma, c.expected.sigma, tolerance.sigma);
    near(spread.mu[0], c.expected.mu, tolerance.mu);
    near(spread.loglik + constant, c.expected.loglik, tolerance.loglik);
    spread.theta.forEach((mode, i) => {
      near(mode, c.expected.theta_modes[i], tolerance.theta_modes);
    });

    const mu = pooledRates(counts);
    const alike = laplaceAtZero(counts, mu);
    near(alike.loglik + constant, c.expected.loglik_sigma0, tolerance.loglik);
    c.expected.profile_sigma.forEach((s: number, k: number) => {
      const top = bestLevels(counts, s, { mu, ...laplace(counts, mu, s ** 2) });
      near(top.loglik + constant, c.expected.profile_loglik[k], tolerance.profile_loglik);
    });
    // The same by lme4, as far as its own search went.
    agree(sigma, c.expected.sigma === 0 ? 0 : c.expected.lme4_sigma, tolerance.sigma);
    near(spread.mu[0], c.expected.lme4_mu, tolerance.mu);
    near(spread.loglik + constant, c.expected.lme4_loglik, tolerance.loglik);
  });

  it(`warns of two groups that never mix: ${named(check('E.data.P8split'))}`, () => {
    const records = recordsOf(check('E.data.P8split'));
    expect(fitPartners(records, { lambda: 1 })!.separable).toBe(false);
    expect(groups(records)).toEqual([
      ['1', '2', '3', '4'],
      ['5', '6', '7', '8'],
    ]);
  });

  it(`warns of a pair that never parted: ${named(check('E.data.P2'))}`, () => {
    const records = recordsOf(check('E.data.P2'));
    expect(fitPartners(records, { lambda: 1 })!.separable).toBe(false);
    expect(neverParted(records)).toEqual([
      { player: '1', partner: '2' },
      { player: '2', partner: '1' },
    ]);
  });

  it.each(['P4', 'P6', 'P8', 'P6wide', 'P12wide', 'P5equal', 'P6rep'])(
    'tells everyone apart in %s',
    (dataset) => {
      const fit = fitPartners(recordsOf(check(`E.data.${dataset}`)), { lambda: 1 })!;
      expect(fit.separable).toBe(true);
    },
  );
});
