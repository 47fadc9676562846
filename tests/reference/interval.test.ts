import { describe, expect, it } from 'vitest';
import { rateInterval, rateRatio, shareInterval } from '../../core/figures/interval.ts';
import { normalQuantile } from '../../core/figures/normal.ts';
import { agree, check, checks, named } from './values.ts';

/** Agrees with a printed number to half a unit of its last printed digit. */
function agreeAsPrinted(actual: number, printed: number, digits: number) {
  expect(Math.abs(actual - printed)).toBeLessThanOrEqual(0.5 * 10 ** -digits * (1 + 1e-9));
}

describe('the interval of a rate agrees with', () => {
  it.each(checks('A.garwood.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { k, exposure, conf } = c.inputs;
    const interval = rateInterval(k, exposure, conf)!;
    agree(interval.low, c.expected.lower);
    agree(interval.high, c.expected.upper);
  });

  it.each(checks('A.rate.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { k, exposure } = c.inputs;
    const at95 = rateInterval(k, exposure)!;
    agree(at95.rate, c.expected.rate);
    agree(at95.low, c.expected.lower95);
    agree(at95.high, c.expected.upper95);
    if (c.expected.lower80 === undefined) return;
    const at80 = rateInterval(k, exposure, 0.8)!;
    agree(at80.low, c.expected.lower80);
    agree(at80.high, c.expected.upper80);
  });

  it(named(check('A.published.k25')), () => {
    const { inputs, expected } = check('A.published.k25');
    for (const [level, name] of [
      [0.95, '95'],
      [0.9, '90'],
    ] as const) {
      const { low, high } = rateInterval(inputs.k, 1, level)!;
      agree(low, expected[`lower${name}`]);
      agree(high, expected[`upper${name}`]);
      const [printedLow, printedHigh] = expected[`published_${name}`];
      expect(Math.abs(low - printedLow)).toBeLessThan(0.01);
      expect(Math.abs(high - printedHigh)).toBeLessThan(0.01);
    }
  });

  it.each(checks('A.published.epitools.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { low, high } = rateInterval(c.inputs.k, 1, c.inputs.conf)!;
    agree(low, c.expected.lower);
    agree(high, c.expected.upper);
    agreeAsPrinted(low, c.expected.published[0], 8);
    agreeAsPrinted(high, c.expected.published[1], 8);
  });

  it(named(check('A.published.k0_k5')), () => {
    const { inputs, expected, tol } = check('A.published.k0_k5');
    const within = (tol as { abs: number }).abs;
    const close = (actual: number, printed: number) =>
      expect(Math.abs(actual - printed)).toBeLessThanOrEqual(within);
    close(rateInterval(0, 1, inputs.conf)!.high, expected.k0_upper);
    for (const k of [1, 5]) {
      const { low, high } = rateInterval(k, 1, inputs.conf)!;
      close(low, expected[`k${k}`][0]);
      close(high, expected[`k${k}`][1]);
    }
  });

  it(named(check('A.T0')), () => {
    const { k, exposure } = check('A.T0').inputs;
    expect(rateInterval(k, exposure)).toBeUndefined();
  });
});

describe('the ratio of two rates agrees with', () => {
  it.each(checks('A.rr.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { x1, x2, T1, T2 } = c.inputs;
    const number = (value: number | string) => Number(value);
    const close = (actual: number, expected: number) =>
      expected === Infinity ? expect(actual).toBe(Infinity) : agree(actual, expected);
    for (const [level, name] of [
      [0.95, '95'],
      [0.9, '90'],
    ] as const) {
      const { ratio, low, high, p } = rateRatio(x1, T1, x2, T2, level)!;
      close(ratio, number(c.expected.rate_ratio));
      close(low, number(c.expected[`lower${name}`]));
      close(high, number(c.expected[`upper${name}`]));
      agree(p, c.expected.p_two_sided_doubled);
    }
  });
});

describe('the interval of a share agrees with', () => {
  it.each(checks('B.newcombe.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { share, low, high } = shareInterval(c.inputs.x, c.inputs.n, c.inputs.conf)!;
    agree(share, c.expected.phat);
    agree(low, c.expected.lower);
    agree(high, c.expected.upper);
    agreeAsPrinted(low, c.expected.published_lower_4dp, 4);
    agreeAsPrinted(high, c.expected.published_upper_4dp, 4);
  });

  it.each(checks('B.wilson.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { share, low, high } = shareInterval(c.inputs.x, c.inputs.n, c.inputs.conf)!;
    agree(share, c.expected.phat);
    agree(low, c.expected.lower);
    agree(high, c.expected.upper);
  });

  it(named(check('B.z')), () => {
    const { inputs, expected } = check('B.z');
    inputs.conf.forEach((level: number, i: number) => {
      agree(-normalQuantile((1 - level) / 2), expected.z[i]);
    });
  });

  it(named(check('B.n0')), () => {
    const { x, n } = check('B.n0').inputs;
    expect(shareInterval(x, n)).toBeUndefined();
  });
});
