import type { Terms } from '../drill/drill.ts';
import type { Tally } from '../round/tally.ts';
import type { Pace } from '../round/tempo.ts';
import { type Practice, recordedIn } from './practice.ts';

/** What is known of the share of a pair's shots that succeed. */
export interface Consistency {
  /** Mean, 0 to 1. */
  consistency: number;
  /** Standard deviation. */
  consistencySd: number;
}

/** What the model says of one pair's tally: kept beside it, for it takes a phone a while. */
export interface Estimate {
  /** The version of the model that made it. */
  model: number;
  /** What was measured of the drill's clock, where anything was. */
  pace?: Pace;
  /** All touches of the pair: the mean, its sd, and the 10% and 90% quantiles, not yet whole. */
  shots: number;
  sd: number;
  low: number;
  high: number;
  /**
   * Share of the pair's shots that come back; on target that meet it. Left out where the clock never
   * ran or the count contradicts it.
   */
  success?: Consistency;
  /** `on-target` only: each player's own share. */
  own?: Record<string, Consistency>;
  /** More sets than the clock allows: the count wants a look. */
  implausible?: true;
}

/** A tally with what the model of touches said of it, once it was asked (see figures/estimate.ts). */
export type PlayedTally = Tally & { estimate?: Estimate };

/** A round that was played, without its marks. */
export interface PlayedRound {
  id: string;
  ordinal: number;
  terms: Terms;
  /** Live clock as it was recorded. */
  seconds: number;
  settled: boolean;
  doubted?: number;
  tallies: PlayedTally[];
}

/**
 * What figures read of a practice: everything but the marks themselves. A closed practice is
 * stored whole beside it.
 */
export interface Summary {
  practice: string;
  /** YYYY-MM-DD. */
  date: string;
  attended: string[];
  /** What was measured in it, by drill; left out where nothing was. */
  paces?: Record<string, Pace>;
  rounds: PlayedRound[];
}

/** The practice as figures read it at `now`; rounds whose clock never started are left out. */
export function summarise(practice: Practice, now: number): Summary {
  return {
    practice: practice.id,
    date: practice.date,
    attended: practice.attended,
    ...(practice.paces && { paces: practice.paces }),
    rounds: practice.rounds.flatMap(
      ({ id, ordinal, terms, clock, left, settled, doubted, tallies }) =>
        clock
          ? [
              {
                id,
                ordinal,
                terms,
                seconds: recordedIn({ left }, clock, now),
                settled,
                ...(doubted !== undefined && { doubted }),
                tallies,
              },
            ]
          : [],
    ),
  };
}
