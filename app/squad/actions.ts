import { nanoid } from 'nanoid';
import type { RosterPlayer } from '../../core/exchange/roster.ts';
import type { Clearable, Hand } from '../../core/ledger/squad.ts';
import { append, squad } from '../ledger.ts';

/** What a person can do to the squad, each as the entries that say so. */

/** All names in use, those of resting players too, without one player's own. */
export const namesBeside = (player?: string): string[] =>
  [...squad.value.values()].filter(({ id }) => id !== player).map(({ name }) => name);

/**
 * Adds players, all of them in one append: a file is taken whole or not at all. Their ids sort in
 * the order of the squad, which the table in which everyone meets goes by (see pair-cost.ts).
 *
 * @returns the ids that they have from now on
 */
export function addPlayers(players: readonly RosterPlayer[]): string[] {
  const seat = (index: number) => String(squad.value.size + index + 1).padStart(4, '0');
  const ids = players.map((_, index) => `${seat(index)}-${nanoid(10)}`);
  append(
    ...players.map((player, index) => ({
      kind: 'player-added' as const,
      player: ids[index] ?? '',
      ...player,
    })),
  );
  return ids;
}

/** What may change of a player; what is left out stays as it is. */
export interface Change {
  name?: string;
  level?: number;
  hand?: Hand;
  /** What is open again. */
  cleared?: Clearable[];
}

export function changePlayer(player: string, change: Change): void {
  if (Object.keys(change).length > 0) append({ kind: 'player-changed', player, ...change });
}

/** The player is not asked for any more, and keeps the history. */
export function restPlayer(player: string): void {
  append({ kind: 'player-rested', player });
}

export function bringBack(player: string): void {
  append({ kind: 'player-returned', player });
}
