import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kappa } from '../../../core/figures/agreement.ts';
import { agree } from '../../reference/values.ts';

const looks = fc.integer({ min: 0, max: 40 });
const table = fc.integer({ min: 2, max: 4 }).chain((size) =>
  fc.array(fc.array(looks, { minLength: size, maxLength: size }), {
    minLength: size,
    maxLength: size,
  }),
);

describe('kappa', () => {
  it('is 1 where both observers call every look the same', () => {
    expect(
      kappa([
        [10, 0],
        [0, 7],
      ]),
    ).toMatchObject({ agreement: 1, kappa: 1 });
  });

  it('is 0 where they agree exactly as often as chance would have it', () => {
    // Rows 3 : 1 and columns 3 : 2, each cell the product of its shares of 20 looks.
    expect(
      kappa([
        [9, 6],
        [3, 2],
      ])!.kappa,
    ).toBe(0);
  });

  it('is −1 where they halve the looks and never agree', () => {
    expect(
      kappa([
        [0, 5],
        [5, 0],
      ])!.kappa,
    ).toBe(-1);
  });

  it('is never above the agreement itself, and never above 1', () => {
    fc.assert(
      fc.property(table, (some) => {
        const found = kappa(some);
        if (found?.kappa === undefined) return;
        expect(found.kappa).toBeLessThanOrEqual(found.agreement + 1e-15);
        expect(found.agreement).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('does not care which observer is the first', () => {
    fc.assert(
      fc.property(table, (some) => {
        const turned = some.map((_, i) => some.map((row) => row[i]!));
        expect(kappa(turned)).toEqual(kappa(some));
      }),
    );
  });

  it('does not change with ten times the looks', () => {
    fc.assert(
      fc.property(table, (some) => {
        const found = kappa(some);
        fc.pre(found?.kappa !== undefined);
        agree(
          kappa(some.map((row) => row.map((count) => count * 10)))!.kappa,
          found!.kappa!,
          1e-12,
        );
      }),
    );
  });

  it('is left out where both called every look the same one thing', () => {
    expect(
      kappa([
        [17, 0],
        [0, 0],
      ]),
    ).toEqual({ agreement: 1, expected: 1 });
  });

  it('of no looks is undefined', () => {
    expect(kappa([])).toBeUndefined();
    expect(
      kappa([
        [0, 0],
        [0, 0],
      ]),
    ).toBeUndefined();
  });

  it.each([
    ['not square', [[1, 2]]],
    ['ragged', [[1, 2], [3]]],
    [
      'negative',
      [
        [1, -2],
        [3, 4],
      ],
    ],
    [
      'not whole',
      [
        [1, 0.5],
        [3, 4],
      ],
    ],
    [
      'not a number',
      [
        [1, Number.NaN],
        [3, 4],
      ],
    ],
  ] as const)('of a table that is %s is a RangeError', (_, some) => {
    expect(() => kappa(some)).toThrow(RangeError);
    expect(() => kappa(some)).toThrow(/table must/);
  });
});
