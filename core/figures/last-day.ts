import type { Summary } from '../ledger/summary.ts';

/** A player's last day of play, and what came before it. */
export interface LastDay {
  /** The day as one practice: two practices of one date, where the player played in both, are put together. */
  day: Summary;
  /** All practices of earlier dates. */
  earlier: Summary[];
}

/**
 * The last date on which a player played a round, undefined where there is none: being there
 * without playing leaves nothing to show.
 *
 * @param summaries in any order; practices of one date in the order of play
 */
export function lastDay(summaries: readonly Summary[], player: string): LastDay | undefined {
  const played = summaries.filter(({ rounds }) =>
    rounds.some(({ tallies }) => tallies.some(({ pair }) => pair.players.includes(player))),
  );
  const date = played
    .map((summary) => summary.date)
    .toSorted()
    .at(-1);
  const practices = played.filter((summary) => summary.date === date);
  const last = practices.at(-1);
  if (!last) return undefined;
  return {
    day: {
      ...last,
      attended: [...new Set(practices.flatMap(({ attended }) => attended))],
      rounds: practices.flatMap(({ rounds }) => rounds),
    },
    earlier: summaries.filter((summary) => summary.date < last.date),
  };
}
