import type { Family } from '../../../core/drill/drill.ts';
import type { LevelData, LevelTally } from '../../../core/figures/level-tallies.ts';

/** A tally in which so many of a hundred balls come back, of 30 that were seen, unless told otherwise. */
export function tallyOf(
  day: number,
  players: string,
  percent: number,
  { kind = 'volleys', drill = 'v', seen = 30, practice = `${day}` }: Partial<Given> = {},
): LevelTally {
  const a = 4 + (seen * percent) / 100;
  const b = 1 + (seen * (100 - percent)) / 100;
  const sum = a + b;
  return {
    ...{ practice, day, kind, drill, players: players.split(' ').filter(Boolean) },
    success: { consistency: a / sum, consistencySd: Math.sqrt((a * b) / (sum ** 2 * (sum + 1))) },
  };
}

interface Given {
  kind: Family;
  drill: string;
  seen: number;
  practice: string;
}

export const dataOf = (
  tallies: readonly LevelTally[],
  end = Math.max(...tallies.map(({ day }) => day)),
): LevelData => ({ onTarget: false, tallies, end });
