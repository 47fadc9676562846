import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weekLoad } from '../../../core/figures/load.ts';
import { agree } from '../../reference/values.ts';

const week = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 7, maxLength: 7 });

describe('weekLoad', () => {
  it('adds the days up, and spreads them evenly for the mean', () => {
    const { load, mean } = weekLoad([10, 0, 20, 0, 30, 0, 10]);
    expect(load).toBe(70);
    expect(mean).toBe(10);
  });

  it('divides by six for the deviation of the sample and by seven for that of the population', () => {
    // Distances from the mean of 10: 0, 10, 10, 10, 20, 10, 0; squares 800.
    const { sdSample, sdPopulation } = weekLoad([10, 0, 20, 0, 30, 0, 10]);
    agree(sdSample, Math.sqrt(800 / 6), 1e-15);
    agree(sdPopulation, Math.sqrt(800 / 7), 1e-15);
  });

  it('takes the deviation of the sample for monotony, and strain is load times monotony', () => {
    fc.assert(
      fc.property(week, (days) => {
        fc.pre(new Set(days).size > 1);
        const { load, mean, sdSample, monotony, strain } = weekLoad(days);
        agree(monotony, mean / sdSample, 1e-14);
        agree(strain, load * monotony!, 1e-14);
      }),
    );
  });

  it('does not care which day is which', () => {
    fc.assert(
      fc.property(week, (days) => {
        const turned = weekLoad([...days.slice(3), ...days.slice(0, 3)]);
        expect(turned.load).toBe(weekLoad(days).load);
        expect(Math.abs(turned.sdSample - weekLoad(days).sdSample)).toBeLessThan(1e-9);
      }),
    );
  });

  it('in another unit has the same monotony', () => {
    fc.assert(
      fc.property(week, (days) => {
        fc.pre(new Set(days).size > 1);
        agree(weekLoad(days.map((day) => day * 60)).monotony, weekLoad(days).monotony!, 1e-12);
      }),
    );
  });

  it.each([0, 300, 0.1])('of seven equal days of %d has no monotony and no strain', (day) => {
    const found = weekLoad(Array(7).fill(day));
    expect(found.sdSample).toBe(0);
    expect(found.sdPopulation).toBe(0);
    expect(found).not.toHaveProperty('monotony');
    expect(found).not.toHaveProperty('strain');
  });

  it.each([0, 6, 8])('of %d days is a RangeError', (days) => {
    expect(() => weekLoad(Array(days).fill(1))).toThrow(RangeError);
    expect(() => weekLoad(Array(days).fill(1))).toThrow(/^days must be the 7 of one week/);
  });

  it.each([-1, Infinity, Number.NaN])('of a day of %d is a RangeError', (day) => {
    expect(() => weekLoad([1, 2, 3, day, 5, 6, 7])).toThrow(RangeError);
    expect(() => weekLoad([1, 2, 3, day, 5, 6, 7])).toThrow(/^each of days must/);
  });
});
