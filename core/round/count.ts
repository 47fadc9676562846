import { countsByPlayer } from '../drill/counting-rules.ts';
import type { Terms } from '../drill/drill.ts';
import type { Pair } from './pair.ts';
import { counts, leastSeconds, type Mark, type Tally } from './tally.ts';

/** What can be said of the count of a round; an entry of the ledger says it in these words. */
export type Said =
  | { kind: 'mark'; id: string; pair: string; player?: string | undefined; second: number }
  | { kind: 'mark-taken-back'; mark: string }
  | { kind: 'mark-judged'; mark: string; counts: boolean }
  | {
      kind: 'tally-corrected';
      id: string;
      pair: string;
      player?: string | undefined;
      by: number;
      of?: string | undefined;
    }
  | {
      kind: 'count-called';
      id: string;
      pair: string;
      player?: string | undefined;
      sets?: number | undefined;
    }
  | { kind: 'count-chosen'; pair: string; of: string };

/** One pair of a round that is to be counted. */
export interface Counting {
  terms: Terms;
  /** Seconds of live clock from which and to which the pair plays: marks after the end are late. */
  from: number;
  end: number;
  pair: Pair;
  /** Whether the pair counts for itself: where it then says nothing, nothing is known. */
  calls: boolean;
  /** The place in the pair of a player who is in it, or stood there before the names were put right. */
  placeOf(player: string): number | undefined;
  /** The phone that said what has this id; '' where that is not known. */
  phoneOf(id: string): string;
}

/** What came of it. */
export interface Counted {
  /** Without what is said of the unfinished set. */
  tally: Tally;
  /** The marks of the phone whose count stands, in the order of the clock, those taken back too. */
  marks: Mark[];
  /** The phone whose count stands; undefined where nobody counted. */
  phone?: string;
}

/**
 * The count of one pair, of all that was said of the round in the order in which it was said. Each
 * word changes what stood on the screen before it, and no count falls below zero: after a minus at
 * zero, one plus is one.
 *
 * Two phones that counted the same pair saw the same sets, so their counts are never added up: the
 * one that the coach chose stands, or else the larger one, and the others are told beside it.
 */
export function countPair(asked: Counting, said: readonly Said[]): Counted {
  const counting = { ...asked, phoneOf: phonesOf(asked, said) };
  const { terms, pair, placeOf, phoneOf } = counting;
  const all = marksOf(counting, said);
  const marks = new Map(all.map((mark) => [mark.id, mark]));
  const places = countsByPlayer(terms.rule) ? pair.players.length : 1;
  /** By phone: the sets of each place in the pair; of the whole pair in place 0. */
  const sets = new Map<string, number[]>();
  const change = (phone: string, player: string | undefined, to: (sets: number) => number) => {
    const place = places === 1 ? 0 : player === undefined ? undefined : placeOf(player);
    const own = sets.get(phone) ?? Array<number>(places).fill(0);
    sets.set(phone, own);
    if (place !== undefined) own[place] = Math.max(0, to(own[place] ?? 0));
  };
  const add = (phone: string, player: string | undefined, by: number) =>
    change(phone, player, (sets) => sets + by);
  /** By phone: where its count comes from, as far as it was not tapped. */
  const origins = new Map<string, Tally['origin']>();
  /** By phone: whose count was said in one number, '' for the whole pair. */
  const told = new Map<string, Set<string>>();
  const tell = (phone: string, player: string | undefined, origin: Tally['origin']) => {
    const own = told.get(phone) ?? new Set();
    told.set(phone, own);
    const who = pair.players[player === undefined ? -1 : (placeOf(player) ?? -1)] ?? '';
    if (origin) own.add(who);
    else own.delete(who);
    origins.set(phone, own.size === 0 ? undefined : (origin ?? origins.get(phone)));
  };
  const known = new Map<string, { seen: boolean; takenBack: boolean; judged?: boolean }>();
  const learn = (id: string, news: { seen?: true; takenBack?: true; judged?: boolean }) => {
    const mark = marks.get(id);
    if (!mark) return;
    const before = known.get(id) ?? { seen: false, takenBack: false };
    const after = { ...before, ...news };
    known.set(id, after);
    const isIn = (state: typeof before) => state.seen && counts({ ...state, late: mark.late });
    if (isIn(after) !== isIn(before)) add(phoneOf(id), mark.player, isIn(after) ? 1 : -1);
  };
  let chosen: string | undefined;
  for (const each of said) {
    if (each.kind === 'count-chosen') {
      if (each.pair === pair.letter) chosen = phoneOf('', each.of);
    } else if (each.kind === 'mark') {
      const mark = marks.get(each.id);
      // Whoever tapped has counted, though a late mark is no set yet.
      if (mark) add(phoneOf(each.id), mark.player, 0);
      learn(each.id, { seen: true });
    } else if (each.kind === 'mark-taken-back') learn(each.mark, { takenBack: true });
    else if (each.kind === 'mark-judged') learn(each.mark, { judged: each.counts });
    else if (each.kind === 'tally-corrected') {
      if (each.pair !== pair.letter) continue;
      const phone = phoneOf(each.id, each.of);
      add(phone, each.player, each.by);
      tell(phone, each.player, 'corrected');
    } else if (each.pair === pair.letter) {
      // What was called stands in the place of all that was counted before.
      const phone = phoneOf(each.id);
      const called = each.sets;
      change(phone, each.player, () => called ?? 0);
      tell(phone, each.player, called === undefined ? undefined : 'called');
    }
  }
  const isChosen = (phone: string) => Number(phone === chosen);
  const [stands, ...others] = [...sets].sort(
    ([a, own], [b, other]) =>
      isChosen(b) - isChosen(a) || sum(other) - sum(own) || (a < b ? -1 : 1),
  );
  const phone = stands?.[0];
  const own = all.filter((mark) => phoneOf(mark.id) === phone);
  const origin = phone === undefined ? undefined : origins.get(phone);
  const unheard = asked.calls ? notHeard(counting, own, told.get(phone ?? '')) : [];
  return {
    tally: {
      pair,
      ...countOf(counting, stands?.[1] ?? []),
      ...(unheard.length > 0 && { unheard }),
      ...(origin && { origin }),
      ...summed(own),
      ...(chosen !== undefined && chosen === phone && { chosen: true }),
      ...(others.some(([, count]) => sum(count) > 0) && {
        also: others.map(([phone, count]) => ({ phone, ...countOf(counting, count) })),
      }),
    },
    marks: own,
    ...(phone !== undefined && { phone }),
  };
}

