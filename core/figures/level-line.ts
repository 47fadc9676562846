import type { Family } from '../drill/drill.ts';
import { Z_OF_80 } from './level.ts';
import type { LevelFit } from './level-fit.ts';
import { levelParts, type Part, squadParts } from './level-parts.ts';
import { fromLogit } from './logit.ts';

/** A level so many weeks before the last practice, with the limits that hold it four times in five. */
export interface LinePoint {
  weeksAgo: number;
  share: number;
  low: number;
  high: number;
}

/** Weeks between two points: a straight line of logits is bent only a little as shares. */
const STEP = 1;

/**
 * A level over the weeks of the fit, the earliest first: a player's with an average partner of the
 * squad as it is now, or the squad's own; at one kind of work, or at all, each as often as it was
 * played. It ends at what `levelOf` says. Undefined where nothing was seen of it.
 */
export function levelLine(
  fit: LevelFit,
  { player, kind }: { player?: string; kind?: Family } = {},
): LinePoint[] | undefined {
  const works = [...fit.kinds].filter(
    ([own, { players }]) =>
      (kind === undefined || own === kind) && (player === undefined || players.has(player)),
  );
  if (works.length === 0) return undefined;
  const tallies = works.reduce((sum, [, work]) => sum + work.tallies, 0);
  const steps = Math.max(1, Math.ceil(fit.age / STEP));
  return Array.from({ length: steps + 1 }, (_, at) => {
    const weeksAgo = fit.age * (1 - at / steps);
    const parts = works.flatMap(([family, work]): Part[] => {
      const weight = work.tallies / tallies;
      const drills = [...work.drills.values()].map(
        (drill): Part => [drill.level, (weight * drill.tallies) / work.tallies],
      );
      return [[work.level, weight], ...drills, ...whose(fit, family, weight, weeksAgo, player)];
    });
    const { mean, sd } = fit.sum(parts);
    const shareAt = (z: number) => fromLogit(mean + z * sd).share;
    return { weeksAgo, share: shareAt(0), low: shareAt(-Z_OF_80), high: shareAt(Z_OF_80) };
  });
}

function whose(
  fit: LevelFit,
  family: Family,
  weight: number,
  weeksAgo: number,
  player: string | undefined,
): Part[] {
  if (player === undefined) return squadParts(fit, family, weight, weeksAgo);
  if (fit.onTarget) return levelParts(fit, player, family, weight, weeksAgo);
  return [
    ...levelParts(fit, player, family, weight / 2, weeksAgo),
    ...squadParts(fit, family, weight / 2),
  ];
}
