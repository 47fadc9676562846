import type { OpenRound } from '../../core/ledger/practice.ts';
import { isHeardOf, type Tally } from '../../core/round/tally.ts';
import { squadSettings } from '../ledger.ts';
import { type Side, sidesOf } from './sides.ts';

/** Whoever calls a number at the horn: a pair, or on target each player of it. */
export interface Caller {
  side: Side;
  players: readonly string[];
  /** The number as it stands; undefined while nothing was heard. */
  sets: number | undefined;
}

/** Everyone who counts for themselves in a round, court by court. */
export const callersOf = (round: OpenRound): Caller[] =>
  byCourt(round.tallies)
    .filter(({ pair, span }) => round.called.includes(pair.letter) && (span?.to ?? 1) > 0)
    .flatMap((tally) =>
      sidesOf(round, tally).map((side) => {
        const { player } = side;
        const heard = player === undefined ? !tally.unheard : isHeardOf(tally, player);
        const sets = player === undefined ? tally.sets : (tally.byPlayer?.[player] ?? 0);
        return {
          side,
          players: player === undefined ? tally.pair.players : [player],
          sets: heard ? sets : undefined,
        };
      }),
    );

/** Pairs are spread over all courts before a court takes a second one: here court by court. */
function byCourt(tallies: readonly Tally[]): Tally[] {
  const courts = squadSettings.value.courts ?? tallies.length;
  return tallies
    .map((tally, seat) => ({ tally, court: seat % courts, lane: Math.floor(seat / courts) }))
    .sort((a, b) => a.court - b.court || a.lane - b.lane)
    .map(({ tally }) => tally);
}
