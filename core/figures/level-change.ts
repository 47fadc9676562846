import { mustBePositive } from '../arguments.ts';
import type { Family } from '../drill/drill.ts';
import type { LevelFit } from './level-fit.ts';
import type { Part } from './level-parts.ts';
import { phi } from './normal.ts';

/** A change in logits, and how sure it is one upwards. */
export interface LevelChange {
  mean: number;
  sd: number;
  /** The chance that the player rose. */
  rise: number;
}

/**
 * How a player's level changes in a week, by the straight line through the last twelve; of all kinds
 * of work, each as often as the player was seen at it, unless one is named. Undefined where the
 * player has no tally of it.
 */
export function weeklyChange(fit: LevelFit, name: string, kind?: Family): LevelChange | undefined {
  const parts = changeParts(fit, name, kind);
  return parts && changeOf(fit, parts);
}

/** The same as a sum of unknowns. */
export function changeParts(fit: LevelFit, name: string, kind?: Family): Part[] | undefined {
  const seen = [...fit.kinds].flatMap(([own, { players }]) => {
    const atKind = players.get(name);
    return atKind && (kind === undefined || own === kind) ? [atKind] : [];
  });
  const player = fit.players.get(name);
  if (!player || seen.length === 0) return undefined;
  const all = seen.reduce((sum, { tallies }) => sum + tallies, 0);
  return [[player.change, 1], ...seen.map(({ change, tallies }): Part => [change, tallies / all])];
}

/** A sum of changes with the chance that it is one upwards. */
export function changeOf(fit: LevelFit, parts: readonly Part[]): LevelChange {
  const { mean, sd } = fit.sum(parts);
  return { mean, sd, rise: phi(mean / sd) };
}

/**
 * The change over the last `weeks`. Undefined also where the tallies do not reach as far back, to
 * within a week. A change that came at once is read as a slanted line, and one far outside what is
 * usual (0.77 logit in twelve weeks) is seen but understated.
 */
export function changeOver(
  fit: LevelFit,
  weeks: number,
  player: string,
  kind?: Family,
): LevelChange | undefined {
  mustBePositive('weeks', weeks);
  if (fit.age < weeks - 1) return undefined;
  const weekly = weeklyChange(fit, player, kind);
  return weekly && { mean: weeks * weekly.mean, sd: weeks * weekly.sd, rise: weekly.rise };
}
