import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { poissonDeviance, poissonRegression } from '../../../core/figures/poisson-regression.ts';

describe('poissonRegression', () => {
  it('is the pooled rate where there is one column', () => {
    const fit = poissonRegression({
      counts: [3, 0, 9],
      exposures: [2, 1, 3],
      rows: [[0], [0], [0]],
      penalty: [0],
    });
    expect(fit.coefficients[0]).toBeCloseTo(Math.log(2), 12);
    expect(Array.from(fit.fitted)).toEqual([4, 2, 6].map((m) => expect.closeTo(m, 12)));
  });

  it('fits perfectly where every observation has a column of its own', () => {
    const fit = poissonRegression({
      counts: [3, 50, 9],
      exposures: [2, 1, 3],
      rows: [[0], [1], [2]],
      penalty: [0, 0, 0],
    });
    expect(fit.deviance).toBeCloseTo(0, 12);
  });

  it('draws a penalised coefficient to where its penalty and the counts balance', () => {
    const fit = poissonRegression({ counts: [5], exposures: [1], rows: [[0]], penalty: [3] });
    const c = fit.coefficients[0]!;
    expect(5 - Math.exp(c)).toBeCloseTo(3 * c, 10);
    expect(fit.factor[0]! ** 2).toBeCloseTo(Math.exp(c) + 3, 10);
  });

  it('has a gradient of 0 for any counts, exposures and penalty', () => {
    const observation = fc.record({
      count: fc.nat(40),
      exposure: fc.double({ min: 0.01, max: 100, noNaN: true }),
      row: fc.uniqueArray(fc.nat(3), { minLength: 1 }),
    });
    fc.assert(
      fc.property(
        fc.array(observation, { minLength: 1, maxLength: 20 }),
        fc.array(fc.double({ min: 0.01, max: 50, noNaN: true }), { minLength: 4, maxLength: 4 }),
        (observations, penalty) => {
          const fit = poissonRegression({
            counts: observations.map(({ count }) => count),
            exposures: observations.map(({ exposure }) => exposure),
            rows: observations.map(({ row }) => row),
            penalty,
          });
          penalty.forEach((weight, j) => {
            let gradient = -weight * fit.coefficients[j]!;
            observations.forEach(({ count, row }, r) => {
              if (row.includes(j)) gradient += count - fit.fitted[r]!;
            });
            expect(Math.abs(gradient)).toBeLessThanOrEqual(1e-9);
          });
        },
      ),
    );
  });

  it('comes to the same from any start', () => {
    const data = {
      counts: [4, 1, 7],
      exposures: [1, 2, 1],
      rows: [[0, 1], [0], [0, 1]],
      penalty: [0, 0.5],
    };
    const { coefficients } = poissonRegression(data);
    for (const start of [
      [0, 0],
      [-9, 3],
      [12, 12],
    ]) {
      const again = poissonRegression(data, Float64Array.from(start));
      again.coefficients.forEach((c, j) => {
        expect(c).toBeCloseTo(coefficients[j]!, 10);
      });
    }
  });

  it('ends with counts so large that rounding hides a gradient of 1e-10', () => {
    const fit = poissonRegression({
      counts: [3e12, 5e12],
      exposures: [1, 7],
      rows: [[0], [0]],
      penalty: [0],
    });
    expect(fit.coefficients[0]).toBeCloseTo(Math.log(1e12), 12);
  });

  it('goes far down, and stops, where an unpenalised column saw no counts', () => {
    const fit = poissonRegression({ counts: [0], exposures: [1], rows: [[0]], penalty: [0] });
    expect(fit.coefficients[0]).toBeLessThan(-20);
    expect(fit.fitted[0]).toBeLessThanOrEqual(1e-10);
  });

  it('refuses columns that nothing tells apart', () => {
    const twins = {
      counts: [1, 2],
      exposures: [1, 1],
      rows: [
        [0, 1],
        [0, 1],
      ],
    };
    expect(() => poissonRegression({ ...twins, penalty: [0, 0] })).toThrow(RangeError);
    expect(poissonRegression({ ...twins, penalty: [0, 1] }).coefficients[1]).toBeCloseTo(0, 12);
  });
});

it('the deviance of a count of 0 is twice what was expected', () => {
  expect(poissonDeviance([0], [1.5])).toBe(3);
  expect(poissonDeviance([2], [2])).toBe(0);
});
