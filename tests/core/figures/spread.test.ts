import fc from 'fast-check';
import { expect, it } from 'vitest';
import { quantile } from '../../../core/figures/spread.ts';

it('a single number is spread from half a unit below it to half a unit above it', () => {
  const one = Float64Array.of(3);
  expect(quantile(one, 7, 0.1)).toBeCloseTo(6.6, 12);
  expect(quantile(one, 7, 0.5)).toBe(7);
  expect(quantile(one, 7, 0.9)).toBeCloseTo(7.4, 12);
});

it('a quantile between two numbers lies where their weights meet', () => {
  expect(quantile(Float64Array.of(1, 3), 0, 0.25)).toBe(0.5);
  expect(quantile(Float64Array.of(1, 0, 3), 0, 0.26)).toBeGreaterThan(1.5);
});

it('a larger share never has a smaller quantile, and all stay inside the numbers that have weight', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 30 }),
      fc.double({ min: 0.001, max: 0.999, noNaN: true }),
      fc.double({ min: 0.001, max: 0.999, noNaN: true }),
      (weights, one, other) => {
        fc.pre(weights.some((weight) => weight > 1e-300));
        const table = Float64Array.from(weights);
        const low = quantile(table, 5, Math.min(one, other));
        const high = quantile(table, 5, Math.max(one, other));
        expect(low).toBeLessThanOrEqual(high);
        expect(low).toBeGreaterThanOrEqual(4.5);
        expect(high).toBeLessThanOrEqual(5.5 + weights.length - 1);
      },
    ),
  );
});
