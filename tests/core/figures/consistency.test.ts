import { describe, expect, it } from 'vitest';
import { betaOf, carriedOver, consistencyInterval } from '../../../core/figures/consistency.ts';

describe('the Beta of a mean and an sd', () => {
  it('has that mean and that sd', () => {
    const { a, b } = betaOf(0.8, 0.1);
    expect(a / (a + b)).toBeCloseTo(0.8, 12);
    expect(Math.sqrt((a * b) / ((a + b) ** 2 * (a + b + 1)))).toBeCloseTo(0.1, 12);
  });

  it('is no wider than the least sum that is asked for', () => {
    const { a, b } = betaOf(0.5, 0.5, 2);
    expect([a, b]).toEqual([1, 1]);
  });
});

describe('the interval of a consistency', () => {
  // scipy.stats.beta.ppf of scipy 1.17.1 at 0.1 and 0.9, with a and b from the mean and the sd.
  it.each([
    [0.9375, 0.0365, 0.88803823, 0.97803668],
    [0.634, 0.144, 0.43842762, 0.81670278],
    [0.8, 0.163, 0.56285424, 0.9738084],
    [0.5, 0.3, 0.08436123, 0.91563877],
    [0.05, 0.05, 0.0045173, 0.11725914],
    [0.9, 0.0001, 0.89987183, 0.90012814],
  ])(
    'of mean %f and sd %f is that of the Beta quantiles',
    (consistency, consistencySd, low, high) => {
      const found = consistencyInterval({ consistency, consistencySd });
      expect(Math.abs(found.low - low)).toBeLessThan(1e-6);
      expect(Math.abs(found.high - high)).toBeLessThan(1e-6);
    },
  );

  it('of an even Beta cuts off the same share at both ends', () => {
    const even = { consistency: 0.5, consistencySd: Math.sqrt(1 / 12) };
    const { low, high } = consistencyInterval(even, 0.9);
    expect(low).toBeCloseTo(0.05, 7);
    expect(high).toBeCloseTo(0.95, 7);
  });

  it('of a known consistency is that one value', () => {
    expect(consistencyInterval({ consistency: 1, consistencySd: 0 })).toEqual({ low: 1, high: 1 });
  });

  it('of an sd that no Beta has is a RangeError', () => {
    const interval = (consistency: number, consistencySd: number, level?: number) => () =>
      consistencyInterval({ consistency, consistencySd }, level);
    expect(interval(0.5, 0.5)).toThrow(/consistencySd/);
    expect(interval(1, 0.1)).toThrow(/consistencySd/);
    expect(interval(0.5, Number.NaN)).toThrow(/consistencySd/);
    expect(interval(1.1, 0.1)).toThrow(/consistency/);
    expect(interval(0.5, 0.1, 1)).toThrow(/level/);
  });
});

describe('a consistency carried over to the next practice', () => {
  it('keeps its mean and becomes less sure', () => {
    const { consistency, consistencySd } = carriedOver({ consistency: 0.8, consistencySd: 0.06 });
    expect(consistency).toBe(0.8);
    expect(consistencySd).toBeCloseTo(Math.hypot(0.06, 0.3 * 0.16), 12);
  });

  it('never says less than a Beta with a + b = 2', () => {
    const carried = carriedOver({ consistency: 0.5, consistencySd: 0.4 });
    expect(carried.consistencySd).toBeCloseTo(Math.sqrt(1 / 12), 12);
    expect(carriedOver({ consistency: 1, consistencySd: 0.1 }).consistencySd).toBe(0);
  });
});
