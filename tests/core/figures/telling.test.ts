import { expect, test } from 'vitest';
import { rateInterval } from '../../../core/figures/interval.ts';
import { isTelling } from '../../../core/figures/telling.ts';

/*
 * Exact 95% limits of a Poisson count (Garwood 1936) are halves of chi-squared quantiles, from any
 * table of them: of 9 they are 8.231/2 and 34.170/2, of 10 they are 9.591/2 and 36.781/2.
 */
test('ten sets are the fewest whose rate tells anything, in however long', () => {
  expect(isTelling(rateInterval(9, 3)!)).toBe(false);
  expect(isTelling(rateInterval(10, 3)!)).toBe(true);
  expect(isTelling(rateInterval(9, 90)!)).toBe(false);
});

test('a lower limit of nothing tells nothing, and one that is the upper limit everything', () => {
  expect(isTelling({ low: 0, high: 0.1 })).toBe(false);
  expect(isTelling({ low: 2, high: 8 })).toBe(true);
  expect(isTelling({ low: 2, high: 8.001 })).toBe(false);
  expect(isTelling({ low: 2, high: 2 })).toBe(true);
});
