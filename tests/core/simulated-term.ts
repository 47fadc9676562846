import { addDays, daysBetween } from '../../core/calendar.ts';
import { type Family, families, termsOf } from '../../core/drill/drill.ts';
import { clearLanes } from '../../core/drill/lanes.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import type { PlayedRound, Summary } from '../../core/ledger/summary.ts';
import { assignCourts } from '../../core/planning/assign-courts.ts';
import { dueRoles } from '../../core/planning/due-roles.ts';
import { meetingsOf } from '../../core/planning/meetings.ts';
import { proposeBlock } from '../../core/planning/propose-block.ts';
import { proposePairs } from '../../core/planning/propose-pairs.ts';
import { whatIsDue } from '../../core/planning/what-is-due.ts';
import { type Plan, partnersChange, plannedMinutes } from '../../core/round/block.ts';
import type { Pair } from '../../core/round/pair.ts';
import { pairUp } from '../../core/round/pairs.ts';
import { type Random, randomFrom } from '../../demo-data/random.ts';
import { turnsOf } from '../../demo-data/turns.ts';
import { squadOf } from './invented.ts';
import { practiceWith, roundWith, termsWith } from './made.ts';

export const SECONDS = 120;
export const CHANGEOVER = 45;
const FIRST_DAY = '2026-01-05';
const PER_WEEK = 3;

export interface TermOptions {
  seed: number;
  players: number;
  practices: number;
  courts: number;
  /** Minutes for the block of each practice, from the least to the most. */
  minutes: readonly [least: number, most: number];
  /** The smallest part of the squad that comes. */
  attendance: number;
}

/** A practice as the coach finds it. */
export interface Morning {
  date: string;
  /** Which practice of the term, from 0. */
  at: number;
  minutes: number;
  here: string[];
  courts: number;
  summaries: readonly Summary[];
}

/** How a coach plans a block, and pairs players before a round in which partners change. */
export interface Coach {
  plan(morning: Morning): Plan;
  pair(morning: Morning, played: ReadonlyMap<string, number> | undefined, rounds: Pair[][]): Pair[];
}

export interface Term {
  squad: string[];
  summaries: Summary[];
  /** Minutes that the block took, less those that were there. */
  over: number[];
  /** Most rounds that a player had more than another in the same practice. */
  uneven: number;
}

/** Follows what the program proposes. */
export const proposing: Coach = {
  plan: ({ date, minutes, here, courts, summaries }) =>
    proposeBlock({
      ...{ minutes, seconds: SECONDS, changeover: CHANGEOVER, here, courts },
      ...{ drills: starterDrills, summaries, today: date },
    })!.plan,
  pair: ({ date, here, summaries }, played, rounds) =>
    proposePairs({
      ...{ here, levels: new Map(), wishes: [] },
      meetings: meetingsOf([...summaries, metIn(date, rounds)], date),
      ...(played && { played }),
    })!.pairs,
};

/** Today's rounds so far, for who met whom in them: every round has its pairs and a set each. */
const metIn = (date: string, rounds: Pair[][]): Summary =>
  practiceWith(
    date,
    rounds.map((pairs, ordinal) =>
      roundWith(
        ordinal,
        termsWith(),
        pairs.map(({ players }) => [players, 1]),
      ),
    ),
  );

/**
 * One and the same block for each day of the week, as many coaches have it: eight rounds, every
 * family at least once a week, overheads on one of three days.
 */
export const routine: Coach['plan'] = ({ at }) => {
  const days = [
    ['cross-court-deuce', 'half-court-rally', 'baseline-to-net', 'serve-return-next'],
    ['cross-court-ad', 'half-court-rally', 'second-serve-deep-return', 'straight-serves'],
    ['long-rally', 'volley-to-volley', 'approach-pass-volley', 'lob-and-overhead'],
  ];
  const steps = days[at % days.length]!.map((drill) => ({
    ...{ drill, rounds: 2, partners: 'keep' as const, renew: true },
  }));
  return { steps, seconds: SECONDS, changeover: CHANGEOVER };
};

/** Puts players together as chance has it. */
export const byChance =
  (random: Random): Coach['pair'] =>
  ({ here }) =>
    pairUp(random.shuffled(here));

