import { expect, it } from 'vitest';
import { logRising } from '../../../core/figures/rising-factorial.ts';

it('rising factorials of 1 are the factorials', () => {
  const logs = logRising(1, 10);
  expect(logs[0]).toBe(0);
  expect(Math.exp(logs[5]!)).toBeCloseTo(120, 9);
  expect(Math.exp(logs[10]!)).toBeCloseTo(3628800, 4);
});

it('rising factorials of any x start at 1 and grow by x, x + 1, x + 2', () => {
  const logs = logRising(2.5, 3);
  expect([...logs].map(Math.exp)).toEqual(
    [1, 2.5, 2.5 * 3.5, 2.5 * 3.5 * 4.5].map((value) => expect.closeTo(value, 10)),
  );
});

it('a Beta chance of an order of hits and misses is a ratio of three of them', () => {
  // Under Beta(1, 1) every order of 3 hits and 2 misses has the chance 3! 2! / 6!.
  const chance = Math.exp(logRising(1, 3)[3]! + logRising(1, 2)[2]! - logRising(2, 5)[5]!);
  expect(chance).toBeCloseTo(12 / 720, 12);
});
