import type { AnyEntry } from './entry.ts';
import { isPractised } from './join.ts';

/**
 * What a ledger was told to forget. That it was told is an entry like any other and stays, so that
 * what was forgotten does not come back from an older file: what is kept of any ledgers that meet is
 * their union without what one of them erased, in whatever order they meet.
 */
export interface Erased {
  players: ReadonlySet<string>;
  practices: ReadonlySet<string>;
}

/** What these entries erase. */
export function foldErased(entries: Iterable<AnyEntry>): Erased {
  const players = new Set<string>();
  const practices = new Set<string>();
  for (const { kind, player, erased } of entries) {
    if (kind === 'player-erased') players.add(String(player));
    else if (kind === 'practice-erased') practices.add(String(erased));
  }
  return { players, practices };
}

/** Entries that hold ids alone: by them what is erased, or one with another, stays so. */
const STAYS: readonly string[] = [
  'player-erased',
  'practice-erased',
  'players-merged',
  'players-parted',
];

/** What is said in a practice of one player alone. */
const OWN: readonly string[] = ['look', 'effort-told'];

/**
 * Whether an entry is to be forgotten. Of a player that is all that stands beyond one practice (name,
 * level, hand, wishes), and what a practice says of the player alone: looks, and how hard it was. What
 * was counted names no one and stays, for it is the partners' too.
 */
export function isErased(entry: AnyEntry, { players, practices }: Erased): boolean {
  if (isPractised(entry)) {
    if (practices.has(entry.practice)) return true;
    return OWN.includes(entry.kind) && players.has(String((entry as { player?: unknown }).player));
  }
  if (players.size === 0 || STAYS.includes(entry.kind)) return false;
  const { player, a, b } = entry as { player?: unknown; a?: unknown; b?: unknown };
  return [player, a, b].some((each) => typeof each === 'string' && players.has(each));
}