/**
 * Who said what of a pair's count. What does not name its phone was said by the only one that is
 * named, if there is only one: an earlier version named none.
 */
function phonesOf(
  { pair, phoneOf }: Counting,
  said: readonly Said[],
): (id: string, of?: string) => string {
  const named = new Set(
    said.flatMap((each) =>
      'pair' in each && each.kind !== 'count-chosen' && each.pair === pair.letter
        ? [('of' in each && each.of) || phoneOf(each.id)]
        : [],
    ),
  );
  named.delete('');
  const [only = ''] = named.size === 1 ? named : [];
  return (id, of) => (of ?? phoneOf(id)) || only;
}

/** Of whom nothing is known, in a pair that counts for itself: nothing was tapped, called or put right. */
function notHeard(
  { terms, pair }: Counting,
  marks: readonly Mark[],
  told: ReadonlySet<string> | undefined,
): string[] {
  const tapped = marks.filter((mark) => !mark.takenBack);
  if (!countsByPlayer(terms.rule)) {
    return tapped.length > 0 || (told && told.size > 0) ? [] : [...pair.players];
  }
  return pair.players.filter(
    (player) => !told?.has(player) && !tapped.some((mark) => mark.player === player),
  );
}

/** A phone's count as a tally has it. */
const countOf = (
  { terms, pair }: Counting,
  sets: readonly number[],
): Pick<Tally, 'sets' | 'byPlayer'> => ({
  sets: sum(sets),
  ...(countsByPlayer(terms.rule) && {
    byPlayer: Object.fromEntries(pair.players.map((player, place) => [player, sets[place] ?? 0])),
  }),
});

/** What a tally says of its marks. */
function summed(marks: readonly Mark[]): Pick<Tally, 'times' | 'late' | 'doubtful' | 'open'> {
  const standing = marks.filter((mark) => !mark.takenBack);
  return {
    times: marks.filter(counts).map((mark) => mark.second),
    late: standing.filter((mark) => mark.late).length,
    doubtful: standing.filter((mark) => mark.doubtful).length,
    open: standing.filter((mark) => (mark.late || mark.doubtful) && mark.judged === undefined)
      .length,
  };
}

/** The pair's marks in the order of the clock, with what is to be said of each. */
function marksOf(
  { terms, from, end, pair, placeOf, phoneOf }: Counting,
  said: readonly Said[],
): Mark[] {
  const least = leastSeconds(terms);
  const takenBack = new Set<string>();
  const judged = new Map<string, boolean>();
  const own = [];
  for (const each of said) {
    if (each.kind === 'mark-taken-back') takenBack.add(each.mark);
    else if (each.kind === 'mark-judged') judged.set(each.mark, each.counts);
    else if (each.kind === 'mark' && each.pair === pair.letter) own.push(each);
  }
  /** By phone and player: the second of the mark before. */
  const before = new Map<string, number>();
  return own
    .sort((a, b) => a.second - b.second || (a.id < b.id ? -1 : 1))
    .map(({ id, player: said, second }) => {
      const player = said === undefined ? undefined : (pair.players[placeOf(said) ?? -1] ?? said);
      const by = `${phoneOf(id)} ${player}`;
      const verdict = judged.get(id);
      const since = second - (before.get(by) ?? from);
      // A slip was no set: the next one is measured from the set before it.
      if (!takenBack.has(id) && verdict !== false) before.set(by, second);
      return {
        id,
        ...(player !== undefined && { player }),
        second,
        late: second > end,
        doubtful: since < least,
        takenBack: takenBack.has(id),
        ...(verdict !== undefined && { judged: verdict }),
      };
    });
}

const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0);
