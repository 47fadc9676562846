import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type MeanData, meanRegression } from '../../../core/figures/mean-regression.ts';

const COLUMNS = 5;

/** Rows that may contradict each other: who takes part, with the values of all columns for each. */
const anyRow = fc.record({
  hits: fc.double({ min: 0, max: 300, noNaN: true }),
  misses: fc.double({ min: 0.1, max: 300, noNaN: true }),
  parts: fc.array(
    fc.array(fc.constantFrom<number[]>(-3, 0, 0, 1, 1), { minLength: COLUMNS, maxLength: COLUMNS }),
    { minLength: 1, maxLength: 3 },
  ),
});

type Row = typeof anyRow extends fc.Arbitrary<infer T> ? T : never;
const PRECISION = 2;

const dataOf = (rows: readonly Row[]): MeanData => {
  const ends = (sizes: number[]) => {
    let end = 0;
    return Int32Array.from([0, ...sizes], (size) => (end += size));
  };
  return {
    hits: Float64Array.from(rows, ({ hits }) => hits),
    misses: Float64Array.from(rows, ({ misses }) => misses),
    columns: Int32Array.from(rows.flatMap(() => Array.from({ length: COLUMNS }, (_, i) => i))),
    starts: ends(rows.map(() => COLUMNS)),
    values: Float64Array.from(rows.flatMap(({ parts }) => parts.flat())),
    valueStarts: ends(rows.map(({ parts }) => COLUMNS * parts.length)),
    means: new Float64Array(COLUMNS).fill(0.5),
    precisions: new Float64Array(COLUMNS).fill(PRECISION),
  };
};

/** The objective as its definition has it. */
function objective(rows: readonly Row[], dispersion: number, w: ArrayLike<number>): number {
  let sum = 0;
  for (const { hits, misses, parts } of rows) {
    const shares = parts.map(
      (values) => 1 / (1 + Math.exp(-values.reduce((logit, x, i) => logit + x * w[i]!, 0))),
    );
    const p = shares.reduce((all, share) => all + share, 0) / shares.length;
    sum += (hits * Math.log(p) + misses * Math.log(1 - p)) / dispersion;
  }
  for (let i = 0; i < COLUMNS; i++) sum -= (PRECISION / 2) * (w[i]! - 0.5) ** 2;
  return sum;
}

describe('a regression of means', () => {
  test('ends on a top, though rows contradict each other', () => {
    fc.assert(
      fc.property(
        fc.array(anyRow, { minLength: 1, maxLength: 12 }),
        fc.constantFrom(1, 1.4),
        (rows, dispersion) => {
          const { coefficients } = meanRegression(dataOf(rows), dispersion, 1e-8);
          const top = objective(rows, dispersion, coefficients);
          const around = Array.from(coefficients).flatMap((_, i) =>
            [-1e-3, 1e-3].map((off) =>
              objective(
                rows,
                dispersion,
                coefficients.map((c, j) => c + (i === j ? off : 0)),
              ),
            ),
          );
          // A step of 1e-3 off a top loses at least half of its square times the prior's precision.
          const lost = (1e-6 * PRECISION) / 2;
          expect(around.filter((height) => height > top - 0.2 * lost)).toEqual([]);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('is as near to the top as was asked for, however much rows contradict each other', () => {
    fc.assert(
      fc.property(fc.array(anyRow, { minLength: 4, maxLength: 12 }), (rows) => {
        const [rough, fine] = [1e-5, 1e-10].map(
          (enough) => meanRegression(dataOf(rows), 1, enough).coefficients,
        );
        expect(Math.max(...rough!.map((c, i) => Math.abs(c - fine![i]!)))).toBeLessThan(2e-5);
      }),
      { numRuns: 300 },
    );
  });

  test('without any row is what was known before', () => {
    const { coefficients, factor } = meanRegression(dataOf([]), 1, 1e-8);
    expect([...coefficients]).toEqual([0.5, 0.5, 0.5, 0.5, 0.5]);
    expect(factor[0]).toBeCloseTo(Math.sqrt(PRECISION), 12);
  });

  test('gives back the share that rows without a prior to speak of agree on', () => {
    const row = { hits: 40, misses: 10, parts: [[1, 0, 0, 0, 0]] };
    const data = { ...dataOf([row, row]), precisions: new Float64Array(COLUMNS).fill(1e-9) };
    const { shares, rests, coefficients } = meanRegression(data, 1, 1e-10);
    expect(shares[0]).toBeCloseTo(0.8, 9);
    expect(rests[0]).toBeCloseTo(0.2, 9);
    expect(coefficients[0]).toBeCloseTo(Math.log(4), 8);
  });
});
