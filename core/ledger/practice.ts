import type { Terms } from '../drill/drill.ts';
import type { Plan } from '../round/block.ts';
import {
  afterEvent,
  type Clock,
  endSecond,
  goOnFrom,
  recordedSeconds,
  startClock,
} from '../round/clock.ts';
import type { Pair } from '../round/pair.ts';
import { counts, leastSeconds, type Mark, type Tally } from '../round/tally.ts';
import type { Pace } from '../round/tempo.ts';
import type { EntryOf, PracticeEntry } from './entry.ts';

export interface Round {
  id: string;
  ordinal: number;
  terms: Terms;
  /** Planned length in seconds. */
  seconds: number;
  clock?: Clock;
  settled: boolean;
  /** Seconds by which the phone's clock jumped in mid-round: its length wants a look. */
  doubted?: number;
  tallies: Tally[];
  /** Pairs that sit this round out because no court is free. */
  waiting?: Pair[];
}

/** A round with every mark that was tapped in it. */
export interface OpenRound extends Round {
  /** Settled, or settle was passed over: the practice has gone on. */
  left: boolean;
  marks: Record<string, Mark[]>;
}

export interface Practice {
  id: string;
  /** YYYY-MM-DD, by the clock of the phone that opened it. */
  date: string;
  /** Who is here now, in the order of arrival. */
  here: string[];
  /** Everyone who was here at any time. */
  attended: string[];
  plan?: Plan;
  /** What was measured in it, by drill; left out where nothing was. */
  paces?: Record<string, Pace>;
  rounds: OpenRound[];
  closed: boolean;
}

type Draft = {
  set: EntryOf<'round-set'>;
  clock?: Clock;
  settled: boolean;
  left: boolean;
  doubted?: number;
  marks: EntryOf<'mark'>[];
  takenBack: Set<string>;
  judged: Map<string, boolean>;
  corrections: EntryOf<'tally-corrected'>[];
  showing: Map<string, number>;
  best: Map<string, number>;
};

/**
 * A practice from its entries, which must be sorted by id and belong to it (see ledger.ts).
 * Undefined where none of them opened it.
 */
export function foldPractice(entries: Iterable<PracticeEntry>): Practice | undefined {
  let opened: EntryOf<'practice-opened'> | undefined;
  const here = new Set<string>();
  const attended = new Set<string>();
  const rounds = new Map<string, Draft>();
  let plan: Plan | undefined;
  let paces: Record<string, Pace> | undefined;
  let closed = false;

  for (const entry of entries) {
    switch (entry.kind) {
      case 'practice-opened':
        opened ??= entry;
        break;
      case 'player-came':
        here.add(entry.player);
        attended.add(entry.player);
        break;
      case 'player-left':
        here.delete(entry.player);
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
      case 'practice-closed':
        closed = true;
        break;
      case 'practice-reopened':
        closed = false;
        break;
      case 'round-set': {
        const known = rounds.get(entry.round);
        if (!known) rounds.set(entry.round, draft(entry));
        // Once the clock has started the pairs stand: marks are counted against them.
        else if (!known.clock) known.set = entry;
        break;
      }
      default: {
        const known = rounds.get(entry.round);
        if (known) play(known, entry);
      }
    }
  }
  if (!opened) return undefined;
  return {
    id: opened.practice,
    date: opened.date,
    here: [...here],
    attended: [...attended],
    ...(plan && { plan }),
    ...(paces && { paces }),
    rounds: [...rounds.values()].map(finish).sort((a, b) => a.ordinal - b.ordinal),
    closed,
  };
}

const draft = (set: EntryOf<'round-set'>): Draft => ({
  set,
  settled: false,
  left: false,
  marks: [],
  takenBack: new Set(),
  judged: new Map(),
  corrections: [],
  showing: new Map(),
  best: new Map(),
});

type RoundEntry = Exclude<
  PracticeEntry,
  {
    kind:
      | 'practice-opened'
      | 'player-came'
      | 'player-left'
      | 'block-planned'
      | 'tempo-checked'
      | 'refeed-checked'
      | 'practice-closed'
      | 'practice-reopened'
      | 'round-set';
  }
>;

