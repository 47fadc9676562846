import type { Terms } from '../drill/drill.ts';
import type { Plan, StepPlayed } from '../round/block.ts';
import {
  afterEvent,
  type Clock,
  endSecond,
  goOnFrom,
  isOver,
  recordedSeconds,
  startClock,
} from '../round/clock.ts';
import { countPair, type Said } from '../round/count.ts';
import type { Look } from '../round/look.ts';
import type { Pair } from '../round/pair.ts';
import type { Mark, Tally } from '../round/tally.ts';
import type { Pace } from '../round/tempo.ts';
import { countedOnce } from './counted-once.ts';
import type { EntryOf, PracticeEntry } from './entry.ts';
import { lookedAtOnce } from './looked-at-once.ts';
import { phoneOf } from './stamp.ts';

export interface Round {
  id: string;
  /** Its place among the rounds of the practice, from 0. */
  ordinal: number;
  terms: Terms;
  /** Planned length in seconds. */
  seconds: number;
  clock?: Clock;
  settled: boolean;
  /** Seconds by which the phone's clock jumped in mid-round: its length wants a look. */
  jumped?: number;
  tallies: Tally[];
  /** Pairs that sit this round out because no court is free. */
  waiting?: Pair[];
  /** Stretches of the clock, rising and apart, in which nobody watched. */
  unwatched?: Stretch[];
  /** What is looked at in it; left out where nothing is. */
  focus?: string;
  /** Looks at its players, by whichever phone; left out where there are none. */
  looks?: Look[];
}

/** Seconds of a round's live clock. */
export interface Stretch {
  from: number;
  to: number;
}

/** A round with every mark that was tapped in it. */
export interface OpenRound extends Round {
  practice: string;
  /** What entries call it: the round, and the `round-set` that its pairs come from. */
  said: { round: string; set: string };
  /** The step of the block that it plays, where that was said. */
  step?: string;
  /** Which round of the practice the phone that set it took it for, from 0. */
  slot: number;
  /** Settled, or settle was passed over: the practice has gone on. */
  left: boolean;
  /** The coach struck it out: no figure knows of it. */
  struck: boolean;
  /** Letters of the pairs that count for themselves and call their number at the horn. */
  called: string[];
  /** Whether the roles are to turn at half the clock. */
  turns: boolean;
  /** How many spot checks it asks for. */
  checks: number;
  /** Whether it was said when they turned, or that they did not. */
  turnSaid: boolean;
  marks: Record<string, Mark[]>;
  /** By pair the phone whose count stands; none where nobody counted. */
  phones: Record<string, string | undefined>;
  /**
   * Counts of players who were counted in another round at the same time, by another phone that
   * had other pairs: shown, and in no figure. Left out where there are none.
   */
  aside?: Tally[];
}

/** How hard a practice was for a player, 0 (rest) to 10, and how many minutes it took. */
export interface Effort {
  effort?: number;
  minutes?: number;
}

export interface Practice {
  id: string;
  /** YYYY-MM-DD, by the clock of the phone that opened it. */
  date: string;
  /** The stamp of its opening: practices of one date are in this order. */
  opened: string;
  /** Who is here now, in the order of arrival. */
  here: string[];
  /**
   * Who was present: played a round, or was here while a clock ran; or as the coach put it right.
   */
  attended: string[];
  plan?: Plan;
  /** What was measured in it, by drill; left out where nothing was. */
  paces?: Record<string, Pace>;
  /** How hard and how long it was, by player; left out where nobody said. */
  efforts?: Record<string, Effort>;
  rounds: OpenRound[];
  closed: boolean;
  /** The coach struck it out: no figure knows of it. */
  struck: boolean;
}

/** The rounds of a practice that count: started, and not struck out. */
export const roundsThatCount = ({ rounds, struck }: Practice): OpenRound[] =>
  struck ? [] : rounds.filter((round) => round.clock !== undefined && !round.struck);

/** What was played of the block: a round that was struck out is still to be played. */
export const stepsPlayed = (practice: Practice): StepPlayed[] =>
  roundsThatCount(practice).map(({ step, terms }) => ({
    ...(step !== undefined && { step }),
    drill: terms.drill,
  }));

/** What a practice still asks of the coach: rounds that were played and not settled, and marks to decide. */
export function stillOpen(practice: Practice): { rounds: OpenRound[]; marks: number } {
  const played = roundsThatCount(practice);
  return {
    rounds: played.filter((round) => !round.settled),
    marks: played.flatMap(({ tallies }) => tallies).reduce((sum, { open }) => sum + open, 0),
  };
}

