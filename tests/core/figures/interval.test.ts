import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rateInterval, rateRatio, shareInterval } from '../../../core/figures/interval.ts';
import { agree } from '../../reference/values.ts';

const level = fc.double({ min: 0.01, max: 0.9999, noNaN: true });
const count = fc.integer({ min: 0, max: 400 });
const exposure = fc.double({ min: 0.01, max: 1000, noNaN: true });

/** ln k! as a sum of logarithms. */
const lnFactorial = (k: number) => {
  let sum = 0;
  for (let j = 2; j <= k; j++) sum += Math.log(j);
  return sum;
};

/** Chance of `from` to `to` events at a Poisson mean, term by term. */
function poissonChance(from: number, to: number, mean: number): number {
  let sum = 0;
  for (let j = from; j <= to; j++) sum += Math.exp(j * Math.log(mean) - mean - lnFactorial(j));
  return sum;
}

/** Chance of `from` to `to` successes in n tries of probability p, term by term. */
function binomialChance(from: number, to: number, n: number, p: number): number {
  let sum = 0;
  for (let j = from; j <= to; j++) {
    const ways = lnFactorial(n) - lnFactorial(j) - lnFactorial(n - j);
    sum += Math.exp(ways + j * Math.log(p) + (n - j) * Math.log1p(-p));
  }
  return sum;
}

describe('rateInterval', () => {
  it('has the two tails that define it, summed term by term', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 120 }), level, (k, sure) => {
        const { low, high } = rateInterval(k, 1, sure)!;
        agree(poissonChance(0, k, high), (1 - sure) / 2, 1e-10, 'above');
        if (k > 0) agree(poissonChance(0, k - 1, low), (1 + sure) / 2, 1e-12, 'below');
      }),
    );
  });

  // mpmath 1.3 at 50 digits: roots of the Poisson tails
  it.each([
    [900, 0.8, 861.7739303727334, 939.6756661811028],
    [900, 0.95, 842.1538884935079, 960.7729262556858],
    [900, 0.999999, 760.8142677912688, 1055.547487113912],
    [5000, 0.95, 4862.359188694899, 5140.5489485350045],
    [50_000, 0.8, 49713.65133593833, 50287.77977912516],
    [50_000, 0.95, 49562.686650323674, 50440.212035431294],
    [50_000, 0.999999, 48913.828760725315, 51102.46750283448],
    [1_000_000, 0.95, 998040.9833402939, 1001961.9119454322],
  ])('is right to 1e-13 for a count of %d at level %d', (k, sure, low, high) => {
    const interval = rateInterval(k, 1, sure)!;
    agree(interval.low, low, 1e-13);
    agree(interval.high, high, 1e-13);
  });

  it('holds for any level that a number can express', () => {
    for (const sure of [1e-300, 1e-9, 0.5, 1 - 1e-9, 1 - 2 ** -53]) {
      for (const k of [0, 1, 2, 7, 1000]) {
        const { rate, low, high } = rateInterval(k, 1, sure)!;
        expect(low).toBeGreaterThanOrEqual(0);
        // At the lowest levels both ends are the medians of what could lie behind the count.
        expect(low).toBeLessThanOrEqual(rate);
        expect(high).toBeGreaterThan(rate);
        expect(high).toBeLessThan(3 * k + 60);
      }
    }
  });

  it('holds the rate', () => {
    fc.assert(
      fc.property(count, exposure, level, (k, minutes, sure) => {
        const { rate, low, high } = rateInterval(k, minutes, sure)!;
        expect(rate).toBe(k / minutes);
        expect(low).toBeLessThanOrEqual(rate);
        expect(high).toBeGreaterThan(rate);
      }),
    );
  });

  it('is wider the surer it has to be', () => {
    fc.assert(
      fc.property(count, exposure, level, level, (k, minutes, one, other) => {
        fc.pre(Math.abs(one - other) > 1e-6);
        const narrow = rateInterval(k, minutes, Math.min(one, other))!;
        const wide = rateInterval(k, minutes, Math.max(one, other))!;
        expect(wide.high).toBeGreaterThan(narrow.high);
        if (k > 0) expect(wide.low).toBeLessThan(narrow.low);
      }),
    );
  });

  it('moves up with every further count', () => {
    fc.assert(
      fc.property(count, level, (k, sure) => {
        const fewer = rateInterval(k, 1, sure)!;
        const more = rateInterval(k + 1, 1, sure)!;
        expect(more.low).toBeGreaterThan(fewer.low);
        expect(more.high).toBeGreaterThan(fewer.high);
      }),
    );
  });

  it('is per minute: twice the exposure halves every number', () => {
    const once = rateInterval(9, 4)!;
    const twice = rateInterval(9, 8)!;
    for (const end of ['rate', 'low', 'high'] as const) agree(twice[end], once[end] / 2, 1e-15);
  });

  it('starts at exactly 0 for no count', () => {
    expect(rateInterval(0, 2)!.low).toBe(0);
  });

  it('is 95 percent unless asked otherwise', () => {
    expect(rateInterval(7, 6)).toEqual(rateInterval(7, 6, 0.95));
  });

  it('of no exposure is undefined', () => {
    expect(rateInterval(0, 0)).toBeUndefined();
    expect(rateInterval(3, 0)).toBeUndefined();
  });

  it.each([
    ['count', [-1, 2, 0.95]],
    ['count', [1.5, 2, 0.95]],
    ['count', [Number.NaN, 2, 0.95]],
    ['exposure', [1, -2, 0.95]],
    ['exposure', [1, Infinity, 0.95]],
    ['exposure', [1, Number.NaN, 0.95]],
    ['level', [1, 2, 0]],
    ['level', [1, 2, 1]],
    ['level', [1, 0, Number.NaN]],
  ] as const)('names %s when it makes no sense: %j', (name, [k, minutes, sure]) => {
    expect(() => rateInterval(k, minutes, sure)).toThrow(RangeError);
    expect(() => rateInterval(k, minutes, sure)).toThrow(new RegExp(`^${name} `));
  });
});

