import { describe, expect, test } from 'vitest';
import { evidence, SHARE_PRIOR } from '../../../core/figures/evidence.ts';

/** The Beta's own mean and sd (any textbook). */
const beta = (a: number, b: number) => ({
  consistency: a / (a + b),
  consistencySd: Math.sqrt((a * b) / ((a + b) ** 2 * (a + b + 1))),
});

describe('the evidence of a share', () => {
  test.each([
    ['balls that come back', SHARE_PRIOR.back],
    ['balls on target', SHARE_PRIOR.onTarget],
  ])('of %s is the hits and misses that were seen, without what was known before', (_, prior) => {
    const { hits, misses } = evidence(beta(prior.a + 17.5, prior.b + 3), prior);
    expect(hits).toBeCloseTo(17.5, 10);
    expect(misses).toBeCloseTo(3, 10);
  });

  test('of one less sure than before is none, and never less', () => {
    expect(evidence({ consistency: 0.5, consistencySd: 0.4 }, SHARE_PRIOR.back)).toEqual({
      hits: 0,
      misses: 0,
    });
    expect(evidence(beta(2, 9), SHARE_PRIOR.back)).toEqual({
      hits: 0,
      misses: expect.closeTo(8, 10),
    });
  });

  test.each([
    ['consistency', { consistency: 0, consistencySd: 0.1 }],
    ['consistency', { consistency: 1, consistencySd: 0.1 }],
    ['consistency', { consistency: Number.NaN, consistencySd: 0.1 }],
    ['consistencySd', { consistency: 0.9, consistencySd: 0 }],
    ['consistencySd', { consistency: 0.9, consistencySd: -0.1 }],
    ['consistencySd', { consistency: 0.9, consistencySd: Number.NaN }],
    ['consistencySd', { consistency: 0.9, consistencySd: 1e-200 }],
  ])('of a share that no round can have is refused for its %s', (name, success) => {
    expect(() => evidence(success, SHARE_PRIOR.back)).toThrow(RangeError);
    expect(() => evidence(success, SHARE_PRIOR.back)).toThrow(name);
  });
});