/** A round as it was set, with what was said of it against those pairs. */
interface Draft {
  set: EntryOf<'round-set'>;
  /** The stamp of its start. */
  started?: string;
  clock?: Clock;
  settled: boolean;
  left: boolean;
  struck: boolean;
  jumped?: number;
  said: Said[];
  /** Pairs that came together in mid-round, and the second at which they did. */
  added: { pair: Pair; second: number }[];
  /** The second at which a pair stopped, by letter. */
  stopped: Map<string, number>;
  /** What was said of the turn of roles, where anything was: the second, or that there was none. */
  turned?: { second: number | undefined };
  unwatched: Stretch[];
  /** The players of a pair as they stood before their names were put right, by letter. */
  pairs: Map<string, string[][]>;
  showing: Map<string, number>;
  best: Map<string, number>;
  /** The last thing that each phone said of each look. */
  looks: Map<string, Look>;
  /** Who was here while its clock ran. */
  present: Set<string>;
}

/**
 * A practice from its entries, which must be sorted by id and belong to it (see join.ts).
 * Undefined where none of them opened it.
 */
export function foldPractice(entries: Iterable<PracticeEntry>): Practice | undefined {
  let opened: EntryOf<'practice-opened'> | undefined;
  const came = new Set<string>();
  const here = new Set<string>();
  const corrected = new Map<string, boolean>();
  const rounds = new Map<string, Draft[]>();
  const sets = new Map<string, EntryOf<'round-set'>>();
  let plan: Plan | undefined;
  let paces: Record<string, Pace> | undefined;
  let efforts: Record<string, Effort> | undefined;
  let closed = false;
  let struck = false;

  for (const entry of entries) {
    switch (entry.kind) {
      case 'practice-opened':
        opened ??= entry;
        break;
      case 'player-came':
        here.add(entry.player);
        came.add(entry.player);
        for (const { clock, present } of [...rounds.values()].flat()) {
          if (clock && !isOver(clock, entry.at)) present.add(entry.player);
        }
        break;
      case 'player-left':
        here.delete(entry.player);
        break;
      case 'presence-corrected':
        corrected.set(entry.player, entry.present);
        break;
      case 'block-planned':
        plan = entry.plan;
        break;
      case 'tempo-checked':
        paces = { ...paces, [entry.drill]: { ...paces?.[entry.drill], tempo: entry.seconds } };
        break;
      case 'refeed-checked':
        paces = { ...paces, [entry.drill]: { ...paces?.[entry.drill], refeed: entry.seconds } };
        break;
      case 'effort-told': {
        const { player, effort, minutes } = entry;
        const told = {
          ...(effort !== undefined && { effort }),
          ...(minutes !== undefined && { minutes }),
        };
        efforts = { ...efforts, [player]: told };
        break;
      }
      case 'practice-closed':
      case 'practice-reopened':
        closed = entry.kind === 'practice-closed';
        break;
      case 'practice-struck':
      case 'practice-restored':
        struck = entry.kind === 'practice-struck';
        break;
      case 'round-set': {
        sets.set(entry.id, entry);
        const [first] = rounds.get(entry.round) ?? [];
        if (!first) rounds.set(entry.round, [draft(entry)]);
        // Once the clock has started the pairs stand: marks are counted against them.
        else if (!first.clock) first.set = entry;
        break;
      }
      default: {
        const own = rounds.get(entry.round);
        if (own) play(saidOf(own, entry, sets), entry, here);
      }
    }
  }
  if (!opened) return undefined;
  const { practice: id, date } = opened;
  const finished = lookedAtOnce(
    countedOnce(
      [...rounds.values()]
        .flatMap((drafts) => drafts.map((each, version) => ({ each, version })))
        .sort((a, b) => (startOf(a.each) < startOf(b.each) ? -1 : 1))
        .map(({ each, version }, ordinal) => finish(each, version, ordinal)),
    ),
  );
  const played = { id, date, opened: opened.id, closed, struck, here: [...here], rounds: finished };
  const present = new Set([...came, ...corrected.keys()]);
  const drafts = [...rounds.values()].flat().filter((each) => each.clock && !each.struck);
  const ran = new Set(drafts.flatMap((each) => [...each.present]));
  for (const { tallies, clock, struck } of finished) {
    if (!clock || struck) continue;
    for (const player of tallies.flatMap(({ pair }) => pair.players)) {
      ran.add(player);
      present.add(player);
    }
  }
  return {
    ...played,
    attended: [...present].filter((player) => corrected.get(player) ?? ran.has(player)),
    ...(plan && { plan }),
    ...(paces && { paces }),
    ...(efforts && { efforts }),
  };
}

