import type { Family } from '../drill/drill.ts';
import type { LevelFit } from './level-fit.ts';
import { levelParts, type Part, squadParts } from './level-parts.ts';
import { fromLogit } from './logit.ts';

/** z of an 80% interval: the standard normal value that one in ten lies above. */
export const Z_OF_80 = 1.2815515655446004;

/** A level as a share of balls, 0 to 1, with the limits that hold it four times in five. */
export interface Level {
  share: number;
  low: number;
  high: number;
  /** Its logit, and the sd of that. */
  mean: number;
  sd: number;
}

/**
 * A player's level at a kind of work on the day of the last practice: the share of balls that come
 * back with an average partner of the squad at an average drill (each as often as it was played); on
 * target the player's own share. Half of what a pair makes of a ball is each one's, own shots and
 * what the balls do for the partner together, which no count can tell apart.
 *
 * In simulation the 80% limits hold 80 to 86% (tests/bench/levels.ts). A usual clock that is wrong
 * moves all levels alike, and no interval shows it.
 *
 * Undefined where the player has no tally of the kind.
 */
export function levelOf(fit: LevelFit, player: string, kind: Family): Level | undefined {
  const work = fit.kinds.get(kind);
  if (!work?.players.has(player)) return undefined;
  const drills = [...work.drills.values()].map(
    ({ level, tallies }): Part => [level, tallies / work.tallies],
  );
  const own = fit.onTarget
    ? levelParts(fit, player, kind)
    : [...levelParts(fit, player, kind, 1 / 2), ...squadParts(fit, kind, 1 / 2)];
  const { mean, sd } = fit.sum([[work.level, 1], ...drills, ...own]);
  return {
    share: fromLogit(mean).share,
    low: fromLogit(mean - Z_OF_80 * sd).share,
    high: fromLogit(mean + Z_OF_80 * sd).share,
    mean,
    sd,
  };
}

/**
 * The level as it is worth showing: undefined also where it is no surer than any player of any squad
 * would be, so that no interval is wider than a whole squad's spread.
 */
export function toldLevel(fit: LevelFit, player: string, kind: Family): Level | undefined {
  const level = levelOf(fit, player, kind);
  const { playerSd, playerKindSd } = fit.priors;
  return level && level.sd < Math.hypot(playerSd, playerKindSd) ? level : undefined;
}
