import type { CourtSize } from '../court/court.ts';
import type { Place } from '../court/place.ts';
import { type Drill, families, roleNumbers, type Stroke, termsOf } from '../drill/drill.ts';
import { lanesOn } from '../drill/fit-court.ts';
import { courtMarkers, isSame } from '../drill/lanes.ts';
import { strokesAt } from '../figures/last-practised.ts';
import { exact } from './exact.ts';
import type { WhatIsDue } from './what-is-due.ts';

/**
 * What a block costs, in markers moved: one marker that is laid, taken up or moved between two
 * rounds costs 1, and every other wish is weighed against that. All of it is ours, and all of it is
 * here. The great steps between the first three make them come one before the other; the rest are
 * traded against each other.
 */
export const weights = {
  /** A family that is not in the block although there is room for every one. */
  missing: 10_000,
  /**
   * A drill of two unlike roles with an odd number of rounds. Where families have one round each at
   * most, roles turn from one practice to the next instead, and it costs only `oneRole`.
   */
  roles: 1_000,
  /** A drill of the last practice where its family has one that was not in it. */
  repeat: 200,
  /** A family that is long overdue and has no round; n rounds leave the (n + 1)-th part of it. */
  family: 120,
  /** Added to how overdue a family is, 0 to 1, so that one practised today has a weight too. */
  evenly: 0.25,
  /** A round in which everyone waits for a free court. */
  waiting: 8,
  /** A drill to which nobody comes for want of courts. */
  leftOut: 40,
  /** All pairs having had one of two unlike roles once more than the other, for want of courts or rounds. */
  oneRole: 10,
  /** A round of nothing but strokes that everyone struck today. */
  stroke: 8,
  /** A round that is not of a drill in which a focus slips, where there is such a drill. */
  slipping: 6,
  /** A round that is not of a drill that is too hard, where there is such a drill: it wants practice. */
  hard: 3,
  /** Each round of a drill after its second. */
  again: 5,
  /** A drill that was played today; one that was not played in four weeks costs nothing. */
  drill: 8,
  /** A marker laid, taken up or moved on a court between two rounds. */
  marker: 1,
  /** A block that opens with overheads or serves: less than any marker, so it only breaks ties. */
  cold: 0.5,
} as const;

/** Rounds that one step of a plan can have: see block.ts. */
export const MOST_STEP_ROUNDS = 10;

/** A block: drills by their place in a list, each with its rounds, in the order of play. */
export type Block = readonly { drill: number; rounds: number }[];

/** All that the choice of a block depends on, for one practice. All are whole multiples of 2^-10. */
export interface Prices {
  /** How many rounds the block has, all its drills together. */
  rounds: number;
  /** The family of each drill, as a place in `family`. */
  familyOf: readonly number[];
  /** What a family costs with 0, 1, 2 … rounds in the block. */
  family: readonly (readonly number[])[];
  /** What each drill costs with 0 (never read), 1, 2 … rounds. */
  step: readonly (readonly number[])[];
  /** What it costs to go from one drill to another. */
  move: readonly (readonly number[])[];
  /** What it costs to begin with each drill. */
  open: readonly number[];
}

/**
 * The prices of a practice.
 *
 * @param drills those that may be in the block
 * @param rounds how many fit, from 1
 * @param pairs how many are here, a trio for one; 0 where that is not known
 * @param courts undefined where not known: then there is room for all
 */
