import type { Family } from '../drill/drill.ts';
import type { LevelFit } from './level-fit.ts';

/** So many times one of a fit's unknowns, see `LevelFit.sum`. */
export type Part = readonly [unknown: number, times: number];

/**
 * What a player brings to a kind of work, so many weeks before the last practice: a sum of unknowns;
 * nothing where the player has no tally of the kind.
 */
export function levelParts(
  { players, kinds }: LevelFit,
  name: string,
  kind: Family,
  times = 1,
  weeksAgo = 0,
): Part[] {
  const player = players.get(name);
  const atKind = kinds.get(kind)?.players.get(name);
  if (!player || !atKind) return [];
  return [player, atKind].flatMap((line): Part[] => [
    [line.level, times],
    [line.change, -times * weeksAgo],
  ]);
}

/** The same of the squad: the mean of those who have a tally of the kind, each once. */
export function squadParts(fit: LevelFit, kind: Family, times = 1, weeksAgo = 0): Part[] {
  const names = [...(fit.kinds.get(kind)?.players.keys() ?? [])];
  return names.flatMap((name) => levelParts(fit, name, kind, times / names.length, weeksAgo));
}
