import type { Pair } from './pair.ts';

/**
 * How often each player began a drill in role 1 in these rounds; in a trio that is whoever hit
 * first.
 *
 * @param drill id
 */
export function timesFirst(
  rounds: Iterable<{
    terms: { drill: string };
    tallies: readonly { pair: { players: readonly string[] }; turned?: number }[];
  }>,
  drill: string,
): Map<string, number> {
  const times = new Map<string, number>();
  for (const { terms, tallies } of rounds) {
    if (terms.drill !== drill) continue;
    for (const { pair, turned } of tallies) {
      // Those who turned in mid-round have both had it.
      const began = turned === undefined ? pair.players.slice(0, 1) : pair.players;
      for (const player of began) times.set(player, (times.get(player) ?? 0) + 1 / began.length);
    }
  }
  return times;
}

/**
 * The same pairs with whoever had role 1 less often first, and last the one of a trio who had it
 * most; as they stand where it was as often.
 */
export const evenRoles = (pairs: readonly Pair[], times: ReadonlyMap<string, number>): Pair[] =>
  pairs.map((pair) => ({
    ...pair,
    players: [...pair.players].sort((a, b) => (times.get(a) ?? 0) - (times.get(b) ?? 0)),
  }));