describe('shareInterval', () => {
  const looks = fc
    .integer({ min: 1, max: 500 })
    .chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));

  it('holds the share and stays between 0 and 1', () => {
    fc.assert(
      fc.property(looks, level, ([hits, n], sure) => {
        const { share, low, high } = shareInterval(hits, n, sure)!;
        expect(share).toBe(hits / n);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(low).toBeLessThanOrEqual(share);
        expect(high).toBeGreaterThanOrEqual(share);
        expect(high).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('ends where the score test says so: each end is z standard errors of its own from the share', () => {
    fc.assert(
      fc.property(looks, ([hits, n]) => {
        // Two-sided 90%: z = 1.6448536269514726 (mpmath 1.3)
        const { share, low, high } = shareInterval(hits, n, 0.9)!;
        for (const end of [low, high]) {
          const distance = (share - end) ** 2;
          const reach = (1.6448536269514726 ** 2 * end * (1 - end)) / n;
          expect(Math.abs(distance - reach)).toBeLessThan(1e-14);
        }
      }),
    );
  });

  it('of the misses is the interval of the hits turned round', () => {
    fc.assert(
      fc.property(looks, level, ([hits, n], sure) => {
        const of = shareInterval(hits, n, sure)!;
        const other = shareInterval(n - hits, n, sure)!;
        expect(Math.abs(of.low - (1 - other.high))).toBeLessThan(1e-15);
        expect(Math.abs(of.high - (1 - other.low))).toBeLessThan(1e-15);
      }),
    );
  });

  it('is wider the surer it has to be', () => {
    fc.assert(
      fc.property(looks, level, level, ([hits, n], one, other) => {
        fc.pre(Math.abs(one - other) > 1e-6);
        const narrow = shareInterval(hits, n, Math.min(one, other))!;
        const wide = shareInterval(hits, n, Math.max(one, other))!;
        expect(wide.high - wide.low).toBeGreaterThan(narrow.high - narrow.low);
      }),
    );
  });

  it('starts at exactly 0 for no hits and ends at exactly 1 for no misses, at any level', () => {
    for (const sure of [1e-300, 0.5, 0.95, 1 - 2 ** -53]) {
      expect(shareInterval(0, 12, sure)!.low).toBe(0);
      expect(shareInterval(12, 12, sure)!.high).toBe(1);
    }
  });

  it('is 95 percent unless asked otherwise', () => {
    expect(shareInterval(7, 12)).toEqual(shareInterval(7, 12, 0.95));
  });

  it('of no looks is undefined', () => {
    expect(shareInterval(0, 0)).toBeUndefined();
  });

  it.each([
    ['hits', [-1, 2, 0.95]],
    ['hits', [0.5, 2, 0.95]],
    ['hits', [3, 2, 0.95]],
    ['hits', [1, 0, 0.95]],
    ['looks', [0, -2, 0.95]],
    ['looks', [0, Number.NaN, 0.95]],
    ['level', [1, 2, 95]],
    ['level', [0, 0, 0]],
  ] as const)('names %s when it makes no sense: %j', (name, [hits, n, sure]) => {
    expect(() => shareInterval(hits, n, sure)).toThrow(RangeError);
    expect(() => shareInterval(hits, n, sure)).toThrow(new RegExp(`^${name} `));
  });
});

describe('rateRatio', () => {
  const counts = fc.tuple(
    fc.integer({ min: 0, max: 60 }),
    fc.integer({ min: 0, max: 60 }),
    exposure,
    exposure,
  );

  it('has the two tails of the split that define it, summed term by term', () => {
    fc.assert(
      fc.property(counts, level, ([a, b, minutesA, minutesB], sure) => {
        fc.pre(a + b > 0);
        const { low, high } = rateRatio(a, minutesA, b, minutesB, sure)!;
        // The share of the counts that falls to A where its rate is so many times B's.
        const shareOfA = (ratio: number) => (ratio * minutesA) / (ratio * minutesA + minutesB);
        const n = a + b;
        if (a > 0) agree(binomialChance(a, n, n, shareOfA(low)), (1 - sure) / 2, 1e-9, 'below');
        if (b > 0) agree(binomialChance(0, a, n, shareOfA(high)), (1 - sure) / 2, 1e-9, 'above');
      }),
    );
  });

  it('has a p that is twice the smaller tail where both rates are equal', () => {
    fc.assert(
      fc.property(counts, ([a, b, minutesA, minutesB]) => {
        fc.pre(a + b > 0);
        const share = minutesA / (minutesA + minutesB);
        const less = binomialChance(0, a, a + b, share);
        const more = binomialChance(a, a + b, a + b, share);
        const { p } = rateRatio(a, minutesA, b, minutesB)!;
        expect(Math.abs(p - Math.min(1, 2 * Math.min(less, more)))).toBeLessThan(1e-11);
      }),
    );
  });

  it('turned round is the other ratio, with the same p', () => {
    fc.assert(
      fc.property(counts, ([a, b, minutesA, minutesB]) => {
        fc.pre(a > 0 && b > 0);
        const one = rateRatio(a, minutesA, b, minutesB)!;
        const other = rateRatio(b, minutesB, a, minutesA)!;
        agree(other.ratio, 1 / one.ratio, 1e-13);
        agree(other.low, 1 / one.high, 1e-12);
        agree(other.high, 1 / one.low, 1e-12);
        agree(other.p, one.p, 1e-11);
      }),
    );
  });

  it('leaves 1 outside its interval exactly where p is below 1 − level', () => {
    fc.assert(
      fc.property(counts, level, ([a, b, minutesA, minutesB], sure) => {
        fc.pre(a + b > 0);
        const { low, high, p } = rateRatio(a, minutesA, b, minutesB, sure)!;
        fc.pre(Math.abs(p - (1 - sure)) > 1e-9);
        expect(low > 1 || high < 1).toBe(p < 1 - sure);
      }),
    );
  });

  it('stands for large counts', () => {
    // mpmath 1.3 at 40 digits: roots of the binomial tails of 50,500 in 100,500
    const { low, high, p } = rateRatio(50_500, 1, 50_000, 1)!;
    agree(low, 0.9975682971730259, 1e-13);
    agree(high, 1.0225868198344472, 1e-13);
    agree(p, 0.11547629006868125, 1e-12);
  });

  it('with nothing on the other side is Infinity, and so is its high end', () => {
    const { ratio, low, high } = rateRatio(6, 4, 0, 7)!;
    expect(ratio).toBe(Infinity);
    expect(high).toBe(Infinity);
    expect(low).toBeGreaterThan(1);
  });

  it('with nothing on this side is 0, and so is its low end', () => {
    const { ratio, low, high } = rateRatio(0, 4, 6, 7)!;
    expect(ratio).toBe(0);
    expect(low).toBe(0);
    // All six on the other side have a chance of 0.025: (1 / (1 + 4/7 · high))⁶.
    agree(high, ((0.025 ** (-1 / 6) - 1) * 7) / 4, 1e-13);
  });

  it('is 95 percent unless asked otherwise', () => {
    expect(rateRatio(7, 6, 5, 4)).toEqual(rateRatio(7, 6, 5, 4, 0.95));
  });

  it('without an exposure or without any count is undefined', () => {
    expect(rateRatio(3, 0, 2, 5)).toBeUndefined();
    expect(rateRatio(3, 5, 2, 0)).toBeUndefined();
    expect(rateRatio(0, 5, 0, 5)).toBeUndefined();
  });

  it.each([
    ['countA', [-1, 2, 3, 4, 0.95]],
    ['countB', [1, 2, 0.5, 4, 0.95]],
    ['exposureA', [1, -2, 3, 4, 0.95]],
    ['exposureB', [1, 2, 3, Number.NaN, 0.95]],
    ['level', [1, 0, 3, 4, 1]],
  ] as const)('names %s when it makes no sense: %j', (name, [a, minutesA, b, minutesB, sure]) => {
    expect(() => rateRatio(a, minutesA, b, minutesB, sure)).toThrow(RangeError);
    expect(() => rateRatio(a, minutesA, b, minutesB, sure)).toThrow(new RegExp(`^${name} `));
  });
});
