import { expect, it } from 'vitest';
import { even, fromLogit } from '../../../core/figures/logit.ts';

it('a logit of 0 is a share of one half', () => {
  expect(fromLogit(0).share).toBe(0.5);
  expect(fromLogit(Math.log(9)).share).toBeCloseTo(0.9, 14);
});

it('the logarithms of a share and of the rest keep their digits at both ends', () => {
  expect(fromLogit(50).logRest).toBeCloseTo(-50, 12);
  expect(fromLogit(-50).logShare).toBeCloseTo(-50, 12);
  expect(fromLogit(50).logShare).toBeCloseTo(-Math.exp(-50), 30);
  expect(fromLogit(1000)).toMatchObject({ share: 1, logRest: -1000 });
  expect(fromLogit(-1000).share).toBe(0);
});

it('even values hold both ends', () => {
  expect(even(5, -1, 1)).toEqual([-1, -0.5, 0, 0.5, 1]);
  expect(even(2, 3, 9)).toEqual([3, 9]);
});
