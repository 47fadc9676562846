import { countsByPlayer } from '../drill/counting-rules.ts';
import type { Stroke, Terms } from '../drill/drill.ts';
import type { Tally } from '../round/tally.ts';

/** Touches by stroke. */
export type Touches = Partial<Record<Stroke, number>>;

/** What one player did in a round, as far as the marks prove it. */
export interface Share {
  player: string;
  /** Sets that the player took part in; `on-target`: struck. */
  sets: number;
  /** Touches in completed sets: nothing of a set that was not finished. */
  touches: Touches;
  /** Part of the round's live clock that the player was in for: 1 in a pair, 2/3 in a trio. */
  time: number;
}

/**
 * Shares a tally over its players, exactly: `in-a-row` and `in-total` of size n are n shots a set,
 * struck in turn, where the side that begins has the extra one of an odd n; a `sequence` is each
 * role's own shots; `on-target` is one shot for the player who struck it.
 *
 * A trio turns after each set: in set j (from 0) its players j and j + 1 hit, the third rests, and
 * the one who hit first steps out. So every player rests in one set of three.
 *
 * A pair that turned its roles in mid-round has each role's shots of the sets before and after the
 * turn: by the marks' times where there is one for each set, else shared by the clock, which need
 * not give whole numbers.
 *
 * @param seconds live clock of the round
 */
export function shares(terms: Terms, tally: Shared, seconds: number): Share[] {
  const { players } = tally.pair;
  const time = 2 / players.length;
  if (countsByPlayer(terms.rule)) {
    const stroke = terms.shots[0]?.stroke;
    return players.map((player) => {
      const sets = tally.byPlayer?.[player] ?? 0;
      return { player, sets, touches: stroke && sets > 0 ? { [stroke]: sets } : {}, time };
    });
  }

  const inSet = touchesByRole(terms);
  const before = setsBeforeTurn(tally, seconds);
  return players.map((player, place) => {
    const touches: Touches = {};
    let sets = 0;
    for (const role of [0, 1] as const) {
      const played =
        before === undefined
          ? setsInRole(tally.sets, players.length, place, role)
          : place === role
            ? before
            : tally.sets - before;
      sets += played;
      if (played > 0) addTouches(touches, inSet[role], played);
    }
    return { player, sets, touches, time };
  });
}

/** What of a tally says who struck what. */
export type Shared = Pick<Tally, 'pair' | 'sets' | 'byPlayer'> &
  Partial<Pick<Tally, 'times' | 'span' | 'turned'>>;

/** The sets that a pair completed before it turned its roles; undefined where it did not turn. */
function setsBeforeTurn({ sets, times = [], span, turned }: Shared, seconds: number) {
  if (turned === undefined) return undefined;
  if (times.length === sets) return times.filter((time) => time < turned).length;
  return sets * turnedAfter({ span, turned }, seconds);
}

/** The part of the pair's clock, 0 to 1, that had passed as it turned its roles. */
export function turnedAfter(
  { span, turned = 0 }: { span?: Tally['span'] | undefined; turned?: number | undefined },
  seconds: number,
): number {
  const { from, to } = span ?? { from: 0, to: seconds };
  return to > from ? Math.min(1, Math.max(0, (turned - from) / (to - from))) : 0;
}

/** Who of a trio rests while set number `set` (from 0) is played; nobody in a pair. */
export const restingIn = (players: readonly string[], set: number): string | undefined =>
  players.length === 3 ? players[(set + 2) % 3] : undefined;

/** How many of `sets` the player at `place` played in a role: all in a pair, in turn in a trio. */
function setsInRole(sets: number, players: number, place: number, role: 0 | 1): number {
  if (players === 2) return place === role ? sets : 0;
  const first = (place - role + players) % players; // the first set in which the turn comes round
  return Math.floor((sets - first + players - 1) / players);
}

/** What each role strikes in one set; kept, since a round's pairs share their terms, which never change. */
const inOneSet = new WeakMap<Terms, readonly [Touches, Touches]>();

function touchesByRole(terms: Terms): readonly [Touches, Touches] {
  const known = inOneSet.get(terms) ?? ([touchesInSet(terms, 0), touchesInSet(terms, 1)] as const);
  inOneSet.set(terms, known);
  return known;
}

/** The shots that a role strikes in one set, by stroke. */
export function touchesInSet(terms: Terms, role: 0 | 1): Touches {
  const touches: Touches = {};
  for (let shot = 0; shot < terms.size; shot++) {
    const struck = terms.shots[shot % terms.shots.length];
    if (struck?.role === role) touches[struck.stroke] = (touches[struck.stroke] ?? 0) + 1;
  }
  return touches;
}

/** All touches, whatever the stroke. */
export function sumTouches(touches: Touches): number {
  let sum = 0;
  for (const stroke in touches) sum += touches[stroke as Stroke]!;
  return sum;
}

/** Adds one count of touches to another, in place, so many times. */
export function addTouches(to: Touches, more: Touches, times = 1): void {
  for (const stroke in more) {
    to[stroke as Stroke] = (to[stroke as Stroke] ?? 0) + more[stroke as Stroke]! * times;
  }
}