/** Rounds are in the order in which they were started; those that were not come last. */
const startOf = ({ started, set }: Draft): string => started ?? `~${set.id}`;

const draft = (set: EntryOf<'round-set'>): Draft => ({
  set,
  settled: false,
  left: false,
  struck: false,
  said: [],
  added: [],
  stopped: new Map(),
  unwatched: [],
  pairs: new Map(),
  showing: new Map(),
  best: new Map(),
  looks: new Map(),
  present: new Set(),
});

/**
 * The round that an entry is said of: where two phones started it with pairs of their own, the one
 * with the pairs that its writer saw.
 */
function saidOf(
  drafts: Draft[],
  { round, set: stamp }: { round: string; set?: string | undefined },
  sets: ReadonlyMap<string, EntryOf<'round-set'>>,
): Draft {
  const [first] = drafts as [Draft];
  const set = stamp === undefined ? undefined : sets.get(stamp);
  if (!set || set.round !== round) return first;
  // Two phones that set one round alike have set the same one.
  const own =
    drafts.find((each) => each.set.id === set.id) ?? drafts.find((each) => isAlike(each.set, set));
  if (own) return own;
  if (!first.clock) {
    first.set = set;
    return first;
  }
  const another = draft(set);
  drafts.push(another);
  return another;
}

/** Whether two phones set a round for the same pairs, to play the same for as long. */
const isAlike = (one: EntryOf<'round-set'>, other: EntryOf<'round-set'>): boolean =>
  JSON.stringify([one.terms, one.seconds, one.pairs, one.waiting]) ===
  JSON.stringify([other.terms, other.seconds, other.pairs, other.waiting]);

type RoundEntry = Exclude<
  PracticeEntry,
  {
    kind:
      | 'practice-opened'
      | 'player-came'
      | 'player-left'
      | 'presence-corrected'
      | 'effort-told'
      | 'block-planned'
      | 'tempo-checked'
      | 'refeed-checked'
      | 'practice-closed'
      | 'practice-reopened'
      | 'practice-struck'
      | 'practice-restored'
      | 'round-set';
  }
>;

function play(round: Draft, entry: RoundEntry, here: ReadonlySet<string>): void {
  const { clock } = round;
  switch (entry.kind) {
    case 'clock-started':
      if (clock) break;
      round.started = entry.id;
      round.clock = startClock(entry.at, round.set.seconds);
      for (const player of here) round.present.add(player);
      break;
    case 'clock-paused':
      if (clock) round.clock = afterEvent(clock, 'pause', entry.at);
      break;
    case 'clock-resumed':
      if (clock) round.clock = afterEvent(clock, 'resume', entry.at);
      break;
    case 'clock-extended':
      if (clock) round.clock = afterEvent(clock, { extend: entry.seconds }, entry.at);
      break;
    case 'clock-stopped':
      if (clock) round.clock = afterEvent(clock, 'stop', entry.at);
      break;
    case 'clock-doubted':
      round.jumped = entry.seconds;
      if (clock && entry.live !== undefined) {
        round.clock = goOnFrom(clock, entry.live, entry.at);
      }
      break;
    case 'mark':
    case 'mark-taken-back':
    case 'mark-judged':
    case 'tally-corrected':
    case 'count-called':
    case 'count-chosen':
      round.said.push(entry);
      break;
    case 'roles-turned':
      round.turned = { second: entry.second };
      break;
    case 'pair-stopped':
      if (entry.second === undefined) round.stopped.delete(entry.pair);
      else round.stopped.set(entry.pair, entry.second);
      break;
    case 'pair-added':
      round.added.push({
        pair: { letter: entry.pair, players: entry.players },
        second: entry.second,
      });
      break;
    case 'stretch-watched': {
      const { from, to, watched } = entry;
      const others = round.unwatched.filter((each) => each.from !== from || each.to !== to);
      round.unwatched = watched ? others : [...others, { from, to }];
      break;
    }
    case 'pair-corrected': {
      const before = round.pairs.get(entry.pair) ?? [];
      round.pairs.set(entry.pair, [entry.players, ...before]);
      break;
    }
    case 'set-showing':
      round.showing.set(entry.pair, entry.shots);
      break;
    case 'best-run':
      round.best.set(entry.pair, entry.shots);
      break;
    case 'shots-unseen':
      round[entry.of].delete(entry.pair);
      break;
    case 'look': {
      const { id, player, focus, second, saw } = entry;
      const by = phoneOf(id);
      round.looks.set(`${by} ${player} ${second}`, { player, focus, second, saw, by });
      break;
    }
    case 'round-skipped':
      round.left = true;
      break;
    case 'round-settled':
      round.left = true;
      round.settled = true;
      break;
    case 'round-struck':
      round.left = true;
      round.struck = true;
      break;
    case 'round-restored':
      round.struck = false;
      break;
  }
}

