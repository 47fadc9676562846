import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalQuantile, phi } from '../../../core/figures/normal.ts';
import { agree } from '../../reference/values.ts';

describe('phi', () => {
  // mpmath 1.3, ncdf at 40 digits
  it.each([
    [-37, 5.725571222524577e-300],
    [-30, 4.906713927148187e-198],
    [-20, 2.7536241186062337e-89],
    [-12.5, 3.732564298877713e-36],
    [-8, 6.220960574271784e-16],
    [-6, 9.86587645037698e-10],
    [-5, 2.866515718791939e-7],
    [-3, 0.0013498980316300946],
    [-2, 0.02275013194817921],
    [-1.5, 0.06680720126885807],
    [-1, 0.15865525393145705],
    [-0.5, 0.3085375387259869],
    [-0.001, 0.49960105778608893],
    [0, 0.5],
    [0.001, 0.500398942213911],
    [0.5, 0.6914624612740131],
    [1, 0.8413447460685429],
    [1.96, 0.9750021048517795],
    [3, 0.9986501019683699],
    [6, 0.9999999990134123],
    [8.2, 0.9999999999999999],
  ])('of %d is right to 1e-12, relatively', (x, expected) => {
    agree(phi(x), expected, 1e-12);
  });

  it('reaches 0 and 1 at the ends of the line', () => {
    expect(phi(-Infinity)).toBe(0);
    expect(phi(-1e200)).toBe(0);
    expect(phi(Infinity)).toBe(1);
    expect(phi(1e200)).toBe(1);
  });

  it('never falls as x grows, by more than its rounding', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -38, max: 38, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (x, step) => phi(x + step) >= phi(x) * (1 - 1e-12),
      ),
    );
  });

  it('of x and of −x add up to 1', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 40, noNaN: true }),
        (x) => Math.abs(phi(x) + phi(-x) - 1) < 4e-15,
      ),
    );
  });

  it('of something that is no number is a RangeError', () => {
    expect(() => phi(Number.NaN)).toThrow(new RangeError('x must be a number'));
  });
});

describe('normalQuantile', () => {
  // mpmath 1.3, root of ncdf at 40 digits, for the double nearest to p
  it.each([
    [1e-300, -37.0470962993612],
    [1e-100, -21.273453560965326],
    [1e-20, -9.262340089798407],
    [1e-10, -6.361340902404057],
    [1e-5, -4.264890793922825],
    [0.001, -3.0902323061678136],
    [0.005, -2.575829303548901],
    [0.025, -1.9599639845400543],
    [0.05, -1.6448536269514726],
    [0.1, -1.2815515655446004],
    [0.25, -0.6744897501960817],
    [0.4, -0.2533471031357997],
    [0.499, -0.002506630899571766],
    [0.5, 0],
    [0.6, 0.2533471031357997],
    [0.9, 1.2815515655446006],
    [0.975, 1.9599639845400538],
    [0.9999, 3.7190164854557084],
  ])('of %d is right to 1e-12', (p, expected) => {
    agree(normalQuantile(p), expected, 1e-12);
  });

  it('undoes phi from far in the left tail to the right', () => {
    fc.assert(
      fc.property(fc.double({ min: -37, max: 5, noNaN: true }), (x) => {
        agree(phi(normalQuantile(phi(x))), phi(x), 1e-11);
      }),
    );
  });

  it('answers for the smallest number that a computer holds', () => {
    // mpmath 1.3 for p = 2^-1074
    agree(normalQuantile(Number.MIN_VALUE), -38.467405617144344, 1e-12);
  });

  it.each([0, 1, -0.1, 1.1, Number.NaN])('of %d is a RangeError', (p) => {
    expect(() => normalQuantile(p)).toThrow(new RangeError('p must be strictly between 0 and 1'));
  });
});
