import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomial, poisson, tail, thetaWithTail } from '../../../core/figures/tails.ts';
import { agree } from '../../reference/values.ts';

describe('tail', () => {
  it('gives the chance of a Poisson count as the textbook does', () => {
    // 3 or more at a mean of 2: 1 − e⁻² (1 + 2 + 2); 2 or less: e⁻² (1 + 2 + 2).
    agree(tail(3, 2, poisson, 'or-more').chance, 1 - 5 * Math.exp(-2), 1e-14);
    agree(tail(2, 2, poisson, 'or-less').chance, 5 * Math.exp(-2), 1e-14);
  });

  it('gives the chance of a binomial count as the textbook does', () => {
    // Ten tosses of a fair coin: 8 or more in 1 + 10 + 45 of 1024.
    agree(tail(8, 1, binomial(10), 'or-more').chance, 56 / 1024, 1e-14);
    agree(tail(2, 1, binomial(10), 'or-less').chance, 56 / 1024, 1e-14);
  });

  it('of all counts that can be is 1', () => {
    expect(tail(0, 3, poisson, 'or-more').chance).toBe(1);
    expect(tail(0, 3, binomial(7), 'or-more').chance).toBe(1);
    expect(tail(7, 3, binomial(7), 'or-less').chance).toBe(1);
  });

  it('and the rest add up to 1', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 300 }),
        fc.integer({ min: 1, max: 300 }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (count, more, lnOdds) => {
          const family = binomial(count + more);
          const odds = Math.exp(lnOdds);
          const sum =
            tail(count, odds, family, 'or-less').chance +
            tail(count + 1, odds, family, 'or-more').chance;
          agree(sum, 1, 1e-12);
        },
      ),
    );
  });

  it('says how its logarithm changes with the logarithm of theta', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 60 }),
        fc.double({ min: 0.2, max: 80, noNaN: true }),
        fc.constantFrom('or-more' as const, 'or-less' as const),
        (count, theta, side) => {
          const chance = (t: number) => Math.log(tail(count, t, poisson, side).chance);
          const step = 1e-5;
          const seen =
            (chance(theta * Math.exp(step)) - chance(theta * Math.exp(-step))) / 2 / step;
          const { slope } = tail(count, theta, poisson, side);
          expect(Math.abs(slope - seen)).toBeLessThan(1e-5 * Math.max(1, Math.abs(slope)));
        },
      ),
    );
  });

  it('stays a chance where the count is out of all proportion', () => {
    expect(tail(5000, 1e-6, binomial(5000), 'or-more').chance).toBe(0);
    expect(tail(5000, 1e-6, binomial(5000), 'or-less').chance).toBe(1);
    expect(tail(0, 1e6, binomial(5000), 'or-less').chance).toBe(0);
    expect(tail(0, 1e6, binomial(5000), 'or-more').chance).toBe(1);
  });
});

describe('thetaWithTail', () => {
  it('finds the rate of which a closed form is known', () => {
    // No event with chance c: the mean is −ln c. One or more with chance c: −ln(1 − c).
    agree(thetaWithTail(0, poisson, 'or-less', 0.05, 3), -Math.log(0.05), 1e-13);
    agree(thetaWithTail(1, poisson, 'or-more', 0.05, 0.05), -Math.log(0.95), 1e-13);
  });

  it('finds the odds of which a closed form is known', () => {
    // All of ten with chance c: each has c^(1/10).
    const each = 0.05 ** 0.1;
    agree(thetaWithTail(10, binomial(10), 'or-more', 0.05, 1), each / (1 - each), 1e-13);
  });
});
