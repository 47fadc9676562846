import type { Terms } from './drill.ts';
import type { Estimate } from './figures/estimate.ts';
import { type Practice, recordedIn, type Tally } from './practice.ts';
import type { Pace } from './tempo.ts';

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
