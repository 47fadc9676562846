import { daysBetween } from '../calendar.ts';
import type { Family } from '../drill/drill.ts';
import type { Consistency, Summary } from '../ledger/summary.ts';
import { countedAs, isOnTarget } from './stints.ts';

/** A tally as the model of level reads it. */
export interface LevelTally {
  practice: string;
  /** A whole number of days from any one day. */
  day: number;
  kind: Family;
  /** What can be counted together, see `countedAs`. */
  drill: string;
  /** Whose balls they were, each of them as many. */
  players: readonly string[];
  /** Share of the balls that came back, or met the target. */
  success: Consistency;
}

/** What a level is fitted to: balls that come back and balls that meet a target are two fits. */
export interface LevelData {
  onTarget: boolean;
  tallies: readonly LevelTally[];
  /** The day of the last practice there is, whether or not a tally is of it. */
  end: number;
}

/**
 * The tallies of practices whose estimates say something: of balls that come back one for each pair
 * or trio; on target one for each player, whose own share it is. Undefined where there is no
 * practice that was not struck out.
 *
 * @param summaries in any order
 */
export function levelTallies(
  summaries: readonly Summary[],
  onTarget: boolean,
): LevelData | undefined {
  const held = summaries.filter(({ struck }) => !struck);
  if (held.length === 0) return undefined;
  const days = held.map(({ date }) => daysBetween(FIRST_DATE, date));
  const tallies = held.flatMap(({ practice, rounds }, place) =>
    rounds.flatMap(({ terms, tallies }): LevelTally[] => {
      if (isOnTarget({ terms }) !== onTarget) return [];
      const { family: kind } = terms;
      const common = { practice, day: days[place]!, kind, drill: countedAs(terms) };
      return tallies.flatMap(({ pair: { players }, estimate }) =>
        onTarget
          ? players.flatMap((player) => {
              const success = estimate?.own?.[player];
              return success ? [{ ...common, players: [player], success }] : [];
            })
          : estimate?.success
            ? [{ ...common, players, success: estimate.success }]
            : [],
      );
    }),
  );
  return { onTarget, tallies, end: Math.max(...days) };
}

const FIRST_DATE = '1970-01-01';
