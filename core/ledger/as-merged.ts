import type { PracticeEntry } from './entry.ts';
import type { Merges } from './merges.ts';
import type { Summary } from './summary.ts';

/*
 * A practice as it reads where two players are one child. Entries and summaries stay as they lie:
 * whoever is told apart again has every count back.
 */

/** The entry with every player by the id that stands; but where both stand in it, they are two. */
export function entryAsMerged(entry: PracticeEntry, merges: Merges): PracticeEntry {
  if (merges.size === 0) return entry;
  const read = named(entry, merges);
  const { pairs, players = [] } = read as {
    pairs?: readonly { players: readonly string[] }[];
    players?: readonly string[];
  };
  return isOnce(pairs ?? [{ players }]) ? read : entry;
}

/** The summary with every player by the id that stands; but where both played at once, they are two. */
export function summaryAsMerged(summary: Summary, merges: Merges): Summary {
  const knows = [...summary.attended, ...summary.rounds.flatMap(everyone)];
  if (!knows.some((player) => merges.has(player))) return summary;
  return {
    ...summary,
    attended: [...new Set(named(summary.attended, merges))],
    rounds: summary.rounds.map((round) => {
      const read = { ...round, tallies: named(round.tallies, merges) };
      return isOnce(read.tallies.map(({ pair }) => pair)) ? read : round;
    }),
  };
}

const everyone = ({ tallies }: Summary['rounds'][number]) =>
  tallies.flatMap(({ pair }) => pair.players);

const isOnce = (pairs: readonly { players: readonly string[] }[]): boolean => {
  const players = pairs.flatMap((pair) => pair.players);
  return new Set(players).size === players.length;
};

/** Ids are drawn: whatever text is one of a player's, however deep and also as a field's name, names the player. */
function named<T>(value: T, merges: Merges): T {
  const name = (text: string) => merges.get(text) ?? text;
  const read = (each: unknown): unknown =>
    typeof each === 'string'
      ? name(each)
      : Array.isArray(each)
        ? each.map(read)
        : typeof each === 'object' && each
          ? Object.fromEntries(Object.entries(each).map(([field, own]) => [name(field), read(own)]))
          : each;
  return read(value) as T;
}
