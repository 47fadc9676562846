import type { Summary } from '../ledger/summary.ts';
import { type PracticeTrend, practiceTrend } from './practice-trend.ts';
import { byWork, type KindOfWork } from './review.ts';
import { playerStints } from './stints.ts';

/** Whether a player's consistency at one kind of work rises or falls, over all practices. */
export interface KindTrend extends KindOfWork {
  trend: PracticeTrend;
}

/**
 * Every player's trends over all practices, a kind of work each in the order of the families: the
 * one source of the word, so that no two screens say different ones. A player who never played is
 * not in it.
 *
 * @param summaries all of them, oldest first
 */
export const playerTrends = (summaries: readonly Summary[]): Map<string, KindTrend[]> =>
  new Map(
    [...playerStints(summaries)].map(([player, all]) => [
      player,
      byWork(all).map(({ family, onTarget, stints }) => ({
        family,
        onTarget,
        trend: practiceTrend(stints),
      })),
    ]),
  );
