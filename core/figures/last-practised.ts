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
  for (const summary of summaries) {
    const { date } = summary;
    if (date > today) continue;
    const done = practisedIn(summary);
    if (done.players.size > 0) note(squad, date, done.squad);
    for (const [player, theirs] of done.players) {
      const own = players.get(player) ?? { families: {}, strokes: {} };
      players.set(player, own);
      note(own, date, theirs);
    }
  }
  return { squad, players };
}

interface Practised {
  families: Set<Family>;
  strokes: Set<Stroke>;
}

/** Kept with each practice: many screens ask, and of ten seasons it takes a phone a while. */
const kept = new WeakMap<Summary, { squad: Practised; players: Map<string, Practised> }>();

/** What the squad, and every player, practised in a practice. */
export function practisedIn(summary: Summary): {
  squad: Practised;
  players: Map<string, Practised>;
} {
  const known = kept.get(summary);
  if (known) return known;
  const nothing = (): Practised => ({ families: new Set(), strokes: new Set() });
  const squad = nothing();
  const players = new Map<string, Practised>();
  for (const round of summary.rounds.filter(wasPlayed)) {
    for (const { pair, turned } of round.tallies) {
      pair.players.forEach((player, place) => {
        const own = players.get(player) ?? nothing();
        players.set(player, own);
        const strokes = strokesAt(round.terms, pair.players, place, turned);
        for (const practised of [squad, own]) {
          practised.families.add(round.terms.family);
          for (const stroke of strokes) practised.strokes.add(stroke);
        }
      });
    }
  }
  const practised = { squad, players };
  kept.set(summary, practised);
  return practised;
}

function note(last: LastPractised, date: string, { families, strokes }: Practised): void {
  if (last.first === undefined || date < last.first) last.first = date;
  for (const family of families) {
    if (!(last.families[family]! >= date)) last.families[family] = date;
  }
  for (const stroke of strokes) {
    if (!(last.strokes[stroke]! >= date)) last.strokes[stroke] = date;
  }
}

/** Stopped before the shortest round could have been over, and without a set, a clock was a false start. */
const wasPlayed = ({ seconds, tallies }: PlayedRound): boolean =>
  seconds >= SHORTEST_SECONDS || tallies.some(({ sets }) => sets > 0);

/** The rounds until a day that were really played. */
export function roundsUntil(
  summaries: readonly Summary[],
  today: string,
): { practice: string; date: string; opened: string; round: PlayedRound }[] {
  return summaries
    .filter(({ date }) => date <= today)
    .flatMap(({ practice, date, opened, rounds }) =>
      rounds.filter(wasPlayed).map((round) => ({ practice, date, opened, round })),
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
  terms: Terms,
  players: readonly string[],
  place: number,
  turned?: number,
): readonly Stroke[] {
  const { all, byRole } = strokesIn(terms);
  const everyones = countsByPlayer(terms.rule) || players.length > 2 || turned !== undefined;
  return everyones ? all : (byRole[place] ?? []);
}

interface Struck {
  all: readonly Stroke[];
  byRole: readonly (readonly Stroke[])[];
}

/** Kept, since a round's pairs share their terms, which never change. */
const struck = new WeakMap<Terms, Struck>();

function strokesIn(terms: Terms): Struck {
  const known = struck.get(terms);
  if (known) return known;
  const of = (shots: Terms['shots']) => [...new Set(shots.map(({ stroke }) => stroke))];
  const made = {
    all: of(terms.shots),
    byRole: [0, 1].map((own) => of(terms.shots.filter(({ role }) => role === own))),
  };
  struck.set(terms, made);
  return made;
}
