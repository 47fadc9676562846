import type { Entry } from './entry.ts';

/** For each player who is one child with another: the one whose name and place stand. */
export type Merges = ReadonlyMap<string, string>;

/** What was said last of two players, whichever is named first. */
export interface OneOrTwo {
  player: string;
  into: string;
  one: boolean;
}

/** What was said of each two players, by both their ids; entries sorted by id. */
export function foldOneOrTwo(entries: Iterable<Entry>): Map<string, OneOrTwo> {
  const said = new Map<string, OneOrTwo>();
  for (const entry of entries) {
    if (entry.kind !== 'players-merged' && entry.kind !== 'players-parted') continue;
    const { player, into } = entry;
    const key = bothOf(player, into);
    said.delete(key);
    said.set(key, { player, into, one: entry.kind === 'players-merged' });
  }
  return said;
}

/** The two players, in whichever order they are named. */
export const bothOf = (one: string, other: string): string => [one, other].sort().join('/');

/**
 * Who is one child with whom, of entries sorted by id. Where several phones said so in a ring, what
 * was said first leads: nobody is lost, and nobody is two.
 */
export function foldMerges(entries: Iterable<Entry>): Merges {
  const up = new Map<string, string>();
  const top = (player: string): string => {
    const next = up.get(player);
    return next === undefined ? player : top(next);
  };
  for (const { player, into, one } of foldOneOrTwo(entries).values()) {
    const [from, to] = [top(player), top(into)];
    if (one && from !== to) up.set(from, to);
  }
  return new Map([...up.keys()].map((player) => [player, top(player)]));
}
