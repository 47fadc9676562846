import type { Entry } from './entry.ts';
import { foldMerges } from './merges.ts';

/** What a coach can wish of two players. */
export const wishes = ['together', 'apart'] as const;

export interface Wish {
  a: string;
  b: string;
  wish: (typeof wishes)[number];
}

/** The wishes that stand, at most one for any two players, of entries sorted by id. */
export function foldWishes(entries: readonly Entry[]): Wish[] {
  const merges = foldMerges(entries);
  const who = (player: string) => merges.get(player) ?? player;
  const standing = new Map<string, Wish>();
  for (const entry of entries) {
    if (entry.kind !== 'wish-set') continue;
    const { wish } = entry;
    const [a, b] = [who(entry.a), who(entry.b)];
    if (a === b) continue;
    const key = JSON.stringify([a, b].sort());
    if (wish === 'none') standing.delete(key);
    else standing.set(key, { a, b, wish });
  }
  return [...standing.values()];
}
