import { describe, expect, it } from 'vitest';
import { trend } from '../../core/figures/trend.ts';
import { agree, check, checks, named } from './values.ts';

const points = (x: readonly number[], y: readonly number[]) =>
  x.map((at, i) => ({ at, value: y[i]! }));

/** The numbers 0 … n − 1 in an order with so many pairs that fall. */
function orderWith(falling: number, n: number): number[] {
  const order: number[] = [];
  let left = falling;
  for (let value = n - 1; value >= 0; value--) {
    // Placed behind `after` of the larger numbers, this value makes so many falling pairs.
    const after = Math.min(left, order.length);
    order.splice(after, 0, value);
    left -= after;
  }
  return order;
}

describe('the exact p of a trend agrees with', () => {
  it.each(checks('D.exact.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { n } = c.inputs;
    c.expected.S.forEach((s: number, i: number) => {
      const rising = (n * (n - 1)) / 2;
      const y = orderWith((rising - s) / 2, n);
      const found = trend(points([...y.keys()], y))!;
      expect(found.s).toBe(s);
      agree(found.p, c.expected.p_two_sided[i], 1e-9, `S = ${s}`);
      if (s > 0) agree(found.p / 2, c.expected.p_upper[i], 1e-9, `S = ${s}, one side`);
    });
  });

  it(named(check('D.minmax')), () => {
    const { inputs, expected } = check('D.minmax');
    inputs.n.forEach((n: number, i: number) => {
      const rising = [...Array(n).keys()];
      agree(1 - trend(points(rising, rising))!.p, expected.exact_level_of_min_to_max_slope[i]);
    });
  });
});

const examples = checks('D.').filter((c) => Array.isArray(c.inputs.x) && c.id !== 'D.flat6');

describe('a trend agrees with', () => {
  it.each(examples.map((c) => [named(c), c] as const))('%s', (_, c) => {
    const { x, y } = c.inputs;
    const { expected } = c;
    for (const [level, name] of [
      [0.9, '90'],
      [0.95, '95'],
    ] as const) {
      const found = trend(points(x, y), level)!;
      expect(found.n).toBe(expected.n);
      expect(found.s).toBe(expected.S);
      agree(found.slope, expected.sen_slope);
      agree(found.p, expected.p_two_sided_exact ?? expected.p_two_sided_normal);
      for (const [actual, wanted] of [
        [found.low, expected[`slope_ci${name}_lower`]],
        [found.high, expected[`slope_ci${name}_upper`]],
      ]) {
        if (wanted === null) expect(actual).toBeUndefined();
        else agree(actual, wanted);
      }
    }
  });

  it(named(check('D.flat6')), () => {
    const { inputs, expected } = check('D.flat6');
    expect(trend(points(inputs.x, inputs.y))).toEqual({
      slope: expected.sen_slope,
      s: expected.S,
      p: 1,
      n: 6,
    });
  });

  it('the digits printed with the examples', () => {
    const epa = check('D.epa17_7');
    const found = trend(points(epa.inputs.x, epa.inputs.y), 0.95)!;
    expect(found.slope).toBeCloseTo(epa.expected.published_slope, 7);
    expect(found.low).toBeCloseTo(epa.expected.published_ci95[0], 7);
    expect(found.high).toBeCloseTo(epa.expected.published_ci95[1], 7);

    const cross = check('D.holycross14');
    const byHand = trend(points(cross.inputs.x, cross.inputs.y))!;
    expect(byHand.s).toBe(cross.expected.published_S);
    expect(byHand.p / 2).toBeCloseTo(cross.expected.published_p_one_sided, 4);

    const box = check('D.epaG9');
    const five = trend(points(box.inputs.x, box.inputs.y))!;
    expect(five.p / 2).toBeCloseTo(box.expected.published_p_upper, 3);
  });
});
