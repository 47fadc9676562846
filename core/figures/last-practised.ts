import { countsByPlayer } from '../drill/counting-rules.ts';
import type { Family, Stroke, Terms } from '../drill/drill.ts';
import type { PlayedRound, Summary } from '../ledger/summary.ts';
import { SHORTEST_SECONDS } from '../round/clock.ts';

/** Dates, YYYY-MM-DD; one that is missing never was. */
export interface LastPractised {
  /** Of the first round at all. */
  first?: string;
  /** Of the last round of each family's own drills. */
  families: Partial<Record<Family, string>>;
  /** Of the last round in which each stroke was struck. */
  strokes: Partial<Record<Stroke, string>>;
}

/**
 * When the squad, and every player of it, last practised each family and each stroke, as of a day.
 *
 * A family is practised by a round of its own drills: the one volley in a serve drill is no practice
 * of volleys. A stroke is practised by those whose role strikes it, whether or not a set was
 * completed: in a pair who lobs does not strike the overhead, in a trio everyone comes to both.
 *
 * @param summaries in any order; what is later than `today` is passed over
 */
export function lastPractised(
  summaries: readonly Summary[],
  today: string,
): { squad: LastPractised; players: Map<string, LastPractised> } {
  const squad: LastPractised = { families: {}, strokes: {} };
  const players = new Map<string, LastPractised>();
  for (const { date, round } of roundsUntil(summaries, today)) {
    for (const { pair, turned } of round.tallies) {
      pair.players.forEach((player, place) => {
        const own = players.get(player) ?? { families: {}, strokes: {} };
        players.set(player, own);
        for (const last of [squad, own])
          note(last, date, round.terms, strokesAt(round.terms, pair.players, place, turned));
      });
    }
  }
  return { squad, players };
}

function note(
  last: LastPractised,
  date: string,
  { family }: Terms,
  struck: readonly Stroke[],
): void {
  if (last.first === undefined || date < last.first) last.first = date;
  if (!(last.families[family]! >= date)) last.families[family] = date;
  for (const stroke of struck) {
    if (!(last.strokes[stroke]! >= date)) last.strokes[stroke] = date;
  }
}

/**
 * The rounds until a day that were really played. A clock that was started and stopped again before
 * the shortest round could have been over, without a set, was a false start.
 */
export function roundsUntil(
  summaries: readonly Summary[],
  today: string,
): { practice: string; date: string; opened: string; round: PlayedRound }[] {
  return summaries
    .filter(({ date }) => date <= today)
    .flatMap(({ practice, date, opened, rounds }) =>
      rounds
        .filter(
          ({ seconds, tallies }) => seconds >= SHORTEST_SECONDS || tallies.some((t) => t.sets > 0),
        )
        .map((round) => ({ practice, date, opened, round })),
    );
}

/**
 * What the player at a place (from 0) of a pair or trio strikes: the role's own strokes in a pair,
 * all of them in a trio, which turns, and in a pair that turned its roles in mid-round; balls on
 * target are everyone's.
 *
 * @param turned the second at which a pair turned, where it did
 */
export function strokesAt(
  { rule, shots }: Terms,
  players: readonly string[],
  place: number,
  turned?: number,
): Stroke[] {
  const everyones = countsByPlayer(rule) || players.length > 2 || turned !== undefined;
  return [
    ...new Set(shots.filter(({ role }) => everyones || role === place).map(({ stroke }) => stroke)),
  ];
}