function finish(round: Draft, version: number, ordinal: number): OpenRound {
  const { set, clock } = round;
  const end = clock ? endSecond(clock) : set.seconds;
  const unwatched = joinedStretches(round.unwatched, end);
  const marks: OpenRound['marks'] = {};
  const phones: OpenRound['phones'] = {};
  const started = set.pairs.map((pair) => ({ pair, second: 0 }));
  const called = callingIn(set, round.added);
  const tallies = [...started, ...round.added].map(({ pair: { letter, players }, second }) => {
    const stood = [...(round.pairs.get(letter) ?? []), players];
    const to = Math.max(second, Math.min(end, round.stopped.get(letter) ?? end));
    const counted = countPair(
      {
        terms: set.terms,
        from: second,
        end: to,
        pair: { letter, players: stood[0] ?? players },
        calls: called.includes(letter),
        placeOf: (player) => stood.map((each) => each.indexOf(player)).find((place) => place >= 0),
        phoneOf,
      },
      round.said,
    );
    marks[letter] = counted.marks;
    phones[letter] = counted.phone;
    const showing = round.showing.get(letter);
    const best = round.best.get(letter);
    const turned = turnOf(round, counted.tally.pair, second, to);
    const missed = unwatched.some((each) => each.from <= second && each.to >= to);
    return {
      ...counted.tally,
      ...(missed && counted.tally.sets === 0 && { unheard: counted.tally.pair.players }),
      ...((second > 0 || to < end) && { span: { from: second, to } }),
      ...(turned !== undefined && { turned }),
      ...(showing !== undefined && { showing }),
      ...(best !== undefined && { best }),
    };
  });
  return {
    id: version === 0 ? set.round : `${set.round}~${version + 1}`,
    practice: set.practice,
    said: { round: set.round, set: set.id },
    ...(set.step !== undefined && { step: set.step }),
    slot: set.ordinal,
    ordinal,
    terms: set.terms,
    seconds: set.seconds,
    ...(clock && { clock }),
    settled: round.settled,
    left: round.left,
    struck: round.struck,
    ...(round.jumped !== undefined && { jumped: round.jumped }),
    tallies,
    ...(set.waiting && { waiting: set.waiting }),
    ...(unwatched.length > 0 && { unwatched }),
    called,
    turns: set.turns ?? false,
    checks: set.checks ?? 0,
    ...(set.focus !== undefined && { focus: set.focus }),
    ...(round.looks.size > 0 && { looks: [...round.looks.values()] }),
    turnSaid: round.turned !== undefined,
    marks,
    phones,
  };
}

/** Letters of the pairs that call their number: those that were set to, and those that came of them. */
function callingIn(
  { pairs, called = [] }: EntryOf<'round-set'>,
  added: readonly { pair: Pair }[],
): string[] {
  const calling = [...called];
  const before = [...pairs];
  for (const { pair } of added) {
    const origin = before.findLast(({ players }) => players.includes(pair.players[0] ?? ''));
    if (origin && calling.includes(origin.letter)) calling.push(pair.letter);
    before.push(pair);
  }
  return calling;
}

/**
 * The second at which two players turned their roles: as it was said, else at half the planned
 * clock where that was planned and the round came so far.
 */
function turnOf(
  { set, clock, turned }: Draft,
  { players }: Pair,
  from: number,
  to: number,
): number | undefined {
  if (players.length !== 2 || !clock) return undefined;
  const second = turned ? turned.second : set.turns ? set.seconds / 2 : undefined;
  return second !== undefined && second > from && second < to ? second : undefined;
}

/** Stretches in their order, joined where they touch, and none beyond the end. */
function joinedStretches(stretches: readonly Stretch[], end: number): Stretch[] {
  const joined: Stretch[] = [];
  for (const { from, to } of stretches.toSorted((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last && from <= last.to) last.to = Math.max(last.to, Math.min(to, end));
    else if (from < Math.min(to, end)) joined.push({ from, to: Math.min(to, end) });
  }
  return joined;
}

/**
 * Seconds of live clock recorded for a round that was started, as it stands at `now`. Once the
 * practice has gone on it is all of them, also on a phone whose clock was set back since.
 */
export const recordedIn = (round: Pick<OpenRound, 'left'>, clock: Clock, now: number): number =>
  round.left ? endSecond(clock) : recordedSeconds(clock, now);