export function pricesOf(
  drills: readonly Drill[],
  rounds: number,
  pairs: number,
  courts: number | undefined,
  size: CourtSize,
  due: WhatIsDue,
): Prices {
  const counts = Array.from({ length: rounds + 1 }, (_, n) => n);
  const present = families.filter((family) => drills.some((drill) => drill.family === family));
  // Where not every family fits, one is left out for no longer than the others make it wait.
  const longestWait = Math.ceil(present.length / rounds);
  const onCourt = Math.max(1, Math.ceil(pairs / (courts ?? Math.max(1, pairs))));
  const lanes = drills.map((drill) => lanesOn(drill, size));
  const markers = lanes.map((all) => courtMarkers(all.slice(0, onCourt)));

  const slips = drills.map(({ id }) => due.slips(id) !== undefined);
  const hard = drills.map((drill) => due.hard(drill) !== undefined);
  const beside = (is: readonly boolean[], at: number) => (is.includes(true) && !is[at] ? 1 : 0);

  return {
    rounds,
    familyOf: drills.map(({ family }) => present.indexOf(family)),
    family: present.map((family) => {
      const weight = weights.family * (weights.evenly + due.overdue(family));
      const waited = Math.min(1, due.practicesSince(family) / longestWait);
      return counts.map((n) => exact(weight / (n + 1) + (n === 0 ? weights.missing * waited : 0)));
    }),
    step: drills.map((drill, at) => {
      const slots = courts === undefined ? pairs : Math.min(pairs, courts * lanes[at]!.length);
      const once =
        weights.drill * (1 - due.drillOverdue(drill.id)) +
        (isRepeat(drill, drills, due) ? weights.repeat : 0);
      const round =
        weights.stroke * (1 - strokesOverdue(drill, due)) +
        weights.slipping * beside(slips, at) +
        weights.hard * beside(hard, at) +
        weights.waiting * shareWithout(slots, pairs);
      const unlike = rolesDiffer(drill);
      return counts.map((n) => {
        const isOdd = n % 2 === 1 && rounds > present.length;
        const roles = isOdd ? weights.roles : weights.oneRole * oddShare(n, pairs, slots);
        return exact(
          once +
            n * round +
            weights.again * Math.max(0, n - 2) +
            weights.leftOut * shareWithout(n * slots, pairs) +
            (unlike ? roles : 0),
        );
      });
    }),
    move: markers.map((from) => markers.map((to) => weights.marker * markersMoved(from, to))),
    open: drills.map(({ shots }) =>
      shots.some(({ stroke }) => stroke === 'overhead' || stroke === 'serve') ? weights.cold : 0,
    ),
  };
}

/** What each role of a drill strikes. */
export const strokesOfRoles = (drill: Drill): (readonly Stroke[])[] =>
  roleNumbers.map((role) => strokesAt(termsOf(drill), ['', ''], role));

/** Whether the roles of a drill strike different strokes, so that each player should have both. */
export function rolesDiffer(drill: Drill): boolean {
  const [first, second] = strokesOfRoles(drill).map((struck) => struck.toSorted().join());
  return first !== second;
}

/** How overdue what is struck in a drill is, 0 to 1: the mean of its roles, each that of its strokes. */
function strokesOverdue(drill: Drill, due: WhatIsDue): number {
  const roles = strokesOfRoles(drill).filter((struck) => struck.length > 0);
  return mean(roles.map((struck) => mean(struck.map((stroke) => due.overdue(stroke)))));
}

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Whether a drill was in the last practice and another of its family was not. */
const isRepeat = ({ id, family }: Drill, drills: readonly Drill[], { lastDrills }: WhatIsDue) =>
  lastDrills.has(id) &&
  drills.some((drill) => drill.family === family && !lastDrills.has(drill.id));

/** The share of pairs for whom so many places are not enough. */
const shareWithout = (places: number, pairs: number) => (places < pairs ? 1 - places / pairs : 0);

/**
 * The share of pairs that play an odd number of so many rounds, where those who have played least
 * turn in first.
 */
function oddShare(rounds: number, pairs: number, slots: number): number {
  if (slots === pairs) return rounds % 2;
  const least = Math.floor((rounds * slots) / pairs);
  const withOneMore = rounds * slots - least * pairs;
  return (least % 2 === 0 ? withOneMore : pairs - withOneMore) / pairs;
}

/** How many markers are laid, taken up or moved: one that is moved counts once. */
export function markersMoved(from: readonly Place[], to: readonly Place[]): number {
  const staying = from.filter((place) => to.some((other) => isSame(place, other))).length;
  return Math.max(from.length, to.length) - staying;
}
