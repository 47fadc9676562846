import type { Entry } from '../../../core/ledger/entry.ts';

/*
 * The numbers of a ledger counted anew from its raw entries, by plain loops, as a person would with
 * a pencil. Nothing of core's folds and figures is used: where the two differ, one of them is wrong.
 * It knows ledgers of one phone only, with as many windows as there were.
 */

type Terms = Extract<Entry, { kind: 'round-set' }>['terms'];

/** What one player did in one round. */
export interface Own {
  player: string;
  sets: number;
  touches: number;
  seconds: number;
  heard: boolean;
}

export interface RecountedPair {
  letter: string;
  players: string[];
  sets: number;
  /** Seconds in which the pair was watched at play. */
  seconds: number;
  heard: boolean;
  own: Own[];
  late: number;
}

export interface RecountedRound {
  id: string;
  /** From 1, among all rounds that were started. */
  number: number;
  terms: Terms;
  seconds: number;
  settled: boolean;
  left: boolean;
  struck: boolean;
  over: boolean;
  pairs: RecountedPair[];
}

export interface RecountedPractice {
  id: string;
  date: string;
  opened: string;
  closed: boolean;
  here: string[];
  there: Set<string>;
  /** All that were started, those that were struck out too. */
  started: RecountedRound[];
  /** Those that count. */
  rounds: RecountedRound[];
  tempos: Map<string, number>;
}

interface Clock {
  live: number;
  last: number;
  runs: boolean;
  length: number;
  stopped: boolean;
}

interface Raw {
  id: string;
  set: Extract<Entry, { kind: 'round-set' }>;
  startedAs: string;
  clock: Clock | undefined;
  settled: boolean;
  left: boolean;
  struck: boolean;
  present: Set<string>;
  said: Entry[];
}

const MOST_SECONDS = 600;

