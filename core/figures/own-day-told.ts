import type { OwnWork } from './usual.ts';

/** The day as it is told to the player: what went well first, and what to reach for next. */
export interface OwnDayTold {
  /** What went best, and what makes it so; undefined where not one set was completed. */
  well?: { work: OwnWork; why: 'best' | 'usual' | 'first' | 'made' };
  /** What to reach for at one drill, in sets. */
  goal?: { work: OwnWork; sets: number };
  /** All drills, what went well first; those without an own usual to stand beside come last. */
  works: OwnWork[];
}

/**
 * What is told to a player of an own day, by nothing but own earlier days. What went well is a new
 * best, else the drill farthest over the own usual, else one that was done for the first time, else
 * the one with most sets. The goal is at the drill that lies lowest beside its usual: that usual, or
 * one more than today where it was reached.
 */
export function tellOwnDay(works: readonly OwnWork[]): OwnDayTold {
  const sorted = works.toSorted((a, b) => standing(b) - standing(a));
  const made = sorted.filter(({ sets }) => sets > 0);
  const best = made.find(({ beaten }) => beaten);
  const [first] = made;
  const well = best
    ? { work: best, why: 'best' as const }
    : first && standing(first) >= 1
      ? { work: first, why: 'usual' as const }
      : wellElse(made);
  const lowest = sorted.findLast(({ usual }) => usual !== undefined);
  const sets = lowest && Math.max(1, reach(lowest));
  return {
    works: sorted,
    ...(well && { well }),
    ...(lowest && sets !== undefined && { goal: { work: lowest, sets } }),
  };
}

/** How today stands beside the own usual: 1 is as usual; below everything where there is none. */
const standing = ({ sets, usual }: OwnWork): number =>
  usual === undefined ? -1 : usual === 0 ? 1 + sets : sets / usual;

function wellElse(made: readonly OwnWork[]): OwnDayTold['well'] {
  const first = made.find(({ usual }) => usual === undefined);
  if (first) return { work: first, why: 'first' };
  const most = made.reduce<OwnWork | undefined>(
    (most, work) => (most === undefined || work.sets > most.sets ? work : most),
    undefined,
  );
  return most && { work: most, why: 'made' };
}

const reach = ({ sets, usual = 0 }: OwnWork) =>
  sets < usual ? Math.ceil(usual - 1e-9) : Math.floor(sets) + 1;