function play(round: Draft, entry: RoundEntry): void {
  const { clock } = round;
  switch (entry.kind) {
    case 'clock-started':
      round.clock ??= startClock(entry.at, round.set.seconds);
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
      round.doubted = entry.seconds;
      if (clock && entry.live !== undefined) {
        round.clock = goOnFrom(clock, entry.live, entry.at);
      }
      break;
    case 'mark':
      round.marks.push(entry);
      break;
    case 'mark-taken-back':
      round.takenBack.add(entry.mark);
      break;
    case 'mark-judged':
      round.judged.set(entry.mark, entry.counts);
      break;
    case 'tally-corrected':
      round.corrections.push(entry);
      break;
    case 'set-showing':
      round.showing.set(entry.pair, entry.shots);
      break;
    case 'best-run':
      round.best.set(entry.pair, entry.shots);
      break;
    case 'round-skipped':
      round.left = true;
      break;
    case 'round-settled':
      round.left = true;
      round.settled = true;
      break;
  }
}

function finish(round: Draft): OpenRound {
  const { set, clock } = round;
  const marks: Record<string, Mark[]> = {};
  const tallies = set.pairs.map((pair) => {
    const own = marksOf(round, pair);
    marks[pair.letter] = own;
    return tallyOf(round, pair, own);
  });
  return {
    id: set.round,
    ordinal: set.ordinal,
    terms: set.terms,
    seconds: set.seconds,
    ...(clock && { clock }),
    settled: round.settled,
    left: round.left,
    ...(round.doubted !== undefined && { doubted: round.doubted }),
    tallies,
    ...(set.waiting && { waiting: set.waiting }),
    marks,
  };
}

/** The pair's marks in the order of the clock, with what is to be said of each. */
function marksOf(round: Draft, pair: Pair): Mark[] {
  const { set, clock } = round;
  const least = leastSeconds(set.terms);
  const length = clock ? endSecond(clock) : set.seconds;
  const before = new Map<string | undefined, number>();
  return round.marks
    .filter((mark) => mark.pair === pair.letter)
    .sort((a, b) => a.second - b.second || (a.id < b.id ? -1 : 1))
    .map((mark) => {
      const takenBack = round.takenBack.has(mark.id);
      const judged = round.judged.get(mark.id);
      const since = mark.second - (before.get(mark.player) ?? 0);
      // A slip was no set: the next one is measured from the set before it.
      if (!takenBack && judged !== false) before.set(mark.player, mark.second);
      return {
        id: mark.id,
        ...(mark.player !== undefined && { player: mark.player }),
        second: mark.second,
        late: mark.second > length,
        doubtful: since < least,
        takenBack,
        ...(judged !== undefined && { judged }),
      };
    });
}

/**
 * Seconds of live clock recorded for a round that was started, as it stands at `now`. Once the
 * practice has gone on it is all of them, also on a phone whose clock was set back since.
 */
export const recordedIn = (round: Pick<OpenRound, 'left'>, clock: Clock, now: number): number =>
  round.left ? endSecond(clock) : recordedSeconds(clock, now);

function tallyOf(round: Draft, pair: Pair, marks: Mark[]): Tally {
  const standing = marks.filter((mark) => !mark.takenBack);
  const counted = marks.filter(counts);
  const corrections = round.corrections.filter((correction) => correction.pair === pair.letter);
  const showing = round.showing.get(pair.letter);
  const best = round.best.get(pair.letter);
  const tally: Tally = {
    pair,
    sets: Math.max(0, counted.length + sumOf(corrections)),
    times: counted.map((mark) => mark.second),
    late: standing.filter((mark) => mark.late).length,
    doubtful: standing.filter((mark) => mark.doubtful).length,
    open: standing.filter((mark) => (mark.late || mark.doubtful) && mark.judged === undefined)
      .length,
    ...(showing !== undefined && { showing }),
    ...(best !== undefined && { best }),
  };
  if (round.set.terms.rule !== 'on-target') return tally;

  const byPlayer: Record<string, number> = {};
  for (const player of pair.players) {
    const own = counted.filter((mark) => mark.player === player).length;
    const put = sumOf(corrections.filter((correction) => correction.player === player));
    byPlayer[player] = Math.max(0, own + put);
  }
  return { ...tally, byPlayer, sets: Object.values(byPlayer).reduce((sum, own) => sum + own, 0) };
}

const sumOf = (corrections: readonly { by: number }[]) =>
  corrections.reduce((sum, { by }) => sum + by, 0);
