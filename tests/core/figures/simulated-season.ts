import { addDays, daysBetween } from '../../../core/calendar.ts';
import {
  type Drill,
  type Family,
  families,
  type Terms,
  termsOf,
} from '../../../core/drill/drill.ts';
import { estimateTally } from '../../../core/figures/estimate.ts';
import type { Estimate, PlayedRound, PlayedTally, Summary } from '../../../core/ledger/summary.ts';
import type { Pair } from '../../../core/round/pair.ts';
import { pairUp } from '../../../core/round/pairs.ts';
import { playRally } from '../../../demo-data/rally.ts';
import { type Random, randomFrom } from '../../../demo-data/random.ts';
import { practiceWith } from '../made.ts';
import drillsOnFile from './simulated-drills.json' with { type: 'json' };

/**
 * The drills of the simulated seasons: the starter drills as they stood when the bounds were chosen,
 * so that a drill which is added or mended draws no other seasons.
 */
const DRILLS = drillsOnFile as unknown as Drill[];

/*
 * Seasons of a squad whose true skill is known, to hold the model of level to. Nothing of that model
 * is in them: skills do not lie on straight lines, a player's balls help the partner or not, some
 * suit each other, days have their form, and each round is played shot by shot with a clock of its
 * own.
 *
 * A tally's estimate is that of the model of touches (core/figures/estimate.ts) from the count and,
 * where someone saw it, how far the unfinished set had come; the marks' times are left out. So it
 * says somewhat less than it could, and it depends on so few things that each answer is kept: a
 * season costs a fiftieth.
 */

/** What sets players apart and moves them, sds in logits. */
const OWN = 0.55;
const BENT = 0.25;
const HELP = 0.2;
const SUITS = 0.1;
const FORM = 0.15;
const DRILL = 0.3;
/** A squad's own level at a kind: mean and sd. */
const KIND = { back: [2.2, 0.3], onTarget: [-0.9, 0.3] } as const;

const LAST = '2026-03-04';
const SECONDS = 120;
const PER_WEEK = 3;
/** How often someone saw how far the unfinished set had come. */
const SEEN = 0.6;
/** How often a coach goes back to one of a family's two favourites. */
const FAVOURITE = 0.6;
/** A season's whole change is said for so many weeks. */
const CHANGE_DAYS = 84;

/** How a player's skill changes in twelve weeks, in logits: at all kinds, and at one more. */
export interface Rise {
  all?: number;
  at?: Partial<Record<Family, number>>;
}

export interface SeasonPlan {
  seed: number;
  practices: number;
  players?: number;
  onTarget?: boolean;
  /** In each practice. */
  rounds?: number;
  /** How often a player comes. */
  comes?: number;
  /** Those that may be played; by default the ones on file. */
  drills?: readonly Drill[];
  /** Each player's; by default nothing changes. */
  rise?: (place: number, random: Random) => Rise;
}

export interface SimulatedSeason {
  summaries: Summary[];
  players: string[];
  rises: Rise[];
  /** Own skill, what stands out at the kind and what the player's balls do for others, so many days before the end. */
  truth: (player: string, kind: Family, daysAgo: number) => number;
  /** A kind's level at a drill, known as `countedAs` has it. */
  drillLevel: (kind: Family, drill: string) => number;
  /** Days from the first practice to the last. */
  days: number;
}

/** Shapes of a change: from 0 to 1 while the season goes from 0 to 1. */
const SHAPES = [
  (x: number) => x,
  (x: number) => x * x,
  (x: number) => Math.sqrt(x),
  (x: number) => Number(x > 0.5),
] as const;

