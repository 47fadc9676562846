import fc from 'fast-check';
import { expect } from 'vitest';
import type { Pair } from '../../core/round/pair.ts';
import { MOST_PLAYERS } from '../../core/round/pairs.ts';

export const squadOf = (count: number) => Array.from({ length: count }, (_, at) => `p${at + 1}`);
export const anySquad = fc
  .integer({ min: 2, max: MOST_PLAYERS })
  .chain((count) => fc.shuffledSubarray(squadOf(count), { minLength: count }));
const everyone = (pairs: readonly Pair[]) => pairs.flatMap(({ players }) => players);
export const trios = (pairs: readonly Pair[]) =>
  pairs.filter(({ players }) => players.length === 3);
export const key = (players: readonly string[]) => players.toSorted().join(' ');

/** Everyone is in exactly once, in pairs and at most one trio, under letters of their own. */
export function expectPairs(pairs: readonly Pair[], players: readonly string[]): void {
  expect(everyone(pairs).toSorted()).toEqual(players.toSorted());
  expect(pairs.every((pair) => pair.players.length === 2 || pair.players.length === 3)).toBe(true);
  expect(trios(pairs)).toHaveLength(players.length % 2);
  expect(new Set(pairs.map(({ letter }) => letter)).size).toBe(pairs.length);
  for (const { letter } of pairs) expect(letter).toMatch(/^[A-L]$/);
}
