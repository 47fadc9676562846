import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { phi } from '../../../core/figures/normal.ts';
import { type Trend, trend, trendWord } from '../../../core/figures/trend.ts';
import { agree } from '../../reference/values.ts';

const series = (values: readonly number[]) => values.map((value, at) => ({ at, value }));

const whole = fc.integer({ min: -20, max: 20 });
const points = (least: number, most: number) =>
  fc.array(fc.record({ at: whole, value: whole }), { minLength: least, maxLength: most });

/** Kendall's S of values at times, pair by pair. */
function sOf(at: readonly number[], value: readonly number[]): number {
  let s = 0;
  for (let i = 0; i < at.length; i++) {
    for (let j = 0; j < i; j++) s += Math.sign((at[i]! - at[j]!) * (value[i]! - value[j]!));
  }
  return s;
}

/** All orders of some values. */
function orders(values: readonly number[]): number[][] {
  if (values.length < 2) return [[...values]];
  return values.flatMap((first, i) =>
    orders([...values.slice(0, i), ...values.slice(i + 1)]).map((rest) => [first, ...rest]),
  );
}

describe('trend', () => {
  it('of a straight line is its slope, and the interval closes on it', () => {
    const found = trend(series([1, 3, 5, 7, 9, 11]))!;
    expect(found.slope).toBe(2);
    expect(found.low).toBe(2);
    expect(found.high).toBe(2);
    // Two of all 720 orders of six values run all one way.
    agree(found.p, 2 / 720, 1e-15);
  });

  it('is not led by one odd day', () => {
    expect(trend(series([1, 2, 3, 4, 5, 600, 7]))!.slope).toBe(1);
  });

  it('has the exact p that counting every order gives, without ties', () => {
    fc.assert(
      fc.property(fc.uniqueArray(whole, { minLength: 3, maxLength: 6 }), (values) => {
        const at = [...values.keys()];
        const s = Math.abs(sOf(at, values));
        const all = orders(values);
        const extreme = all.filter((order) => sOf(at, order) >= s).length;
        agree(trend(series(values))!.p, Math.min(1, (2 * extreme) / all.length), 1e-14);
      }),
      { numRuns: 40 },
    );
  });

  it('has the variance of S over every order in its p, with ties in time and in value', () => {
    const few = fc.integer({ min: 0, max: 3 });
    fc.assert(
      fc.property(
        fc.array(fc.record({ at: few, value: few }), { minLength: 5, maxLength: 6 }),
        (some) => {
          const at = some.map((point) => point.at);
          const value = some.map((point) => point.value);
          fc.pre(new Set(at).size > 1 && new Set(value).size > 1);
          const all = orders(value);
          const variance = all.reduce((sum, order) => sum + sOf(at, order) ** 2, 0) / all.length;
          const s = sOf(at, value);
          const z = (Math.abs(s) - 1) / Math.sqrt(variance);
          agree(trend(some)!.p, s === 0 ? 1 : 2 * phi(-z), 1e-12);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('counts p out up to ten points and takes the normal curve from eleven', () => {
    const rising = (n: number) => trend(series([...Array(n).keys()]))!.p;
    agree(rising(10), 2 / 3_628_800, 1e-14);
    // S = 55, variance 11 · 10 · 27 / 18 = 165
    agree(rising(11), 2 * phi(-54 / Math.sqrt(165)), 1e-14);
  });

  it('is per unit of time: twice the time halves the slope, and nothing else', () => {
    fc.assert(
      fc.property(points(3, 14), (some) => {
        fc.pre(new Set(some.map(({ at }) => at)).size > 1);
        const once = trend(some)!;
        const twice = trend(some.map(({ at, value }) => ({ at: 2 * at, value })))!;
        expect(twice.s).toBe(once.s);
        expect(twice.p).toBe(once.p);
        agree(twice.slope, once.slope / 2, 1e-12);
      }),
    );
  });

  it('does not care where the days and the values start', () => {
    fc.assert(
      fc.property(points(3, 14), whole, whole, (some, days, more) => {
        fc.pre(new Set(some.map(({ at }) => at)).size > 1);
        const moved = some.map(({ at, value }) => ({ at: at + days, value: value + more }));
        expect(trend(moved)).toEqual(trend(some));
      }),
    );
  });

  it('does not care in which order the points are given', () => {
    fc.assert(
      fc.property(points(3, 14), (some) => {
        expect(trend([...some].reverse())).toEqual(trend(some));
      }),
    );
  });

  it('turned upside down falls as it rose', () => {
    fc.assert(
      fc.property(points(3, 14), (some) => {
        fc.pre(new Set(some.map(({ at }) => at)).size > 1);
        const up = trend(some)!;
        const down = trend(some.map(({ at, value }) => ({ at, value: -value })))!;
        expect(down.s + up.s).toBe(0);
        expect(down.p).toBe(up.p);
        expect(Math.abs(down.slope + up.slope)).toBeLessThan(1e-12);
        expect(down.low === undefined).toBe(up.low === undefined);
        if (up.low === undefined) return;
        expect(Math.abs(down.low! + up.high!)).toBeLessThan(1e-12);
        expect(Math.abs(down.high! + up.low)).toBeLessThan(1e-12);
      }),
    );
  });

  it('lies in its interval, which is wider the surer it has to be', () => {
    fc.assert(
      fc.property(points(3, 20), (some) => {
        fc.pre(new Set(some.map(({ at }) => at)).size > 1);
        const narrow = trend(some, 0.5)!;
        const wide = trend(some, 0.9)!;
        if (wide.low === undefined) return;
        expect(narrow.low!).toBeLessThanOrEqual(narrow.slope);
        expect(narrow.high!).toBeGreaterThanOrEqual(narrow.slope);
        expect(wide.low).toBeLessThanOrEqual(narrow.low!);
        expect(wide.high!).toBeGreaterThanOrEqual(narrow.high!);
      }),
    );
  });

  it('is at the level 0.9 unless asked otherwise', () => {
    const some = series([3, 1, 4, 1, 5, 9, 2, 6]);
    expect(trend(some)).toEqual(trend(some, 0.9));
    expect(trend(some)).not.toEqual(trend(some, 0.95));
  });

  it('leaves its interval out where too few points give one, and does not invent it', () => {
    expect(trend(series([2, 5, 4, 8]))).not.toHaveProperty('low');
    expect(trend(series([2, 5, 4, 8]))).not.toHaveProperty('high');
  });

  it('gives its interval as long as the ranks are those of slopes that there are', () => {
    // Ranks of five points at 0.95: 0.9992 and 10.0008 of 10 slopes; at 0.9495 just inside.
    const five = series([5, 6, 11, 8, 10]);
    expect(trend(five, 0.95)).not.toHaveProperty('low');
    const { low, high } = trend(five, 0.9495)!;
    // The steepest fall and the steepest rise: 11 to 8 and 6 to 11.
    expect(low).toBeGreaterThan(-3);
    expect(low).toBeLessThan(-2.98);
    expect(high).toBeLessThan(5);
    expect(high).toBeGreaterThan(4.98);
  });

  it('leaves its interval out where all values are equal, and finds no trend', () => {
    expect(trend(series([4, 4, 4, 4, 4, 4, 4]))).toEqual({ slope: 0, s: 0, p: 1, n: 7 });
  });

  it('never has a p that is not between 0 and 1', () => {
    fc.assert(
      fc.property(points(3, 30), (some) => {
        const found = trend(some);
        if (found) expect(found.p > 0 && found.p <= 1).toBe(true);
      }),
    );
  });

  it('through fewer than three points is undefined', () => {
    expect(trend([])).toBeUndefined();
    expect(trend(series([1]))).toBeUndefined();
    expect(trend(series([1, 2]))).toBeUndefined();
  });

  it('of one day alone is undefined, however many points it has', () => {
    expect(trend([1, 2, 3, 4].map((value) => ({ at: 5, value })))).toBeUndefined();
  });

  it.each([
    ['at', [{ at: Number.NaN, value: 1 }], 0.9],
    ['at', [{ at: Infinity, value: 1 }], 0.9],
    ['value', [{ at: 1, value: Number.NaN }], 0.9],
    ['value', [{ at: 1, value: -Infinity }], 0.9],
    ['level', [], 0],
    ['level', [], 1],
    ['level', [], Number.NaN],
  ] as const)('names %s when it makes no sense', (name, some, level) => {
    expect(() => trend(some, level)).toThrow(RangeError);
    expect(() => trend(some, level)).toThrow(new RegExp(`^${name} `));
  });
});

describe('trendWord', () => {
  const change = { matters: 1, span: 10 };
  const found = (some: Partial<Trend>): Trend => ({
    slope: 0.3,
    low: 0.1,
    high: 0.5,
    s: 20,
    p: 0.01,
    n: 8,
    ...some,
  });

  it('is too few without a trend or with fewer than six practices', () => {
    expect(trendWord(undefined, change)).toBe('too-few');
    expect(trendWord(found({ n: 5 }), change)).toBe('too-few');
    expect(trendWord(found({ n: 6 }), change)).toBe('rising');
  });

  it('is rising or falling only where p is below 0.1', () => {
    expect(trendWord(found({ p: 0.0999 }), change)).toBe('rising');
    expect(trendWord(found({ p: 0.0999, slope: -0.3 }), change)).toBe('falling');
    expect(trendWord(found({ p: 0.1 }), change)).toBe('unclear');
    expect(trendWord(found({ p: 0.1, slope: -0.3 }), change)).toBe('unclear');
  });

  it('is neither rising nor falling with a slope of 0, whatever p is', () => {
    expect(trendWord(found({ slope: 0, low: 0, high: 0.01 }), change)).toBe('steady');
  });

  it('is steady only where the interval is narrower than a change that matters', () => {
    expect(trendWord(found({ p: 0.5, low: -0.04, high: 0.05 }), change)).toBe('steady');
    expect(trendWord(found({ p: 0.5, low: -0.05, high: 0.05 }), change)).toBe('unclear');
    expect(trendWord(found({ p: 0.5, low: -0.04, high: 0.05 }), { ...change, span: 20 })).toBe(
      'unclear',
    );
    expect(trendWord(found({ p: 0.5, low: -0.05, high: 0.05 }), { ...change, matters: 2 })).toBe(
      'steady',
    );
  });

  it('is unclear where there is no interval', () => {
    expect(trendWord({ slope: 0, s: 0, p: 1, n: 7 }, change)).toBe('unclear');
  });

  it('reads real practices: a rise, a fall, an even stretch and a muddle', () => {
    const word = (values: readonly number[]) =>
      trendWord(trend(series(values)), { matters: 0.1, span: 10 });
    expect(word([0.7, 0.72, 0.71, 0.76, 0.78, 0.8])).toBe('rising');
    expect(word([0.8, 0.79, 0.8, 0.75, 0.74, 0.72])).toBe('falling');
    expect(word([0.8, 0.81, 0.8, 0.79, 0.8, 0.81, 0.8, 0.79])).toBe('steady');
    expect(word([0.6, 0.9, 0.5, 0.8, 0.7, 0.6])).toBe('unclear');
    expect(word([0.5, 0.6, 0.7, 0.8, 0.9])).toBe('too-few');
  });

  it.each([
    ['matters', { matters: 0, span: 10 }],
    ['matters', { matters: Number.NaN, span: 10 }],
    ['span', { matters: 1, span: -1 }],
    ['span', { matters: 1, span: Infinity }],
  ] as const)('names %s when it makes no sense', (name, given) => {
    expect(() => trendWord(undefined, given)).toThrow(RangeError);
    expect(() => trendWord(undefined, given)).toThrow(new RegExp(`^${name} `));
  });
});