/** The same squad comes to the same practices, whoever coaches it. */
export function playTerm(options: TermOptions, coach: Coach): Term {
  const random = randomFrom(options.seed);
  const squad = squadOf(options.players);
  const summaries: Summary[] = [];
  const over: number[] = [];
  let uneven = 0;
  for (let at = 0; at < options.practices; at += 1) {
    const date = addDays(FIRST_DAY, Math.floor((at * 7) / PER_WEEK));
    const [least, most] = options.minutes;
    const minutes = least + random.below(most - least + 1);
    const absent = random.below(Math.floor(squad.length * (1 - options.attendance) + 1e-9) + 1);
    const here = random.shuffled(squad).slice(absent);
    const morning = { date, at, minutes, here, courts: options.courts, summaries };
    const plan = coach.plan(morning);
    over.push(plannedMinutes(plan) - minutes);
    const { rounds, played } = playBlock(plan, morning, coach);
    uneven = Math.max(uneven, Math.max(...played.values()) - Math.min(...played.values()));
    summaries.push({ ...practiceWith(date, rounds, `practice-${at}`), attended: here });
  }
  return { squad, summaries, over, uneven };
}

function playBlock(plan: Plan, morning: Morning, coach: Coach) {
  const { here, courts, summaries, date } = morning;
  const played = new Map(here.map((player) => [player, 0]));
  const rounds: PlayedRound[] = [];
  const before: Pair[][] = [];
  let pairs: Pair[] = [];
  let goes = new Map<string, number>();
  for (const [ordinal, { step, turn }] of turnsOf(plan).entries()) {
    const drill = starterDrills.find(({ id }) => id === step.drill)!;
    const terms = termsOf(drill);
    const perCourt = clearLanes(drill).length;
    const isCrowded = Math.floor(here.length / 2) > courts * perCourt;
    if (ordinal === 0 || partnersChange(step, turn)) {
      pairs = coach.pair(morning, isCrowded ? played : undefined, before);
    }
    if (turn === 0) {
      pairs = dueRoles(pairs, terms, whatIsDue(summaries, date, here));
      goes = new Map();
    }
    const [{ playing } = { playing: [] }] = assignCourts({ pairs, courts, perCourt, played });
    const inRound = playing.map(({ pair }): Pair => {
      const gone = goes.get(pair.letter) ?? 0;
      goes.set(pair.letter, gone + 1);
      return { ...pair, players: gone % 2 === 0 ? pair.players : pair.players.toReversed() };
    });
    for (const player of inRound.flatMap(({ players }) => players)) {
      played.set(player, played.get(player)! + 1);
    }
    before.push(inRound);
    rounds.push(
      roundWith(
        ordinal,
        terms,
        inRound.map(({ players }) => [
          players,
          drill.rule === 'on-target' ? Object.fromEntries(players.map((id) => [id, 4])) : 3,
        ]),
      ),
    );
  }
  return { rounds, played };
}

/** Longest time that someone went without a family, in days, from the first day to the last. */
export function longestGaps(
  { summaries, squad }: Term,
  whose: 'squad' | 'player',
): Record<Family, number> {
  const gapOf = (family: Family, player?: string): number => {
    const dates = summaries
      .filter(({ rounds }) =>
        rounds.some(
          ({ terms, tallies }) =>
            terms.family === family &&
            (player === undefined || tallies.some(({ pair }) => pair.players.includes(player))),
        ),
      )
      .map(({ date }) => date);
    const all = [summaries[0]!.date, ...dates, summaries.at(-1)!.date];
    return Math.max(...all.slice(1).map((date, at) => daysBetween(all[at]!, date)));
  };
  const longest = (family: Family) =>
    whose === 'squad' ? gapOf(family) : Math.max(...squad.map((player) => gapOf(family, player)));
  return Object.fromEntries(families.map((family) => [family, longest(family)])) as Record<
    Family,
    number
  >;
}

/**
 * The practices in which each two came together, by date: once for every time that they were not
 * partners in the round before.
 */
export function pairings({ summaries }: Term): Map<string, string[]> {
  const dates = new Map<string, string[]>();
  for (const { date, rounds } of summaries) {
    let before = new Set<string>();
    for (const { tallies } of rounds) {
      const now = new Set(tallies.flatMap(({ pair }) => twos(pair.players)));
      for (const two of now) {
        if (!before.has(two)) dates.set(two, [...(dates.get(two) ?? []), date]);
      }
      before = now;
    }
  }
  return dates;
}

/** Each two of these players, in one order. */
const twos = (players: readonly string[]): string[] =>
  players.flatMap((a, at) => players.slice(at + 1).map((b) => [a, b].sort().join(' ')));
