import { describe, expect, test } from 'vitest';
import type { Terms } from '../../core/drill/drill.ts';
import { playRally } from '../../demo-data/rally.ts';
import { randomFrom } from '../../demo-data/random.ts';
import { lobTerms, serveTerms, termsWith } from '../core/made.ts';

const always = () => 1;
const never = () => 0;
const rallies = (terms: Terms, players: string[], success: () => number, rounds = 200) => {
  const random = randomFrom(1);
  return Array.from({ length: rounds }, () => playRally(terms, players, 120, success, random));
};

describe('a round that is played shot by shot', () => {
  test('has sets for nobody who never hits, and a re-feed after each shot', () => {
    for (const rally of rallies(termsWith(), ['a', 'b'], never)) {
      expect(rally.sets).toEqual([]);
      expect(rally.showing).toBe(0);
      expect(rally.best).toBe(0);
      // 120 s / (1.53 s + 5.66 s) is 16.7; the pace varies from round to round.
      expect(rally.shots).toBeGreaterThan(6);
      expect(rally.shots).toBeLessThan(40);
    }
  });

  test('ends a set after so many good shots, and shows what is left of them', () => {
    for (const rally of rallies(termsWith(), ['a', 'b'], always)) {
      const inTime = rally.sets.filter(({ second }) => second <= 120).length;
      expect(rally.shots).toBe(10 * inTime + rally.showing);
    }
  });

  test('is shared by the two of a pair in turn', () => {
    for (const { shots, struck } of rallies(termsWith(), ['a', 'b'], always)) {
      expect((struck.a ?? 0) + (struck.b ?? 0)).toBe(shots);
      expect(Math.abs((struck.a ?? 0) - (struck.b ?? 0))).toBeLessThanOrEqual(1);
    }
  });

  test('lets everyone in a trio rest in turn, so that their shots stay within a set of each other', () => {
    for (const { struck, sets } of rallies(lobTerms, ['a', 'b', 'c'], always)) {
      expect(sets.length).toBeGreaterThan(6);
      const own = Object.values(struck);
      expect(own).toHaveLength(3);
      expect(Math.max(...own) - Math.min(...own)).toBeLessThanOrEqual(2);
    }
  });

  test('names who met the target, and goes on at once', () => {
    for (const { sets, shots, struck } of rallies(serveTerms, ['a', 'b'], always)) {
      expect(sets).toHaveLength(shots);
      expect(sets.filter(({ player }) => player === 'a')).toHaveLength(struck.a ?? 0);
      // 120 s / 1.53 s is 78.
      expect(shots).toBeGreaterThan(40);
    }
  });

  /*
   * Where p varies between pairs as Beta(4, 1), finished sets of n hold 62% of all shots for n = 4,
   * 43% for n = 10 and 27% for n = 20: this project's own earlier simulation of the same model.
   */
  test.each([
    [4, 0.62],
    [10, 0.43],
    [20, 0.27],
  ])('shows of its shots in finished sets of %i what the model has', (size, share) => {
    const random = randomFrom(2);
    let shots = 0;
    let shown = 0;
    for (let round = 0; round < 6_000; round += 1) {
      const p = random.unit() ** (1 / 4); // Beta(4, 1)
      const rally = playRally(termsWith({ size }), ['a', 'b'], 120, () => p, random);
      shots += rally.shots;
      shown += size * rally.sets.filter(({ second }) => second <= 120).length;
    }
    expect(shown / shots).toBeCloseTo(share, 1.5);
  });
});
