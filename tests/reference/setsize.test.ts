import { describe, expect, it } from 'vitest';
import { setsBySize } from '../../core/figures/setsize.ts';
import { agree, checks, named } from './values.ts';

const pace = { tempo: 1.5, refeed: 5.7, pause: 4.2 };
const expectedSets = (size: number, consistency: number) =>
  setsBySize({ consistency, consistencySd: 0, seconds: 120, ...pace })(size);

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
    expect(expectedSets(size, p).toFixed(3)).toBe(formula.toFixed(3));
  });

  it.each(vectors)(
    'of %i at a success share of %f are within 0.035 of simulated rounds',
    (size, p, _, simulated) => {
      expect(Math.abs(expectedSets(size, p) - simulated)).toBeLessThan(0.035);
    },
  );

  // Without re-feed and pause a long round's sets are its shots over the shots of a set.
  it.each(checks('C.wait.p0.').map((c) => [named(c), c] as const))(
    'take in the mean the shots that a run of n takes: %s',
    (_, { inputs: { n, p }, expected }) => {
      const sets = (seconds: number) =>
        setsBySize({
          ...{ consistency: p, consistencySd: 0, seconds },
          ...{ tempo: 1, refeed: 0, pause: 0 },
        })(n);
      agree(1e7 / (sets(3e7) - sets(2e7)), expected.mean_trials, 1e-7);
    },
  );
});
