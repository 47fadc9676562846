import type { Family } from '../../core/drill/drill.ts';
import type { LevelTally } from '../../core/figures/level-tallies.ts';

/** A mean and its sd, as levels and changes are published. */
export interface Sum {
  mean: number;
  sd: number;
}

/** A tally as levels.json and level-fits.json have it, one practice a day. */
export interface PublishedTally {
  day: number;
  kind: Family;
  drill: string;
  players: string[];
  consistency: number;
  sd: number;
}

export const levelTally = ({ consistency, sd, ...tally }: PublishedTally): LevelTally => ({
  ...tally,
  practice: `${tally.day}`,
  success: { consistency, consistencySd: sd },
});

/** A squad of level-fits.json, with what R makes of it. */
export interface FittedCase {
  name: string;
  onTarget: boolean;
  kappa: number;
  end: number;
  tallies: PublishedTally[];
  expected: {
    kind: Family;
    player: string;
    other: string;
    level: Sum;
    difference: Sum;
    apart: Sum;
    week: Sum;
  }[];
}
