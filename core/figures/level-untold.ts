import type { Family } from '../drill/drill.ts';
import { differenceOfTwo } from './level-difference.ts';
import type { LevelFit } from './level-fit.ts';
import { comparableClasses, groupsThatMet } from './separable.ts';

/** What the tallies of a kind of work cannot tell. Ids are in the order of their names. */
export interface Untold {
  /** The only one who was seen at the kind, whom nobody can be compared with. */
  alone?: string;
  /** Two of whom nothing tells one from the other, see `Comparison.untold`. */
  pairs: [string, string][];
  /** Of those the ones who never played without each other, at any kind. */
  neverParted: [string, string][];
  /** Groups that never met, compared through the drills they share only; one where all hang together. */
  groups: string[][];
  /** Classes of players who can be compared by what was played; across them the prior helps out. */
  classes: string[][];
}

/**
 * Of whom the tallies of a kind of work cannot tell how they differ, and why. Undefined where nobody
 * was seen at it. On target everyone plays alone: there are no groups but one for each.
 */
export function untold(fit: LevelFit, kind: Family): Untold | undefined {
  const players = [...(fit.kinds.get(kind)?.players.keys() ?? [])];
  const [only, another] = players;
  if (only === undefined) return undefined;
  const played = fit.tallies.filter((tally) => tally.kind === kind);
  const pairs = players.flatMap((one, place) =>
    players
      .slice(place + 1)
      .filter((other) => differenceOfTwo(fit, one, other, kind)?.untold)
      .map((other): [string, string] => [one, other]),
  );
  const apart = ([one, other]: [string, string]) =>
    fit.tallies.some(({ players: who }) => who.includes(one) !== who.includes(other));
  return {
    ...(another === undefined && { alone: only }),
    pairs,
    neverParted: pairs.filter((pair) => !apart(pair)),
    groups: groupsThatMet(played),
    classes: comparableClasses(played),
  };
}