/** All practices of a ledger in the order in which they were held, as they stand at `now`. */
export function recount(all: readonly Entry[], now: number): RecountedPractice[] {
  const once = new Map(all.map((entry) => [entry.id, entry]));
  const entries = [...once.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  const ids = new Set(
    entries.flatMap((entry) => (typeof entry.practice === 'string' ? [entry.practice] : [])),
  );
  const practices: RecountedPractice[] = [];
  for (const id of ids) {
    const own = entries.filter((entry) => entry.practice === id);
    const practice = recountPractice(id, own, now);
    if (practice) practices.push(practice);
  }
  return practices.sort((a, b) => {
    if (a.date !== b.date) return a.date < b.date ? -1 : 1;
    return a.opened < b.opened ? -1 : 1;
  });
}

function liveAt(clock: Clock, at: number): number {
  return clock.runs ? clock.live + Math.max(0, at - clock.last) / 1000 : clock.live;
}

function moveTo(clock: Clock, at: number): void {
  clock.live = liveAt(clock, at);
  clock.last = Math.max(clock.last, at);
}

const isOver = (clock: Clock, at: number) => clock.stopped || liveAt(clock, at) >= clock.length;

function recountPractice(
  id: string,
  entries: readonly Entry[],
  now: number,
): RecountedPractice | undefined {
  let date: string | undefined;
  let opened = '';
  let closed = false;
  let struck = false;
  const here: string[] = [];
  const came = new Set<string>();
  const corrected = new Map<string, boolean>();
  const rounds: Raw[] = [];
  const tempos = new Map<string, number>();
  for (const entry of entries) {
    if (entry.kind === 'practice-opened') {
      if (date === undefined) {
        date = entry.date;
        opened = entry.id;
      }
    } else if (entry.kind === 'player-came') {
      came.add(entry.player);
      if (!here.includes(entry.player)) here.push(entry.player);
      for (const { clock, present } of rounds) {
        if (clock && !isOver(clock, entry.at)) present.add(entry.player);
      }
    } else if (entry.kind === 'player-left') {
      if (here.includes(entry.player)) here.splice(here.indexOf(entry.player), 1);
    } else if (entry.kind === 'presence-corrected') corrected.set(entry.player, entry.present);
    else if (entry.kind === 'practice-closed') closed = true;
    else if (entry.kind === 'practice-reopened') closed = false;
    else if (entry.kind === 'practice-struck') struck = true;
    else if (entry.kind === 'practice-restored') struck = false;
    else if (entry.kind === 'tempo-checked') tempos.set(entry.drill, entry.seconds);
    else if (entry.kind === 'round-set') {
      const known = rounds.find((round) => round.id === entry.round);
      if (!known) {
        rounds.push({
          id: entry.round,
          set: entry,
          startedAs: '',
          clock: undefined,
          settled: false,
          left: false,
          struck: false,
          present: new Set(),
          said: [],
        });
      } else if (!known.clock) known.set = entry;
    } else if ('round' in entry) {
      const round = rounds.find((each) => each.id === entry.round);
      if (round) hear(round, entry, here);
    }
  }
  if (date === undefined) return undefined;
  const started = rounds
    .filter(({ clock }) => clock)
    .sort((a, b) => (a.startedAs < b.startedAs ? -1 : 1))
    .map((round, at) => recountRound(round, at + 1, now));
  const there = new Set<string>();
  if (!struck) {
    for (const round of rounds) {
      if (!round.clock || round.struck) continue;
      for (const player of round.present) if (came.has(player)) there.add(player);
    }
    for (const round of started) {
      if (round.struck) continue;
      for (const { players } of round.pairs) for (const player of players) there.add(player);
    }
    for (const [player, present] of corrected) {
      if (present) there.add(player);
      else there.delete(player);
    }
  }
  return {
    id,
    date,
    opened,
    closed,
    here,
    there,
    started,
    rounds: struck ? [] : started.filter((round) => !round.struck),
    tempos,
  };
}

function hear(round: Raw, entry: Entry, here: readonly string[]): void {
  const { clock } = round;
  if (entry.kind === 'clock-started') {
    if (clock) return;
    round.startedAs = entry.id;
    round.clock = {
      live: 0,
      last: entry.at,
      runs: true,
      length: round.set.seconds,
      stopped: false,
    };
    for (const player of here) round.present.add(player);
    return;
  }
  if (entry.kind === 'round-settled') {
    round.settled = true;
    round.left = true;
  } else if (entry.kind === 'round-skipped') round.left = true;
  else if (entry.kind === 'round-struck') {
    round.struck = true;
    round.left = true;
  } else if (entry.kind === 'round-restored') round.struck = false;
  else round.said.push(entry);
  if (!clock || clock.stopped) return;
  if (entry.kind === 'clock-doubted') {
    if (entry.live === undefined) return;
    clock.live = entry.live;
    clock.last = entry.at;
    return;
  }
  if (!entry.kind.startsWith('clock-') || isOver(clock, entry.at)) return;
  moveTo(clock, entry.at);
  if (entry.kind === 'clock-paused') clock.runs = false;
  if (entry.kind === 'clock-resumed') clock.runs = true;
  if (entry.kind === 'clock-stopped') {
    clock.stopped = true;
    clock.runs = false;
  }
  if (entry.kind === 'clock-extended') {
    clock.length = Math.min(MOST_SECONDS, clock.length + entry.seconds);
  }
}

function recountRound(round: Raw, number: number, now: number): RecountedRound {
  const clock = round.clock!;
  const end = clock.stopped ? clock.live : clock.length;
  const seconds = round.left ? end : Math.min(end, liveAt(clock, now));
  const unwatched: { from: number; to: number }[] = [];
  for (const entry of round.said) {
    if (entry.kind !== 'stretch-watched') continue;
    const at = unwatched.findIndex(({ from, to }) => from === entry.from && to === entry.to);
    if (at >= 0) unwatched.splice(at, 1);
    if (!entry.watched) unwatched.push({ from: entry.from, to: entry.to });
  }
  const made = round.set.pairs.map((pair) => ({ pair, from: 0 }));
  const calls = new Set(round.set.called ?? []);
  for (const entry of round.said) {
    if (entry.kind !== 'pair-added') continue;
    const origin = made.findLast(({ pair }) => pair.players.includes(entry.players[0] ?? ''));
    if (origin && calls.has(origin.pair.letter)) calls.add(entry.pair);
    made.push({ pair: { letter: entry.pair, players: entry.players }, from: entry.second });
  }
  const pairs = made.map(({ pair, from }) => {
    let stop = end;
    for (const entry of round.said) {
      if (entry.kind === 'pair-stopped' && entry.pair === pair.letter) stop = entry.second ?? end;
    }
    const to = Math.max(from, Math.min(end, stop));
    return recountPair(round, pair, { from, to, seconds, unwatched }, calls.has(pair.letter));
  });
  return {
    id: round.id,
    number,
    terms: round.set.terms,
    seconds,
    settled: round.settled,
    left: round.left,
    struck: round.struck,
    over: isOver(clock, now),
    pairs,
  };
}

/** Seconds from one to another of which nobody was told to have looked away, in hundredths. */
function watchedSeconds(
  from: number,
  to: number,
  unwatched: readonly { from: number; to: number }[],
): number {
  // Cut where any stretch begins or ends: each piece is watched, or is not.
  const cuts = [from, to];
  for (const stretch of unwatched) {
    for (const cut of [stretch.from, stretch.to]) if (cut > from && cut < to) cuts.push(cut);
  }
  cuts.sort((a, b) => a - b);
  let watched = 0;
  for (let at = 0; at + 1 < cuts.length; at++) {
    const middle = ((cuts[at] ?? 0) + (cuts[at + 1] ?? 0)) / 2;
    const missed = unwatched.some((stretch) => stretch.from < middle && middle < stretch.to);
    if (!missed) watched += (cuts[at + 1] ?? 0) - (cuts[at] ?? 0);
  }
  return watched;
}

function recountPair(
  round: Raw,
  pair: { letter: string; players: string[] },
  part: {
    from: number;
    to: number;
    seconds: number;
    unwatched: readonly { from: number; to: number }[];
  },
  calls: boolean,
): RecountedPair {
  const { terms } = round.set;
  const each = terms.rule === 'on-target';
  // The names as they stand, and before them those that stood there earlier.
  const names = [pair.players];
  for (const entry of round.said) {
    if (entry.kind === 'pair-corrected' && entry.pair === pair.letter) names.unshift(entry.players);
  }
  const players = names[0] ?? [];
  const placeOf = (player: string | undefined): number => {
    if (!each) return 0;
    for (const list of names) {
      const place = list.indexOf(player ?? '');
      if (place >= 0) return place;
    }
    return -1;
  };

  const counts = players.map(() => 0);
  const marks = new Map<
    string,
    { place: number; second: number; late: boolean; takenBack: boolean; judged?: boolean }
  >();
  let told = false;
  const add = (place: number, by: number) => {
    if (place >= 0) counts[place] = Math.max(0, (counts[place] ?? 0) + by);
  };
  const isIn = (mark: { late: boolean; takenBack: boolean; judged?: boolean }) =>
    !mark.takenBack && (mark.judged === undefined ? !mark.late : mark.judged);
  for (const entry of round.said) {
    if (entry.kind === 'mark' && entry.pair === pair.letter) {
      const mark = {
        place: placeOf(entry.player),
        second: entry.second,
        late: entry.second > part.to,
        takenBack: false,
      };
      marks.set(entry.id, mark);
      if (isIn(mark)) add(mark.place, 1);
    } else if (entry.kind === 'mark-taken-back' || entry.kind === 'mark-judged') {
      const mark = marks.get(entry.mark);
      if (!mark) continue;
      const before = isIn(mark);
      if (entry.kind === 'mark-judged') mark.judged = entry.counts;
      else mark.takenBack = true;
      if (isIn(mark) !== before) add(mark.place, before ? -1 : 1);
    } else if (entry.kind === 'tally-corrected' && entry.pair === pair.letter) {
      add(placeOf(entry.player), entry.by);
      told = true;
    } else if (entry.kind === 'count-called' && entry.pair === pair.letter) {
      const place = placeOf(entry.player);
      if (place >= 0) counts[place] = entry.sets ?? 0;
      told = entry.sets !== undefined;
    }
  }
  const standing = [...marks.values()].filter(({ takenBack }) => !takenBack);
  const sets = each ? counts.reduce((sum, count) => sum + count, 0) : (counts[0] ?? 0);
  const missed =
    sets === 0 && part.to > part.from && watchedSeconds(part.from, part.to, part.unwatched) === 0;
  const heard = !(calls && !told && standing.length === 0) && !missed;

  const recorded = Math.min(part.to, part.seconds);
  const seconds = recorded > part.from ? watchedSeconds(part.from, recorded, part.unwatched) : 0;
  const times = standing
    .filter(isIn)
    .map(({ second }) => second)
    .sort((a, b) => a - b);
  const own = shareOut(round, players, { sets, counts, times, from: part.from, to: part.to });
  return {
    letter: pair.letter,
    players: [...players],
    sets,
    seconds,
    heard,
    own: own.map((share) => ({
      ...share,
      seconds: (seconds * 2) / players.length,
      heard,
    })),
    late: standing.filter(({ late }) => late).length,
  };
}

/** Who of a pair took part in how many sets, and struck how many balls in them. */
function shareOut(
  { set: { terms, turns, seconds }, said }: Raw,
  players: readonly string[],
  pair: { sets: number; counts: number[]; times: number[]; from: number; to: number },
): { player: string; sets: number; touches: number }[] {
  if (terms.rule === 'on-target') {
    return players.map((player, place) => {
      const count = pair.counts[place] ?? 0;
      return { player, sets: count, touches: count };
    });
  }
  // How many balls of one set each role strikes: the pattern begins anew until the set is full.
  const struck = [0, 0];
  for (let shot = 0; shot < terms.size; shot++) {
    const { role } = terms.shots[shot % terms.shots.length]!;
    struck[role] = (struck[role] ?? 0) + 1;
  }
  const shares = players.map((player) => ({ player, sets: 0, touches: 0 }));
  const give = (place: number, role: number, sets: number) => {
    const share = shares[place]!;
    share.sets += sets;
    share.touches += sets * (struck[role] ?? 0);
  };
  if (players.length === 3) {
    // After each set the one who hit first steps out, and the one who rested steps in.
    for (let at = 0; at < pair.sets; at++) {
      give(at % 3, 0, 1);
      give((at + 1) % 3, 1, 1);
    }
    return shares;
  }
  let turn = turns ? seconds / 2 : undefined;
  for (const entry of said) if (entry.kind === 'roles-turned') turn = entry.second;
  if (turn === undefined || turn <= pair.from || turn >= pair.to) turn = undefined;
  let before = pair.sets;
  if (turn !== undefined) {
    before =
      pair.times.length === pair.sets
        ? pair.times.filter((time) => time < (turn ?? 0)).length
        : (pair.sets * (turn - pair.from)) / (pair.to - pair.from);
  }
  give(0, 0, before);
  give(1, 1, before);
  give(0, 1, pair.sets - before);
  give(1, 0, pair.sets - before);
  for (const share of shares) share.sets = pair.sets;
  return shares;
}
