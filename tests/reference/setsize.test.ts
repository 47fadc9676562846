import { describe, expect, it } from 'vitest';
import { expectedSets } from '../../core/figures/setsize.ts';

const pace = { tempo: 1.5, refeed: 5.7, pause: 4.2, seconds: 120 };

/**
 * Size, success share, the formula's sets as printed by an implementation written apart from this one,
 * and the mean of 20,000 simulated rounds.
 */
const vectors: [size: number, consistency: number, formula: number, simulated: number][] = [
  [10, 0.9, 2.644, 2.643],
  [6, 0.85, 3.888, 3.909],
  [4, 0.8, 5.127, 5.114],
  [20, 0.95, 1.532, 1.524],
  [3, 0.6, 3.117, 3.129],
];

describe('expected sets in a row', () => {
  it.each(vectors)('of %i at a success share of %f are %f as published', (size, p, formula) => {
    const found = expectedSets({ rule: 'in-a-row', size, consistency: p, ...pace });
    expect(found.toFixed(3)).toBe(formula.toFixed(3));
  });

  it.each(vectors)(
    'of %i at a success share of %f are within 0.035 of simulated rounds',
    (size, p, _, simulated) => {
      const found = expectedSets({ rule: 'in-a-row', size, consistency: p, ...pace });
      expect(Math.abs(found - simulated)).toBeLessThan(0.035);
    },
  );
});
