import type { LevelFit } from '../figures/level-fit.ts';
import { levelParts } from '../figures/level-parts.ts';

/** Two players so far apart in the model are a step apart in level: about two balls in a hundred; ours. */
const STEP = 0.2;

/**
 * The levels that pairs are put together by: the coach's own view where it was given, 1 to 10; of a
 * player without one that of whoever is nearest in the model of levels, and where the coach gave none
 * at all the model's own, in steps of 0.2 logit. Players of whom neither says anything have none.
 *
 * @param given the coach's levels
 * @param fit of balls that come back; undefined where there is none
 */
export function pairLevels(
  players: readonly string[],
  given: ReadonlyMap<string, number>,
  fit: LevelFit | undefined,
): Map<string, number> {
  const levels = new Map<string, number>();
  for (const player of players) {
    const level = given.get(player) ?? (fit && reckoned(player, given, fit));
    if (level !== undefined) levels.set(player, level);
  }
  return levels;
}

function reckoned(
  player: string,
  given: ReadonlyMap<string, number>,
  fit: LevelFit,
): number | undefined {
  const own = standing(fit, player);
  if (own === undefined) return undefined;
  const known = [...given].flatMap(([other, level]) => {
    const theirs = standing(fit, other);
    return theirs === undefined ? [] : [{ level, apart: Math.abs(theirs - own) }];
  });
  if (given.size === 0) return own / STEP;
  return known.sort((a, b) => a.apart - b.apart)[0]?.level;
}

/** A player over all kinds of work, in logits from where the prior has everyone. */
function standing(fit: LevelFit, player: string): number | undefined {
  const kinds = [...fit.kinds].filter(([, { players }]) => players.has(player));
  if (kinds.length === 0) return undefined;
  return fit.sum(kinds.flatMap(([kind]) => levelParts(fit, player, kind, 1 / kinds.length))).mean;
}
