import { describe, expect, it } from 'vitest';
import { runCounts, shotsToRun } from '../../core/figures/runs.ts';
import { agree, check, checks, named } from './values.ts';

const mean = (chances: readonly number[]) =>
  chances.reduce((sum, chance, k) => sum + k * chance, 0);

/** The x between two ends at which a rising function reaches a height. */
function whereItReaches(height: number, rising: (x: number) => number, from: number, to: number) {
  let [low, high] = [from, to];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (rising(middle) < height) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe('the shots to a run agree with', () => {
  it.each(checks('C.wait.p0.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { n, p } = c.inputs;
    const shots = shotsToRun(n, p);
    agree(shots.mean, c.expected.mean_trials);
    agree(shots.variance, c.expected.var_trials);
    agree(Math.sqrt(shots.variance), c.expected.sd_trials);
    agree((1 - p) * shots.mean, c.expected.mean_failures_before_first_run);
    agree(runCounts(n, n, p)[1], c.expected.prob_n_straight);
  });

  it(named(check('C.wait.p1')), () => {
    const { inputs, expected } = check('C.wait.p1');
    const shots = shotsToRun(inputs.n, inputs.p);
    expect(shots).toEqual({ mean: expected.mean_trials, variance: expected.var_trials });
    expect((1 - inputs.p) * shots.mean).toBe(expected.mean_failures_before_first_run);
  });

  it(named(check('C.wait.p0')), () => {
    const { inputs, expected } = check('C.wait.p0');
    expect(expected.mean_trials).toMatch(/^Infinity/);
    expect(shotsToRun(inputs.n, inputs.p).mean).toBe(Infinity);
  });

  it.each(checks('C.touches.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { sets, n, p } = c.inputs;
    const shots = shotsToRun(n, p);
    agree(sets * shots.mean, c.expected.expected_touches_until_Kth_set);
    agree(Math.sqrt(sets * shots.variance), c.expected.sd_touches);
    agree(sets * shotsToRun(n, 1).mean, c.expected.lower_bound_touches);
  });
});

describe('the chances of run counts agree with', () => {
  it.each(checks('C.pmf.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { N, n, p } = c.inputs;
    const chances = runCounts(N, n, p);
    expect(chances).toHaveLength(c.expected.pmf.length);
    chances.forEach((chance, k) => {
      agree(chance, c.expected.pmf[k], 1e-9, `${k} runs`);
    });
    const average = mean(chances);
    agree(average, c.expected.mean);
    agree(
      chances.reduce((sum, chance, k) => sum + (k - average) ** 2 * chance, 0),
      c.expected.variance,
    );
    agree(1 - chances[0]!, c.expected.prob_at_least_one);
    agree(N / shotsToRun(n, p).mean, c.expected.renewal_approx_N_over_mean_wait);
  });

  it(named(check('C.table.mathworld.n8')), () => {
    const { inputs, expected } = check('C.table.mathworld.n8');
    inputs.run_lengths.forEach((n: number, i: number) => {
      const without = runCounts(inputs.tosses, n, inputs.p)[0]!;
      expect((1 - without) * 2 ** inputs.tosses).toBe(expected.sequences_with_a_run_out_of_256[i]);
    });
  });

  it(named(check('C.table.oeisA050231')), () => {
    const { inputs, expected } = check('C.table.oeisA050231');
    inputs.tosses.forEach((tosses: number, i: number) => {
      const without = runCounts(tosses, inputs.n, inputs.p)[0]!;
      expect((1 - without) * 2 ** tosses).toBe(expected.sequences_with_a_run[i]);
    });
  });

  it(named(check('C.p5in10')), () => {
    const { inputs, expected } = check('C.p5in10');
    const atLeastOne = 1 - runCounts(inputs.N, inputs.n, inputs.p)[0]!;
    agree(atLeastOne, expected.prob_at_least_one);
    agree(atLeastOne, expected.prob);
  });

  it(named(check('C.feller.alpha')), () => {
    const { inputs, expected } = check('C.feller.alpha');
    // Feller's law holds for many shots: at 200 the other roots have died out far below 1e-12.
    const without = (shots: number) => runCounts(shots, inputs.n, inputs.p)[0]!;
    const alpha = without(200) / without(201);
    agree(alpha, expected.alpha);
    agree(without(200) * alpha ** 201, expected.beta);
    expect(without(10) * 1024).toBe(504);
  });

  it.each(checks('C.firstrun.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { n, p, trials } = c.inputs;
    const done = (shots: number) => 1 - runCounts(shots, n, p)[0]!;
    trials.forEach((shots: number, i: number) => {
      agree(done(shots), c.expected.cdf[i], 1e-9, `by shot ${shots}`);
      const here = done(shots) - done(shots - 1);
      agree(here, c.expected.pmf_first_run_completed_at[i], 1e-9, `at shot ${shots}`);
    });
    for (const [share, shots] of [
      [0.5, c.expected.median_trials],
      [0.9, c.expected.q90_trials],
    ]) {
      expect(done(shots)).toBeGreaterThanOrEqual(share);
      expect(done(shots - 1)).toBeLessThan(share);
    }
  });

  it.each(checks('C.invert.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { N, n, sets } = c.inputs;
    const logLikelihood = (p: number) => Math.log(runCounts(N, n, p)[sets]!);
    const best = c.expected.p_mle;
    agree(logLikelihood(best), c.expected.loglik_at_mle);
    // The top is where the slope changes its sign, within the tolerance that the value came with.
    const { p_mle: within } = c.tol as { p_mle: number };
    const slope = (p: number) => logLikelihood(p + 1e-5) - logLikelihood(p - 1e-5);
    expect(slope(best - within)).toBeGreaterThan(0);
    expect(slope(best + within)).toBeLessThan(0);

    agree(
      whereItReaches(sets, (p) => N / shotsToRun(n, p).mean, 0.01, 0.999),
      c.expected.p_from_renewal_mean,
    );
    agree(
      whereItReaches(sets, (p) => mean(runCounts(N, n, p)), 0.01, 0.999),
      c.expected.p_from_exact_mean,
    );
  });
});