export function simulateSeason(plan: SeasonPlan): SimulatedSeason {
  const { seed, practices, players: many = 12, onTarget = false } = plan;
  const { rounds: perPractice = 6, comes = 0.85, drills: library = DRILLS } = plan;
  const random = randomFrom(seed);
  const players = Array.from({ length: many }, (_, place) => `p${place + 10}`);
  const rises = players.map((_, place) => plan.rise?.(place, random) ?? {});
  const skills = new Map(
    players.map((player, place) => [
      player,
      {
        own: random.normal(0, OWN),
        bent: new Map(families.map((family) => [family, random.normal(0, BENT)])),
        help: onTarget ? 0 : random.normal(0, HELP),
        rise: rises[place]!,
        shape: SHAPES[random.below(SHAPES.length)]!,
      },
    ]),
  );
  const suits = new Map<string, number>();
  const known = library.filter(({ rule }) => (rule === 'on-target') === onTarget);
  const kinds = families.filter((family) => known.some((drill) => drill.family === family));
  const [kindMean, kindSd] = KIND[onTarget ? 'onTarget' : 'back'];
  const levels = new Map(kinds.map((family) => [family, random.normal(kindMean, kindSd)]));
  const drills = new Map(known.map(({ id }) => [id, random.normal(0, DRILL)]));
  const drillLevel = (kind: Family, countedAs: string) =>
    levels.get(kind)! + drills.get(countedAs.split(' ')[0]!)!;

  const dates = Array.from({ length: practices }, (_, place) =>
    addDays(LAST, -Math.floor(((practices - 1 - place) * 7) / PER_WEEK)),
  );
  const days = daysBetween(dates[0]!, LAST);
  const own = (player: string, kind: Family, daysAgo: number) => {
    const { own, bent, rise, shape } = skills.get(player)!;
    const gone = shape(1 - daysAgo / Math.max(1, days)) * (days / CHANGE_DAYS);
    return own + bent.get(kind)! + ((rise.all ?? 0) + (rise.at?.[kind] ?? 0)) * gone;
  };
  const truth = (player: string, kind: Family, daysAgo: number) =>
    own(player, kind, daysAgo) + skills.get(player)!.help;

  const summaries = dates.map((date, practice): Summary => {
    const daysAgo = daysBetween(date, LAST);
    const here = players.filter(() => random.chance(comes));
    const attended = here.length < 4 ? players : here;
    const form = new Map(attended.map((player) => [player, random.normal(0, FORM)]));
    const rounds = Array.from({ length: perPractice }, (_, ordinal): PlayedRound => {
      const family = kinds[(practice * perPractice + ordinal) % kinds.length]!;
      const choice = known.filter((drill) => drill.family === family);
      const drill =
        choice[
          random.below(random.chance(FAVOURITE) ? Math.min(2, choice.length) : choice.length)
        ]!;
      const terms = termsOf(drill);
      const success = (striker: string, partner: string) => {
        const two = striker < partner ? `${striker} ${partner}` : `${partner} ${striker}`;
        if (!suits.has(two)) suits.set(two, onTarget ? 0 : random.normal(0, SUITS));
        const logit =
          drillLevel(family, drill.id) +
          own(striker, family, daysAgo) +
          skills.get(partner)!.help +
          suits.get(two)! +
          form.get(striker)!;
        return 1 / (1 + Math.exp(-logit));
      };
      const tallies = pairUp(random.shuffled(attended)).map((pair) =>
        playedTally(terms, pair, success, random),
      );
      return {
        id: `${practice}-${ordinal}`,
        ordinal,
        terms,
        seconds: SECONDS,
        settled: true,
        tallies,
      };
    });
    return practiceWith(date, rounds, `practice-${practice}`);
  });
  return { summaries, players, rises, truth, drillLevel, days };
}

function playedTally(
  terms: Terms,
  pair: Pair,
  success: (striker: string, partner: string) => number,
  random: Random,
): PlayedTally {
  const { sets, showing } = playRally(terms, pair.players, SECONDS, success, random);
  const inTime = sets.filter(({ second }) => second <= SECONDS);
  const countOf = (player: string) => inTime.filter((set) => set.player === player).length;
  const onTarget = terms.rule === 'on-target';
  const tally = {
    pair,
    sets: inTime.length,
    ...(onTarget && {
      byPlayer: Object.fromEntries(pair.players.map((player) => [player, countOf(player)])),
    }),
    times: [],
    late: 0,
    doubtful: 0,
    open: 0,
    ...(!onTarget && random.chance(SEEN) && { showing }),
  };
  return { ...tally, estimate: estimateOf(terms, tally) };
}

const estimates = new Map<string, Estimate>();

/** The estimate of a tally without times, which rests on its counts alone. */
function estimateOf(terms: Terms, tally: PlayedTally): Estimate {
  const { rule, size } = terms;
  const counts = tally.byPlayer ? tally.pair.players.map((player) => tally.byPlayer![player]) : [];
  const key = [rule, size, tally.sets, tally.showing, tally.pair.players.length, ...counts].join(
    ' ',
  );
  let known = estimates.get(key);
  if (!known) {
    known = estimateTally(terms, SECONDS, tally, undefined);
    estimates.set(key, known);
  }
  if (!known.own) return known;
  // Kept for other players with the same counts.
  const shares = Object.values(known.own);
  return {
    ...known,
    own: Object.fromEntries(tally.pair.players.map((player, place) => [player, shares[place]!])),
  };
}
