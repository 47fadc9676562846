import type { Summary } from '../ledger/summary.ts';
import { LATELY_WEEKS } from './lately.ts';
import { type PracticeTrend, practiceTrend } from './practice-trend.ts';
import { byWork, type KindOfWork, lastWeeks } from './review.ts';
import { playerStints } from './stints.ts';

/** Whether a player's consistency at one kind of work rises or falls. */
export interface KindTrend extends KindOfWork {
  trend: PracticeTrend;
}

/**
 * Every player's trends over the last twelve weeks, the practices that the levels rest on, a kind of
 * work each in the order of the families: the one source of the word, so that no two screens say
 * different ones. A player who did not play in these weeks is not in it.
 *
 * In simulation the word cries falsely no oftener than it promises (one in ten) also of balls on
 * target: of 8% with one such round a practice, of 10% with six (tests/bench/levels.ts; 36
 * practices, 60 seasons of twelve players); of who rises by 0.8 logit in twelve weeks it says rising in 33 and in 94%.
 *
 * @param summaries all of them, oldest first
 */
export function playerTrends(summaries: readonly Summary[]): Map<string, KindTrend[]> {
  const { now } = lastWeeks(
    summaries.filter(({ struck }) => !struck),
    LATELY_WEEKS,
  );
  return new Map(
    [...playerStints(now)].map(([player, all]) => [
      player,
      byWork(all).map(({ family, onTarget, stints }) => ({
        family,
        onTarget,
        trend: practiceTrend(stints),
      })),
    ]),
  );
}
