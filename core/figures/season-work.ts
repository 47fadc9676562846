import { addDays } from '../calendar.ts';
import { type Family, families, type Stroke, strokes } from '../drill/drill.ts';
import type { Summary } from '../ledger/summary.ts';
import { sumEstimates } from './all-touches.ts';
import { shares, type Touches } from './counted.ts';
import { pooledMean } from './pooled.ts';
import { isOnTarget, pairStints, playerStints, type Stint } from './stints.ts';

/** What a family came to in a month. */
export interface MonthWork {
  /** YYYY-MM. */
  month: string;
  /** All touches where they were worked out, else those in completed sets. */
  balls: number;
  /** The share of balls that came back; undefined where nothing is known of it. */
  share?: number;
}

/**
 * How work and level went over the months, by family, the newest month last; of the squad, or of one
 * player. A month without any round is not in it; a family that was left out in a month has 0 balls.
 *
 * @param summaries in any order
 * @param months at most so many, the newest
 */
export function seasonWork(
  summaries: readonly Summary[],
  months: number,
  player?: string,
): { family: Family; months: MonthWork[] }[] {
  const stints =
    player === undefined ? pairStints(summaries) : (playerStints(summaries).get(player) ?? []);
  const byMonth = new Map<string, Stint[]>();
  for (const stint of stints) {
    const month = stint.date.slice(0, 7);
    byMonth.set(month, [...(byMonth.get(month) ?? []), stint]);
  }
  const newest = [...byMonth].sort(([a], [b]) => (a < b ? -1 : 1)).slice(-months);
  return families.map((family) => ({
    family,
    months: newest.map(([month, all]) => {
      const own = all.filter(({ terms }) => terms.family === family);
      const share = pooledMean(own.filter((stint) => !isOnTarget(stint)));
      const { all: touches, counted } = sumEstimates(own);
      return {
        ...{ month, balls: touches?.touches ?? counted },
        ...(share !== undefined && { share }),
      };
    }),
  }));
}

/** A term: so many weeks up to the last practice. */
export const TERM_WEEKS = 12;

/**
 * What a term of such practice adds up to: the balls in completed sets by stroke, in the order of the
 * strokes, over the last twelve weeks; of the squad, or of one player.
 *
 * @param summaries in any order
 */
export function termTouches(
  summaries: readonly Summary[],
  player?: string,
): { stroke: Stroke; touches: number }[] {
  const last = summaries
    .map(({ date }) => date)
    .sort()
    .at(-1);
  const first = last === undefined ? '' : addDays(last, 1 - 7 * TERM_WEEKS);
  const sum: Touches = {};
  for (const { date, rounds } of summaries) {
    if (date < first) continue;
    for (const { terms, seconds, tallies } of rounds) {
      for (const share of tallies.flatMap((tally) => shares(terms, tally, seconds))) {
        if (player !== undefined && share.player !== player) continue;
        for (const stroke of strokes) {
          sum[stroke] = (sum[stroke] ?? 0) + (share.touches[stroke] ?? 0);
        }
      }
    }
  }
  return strokes.map((stroke) => ({ stroke, touches: sum[stroke] ?? 0 }));
}
