import type { Terms } from './drill.ts';
import { type Practice, recordedIn, type Tally } from './practice.ts';

/** A round that was played, without its marks. */
export interface PlayedRound {
  id: string;
  ordinal: number;
  terms: Terms;
  /** Live clock as it was recorded. */
  seconds: number;
  settled: boolean;
  doubted?: number;
  tallies: Tally[];
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
  rounds: PlayedRound[];
}

/** The practice as figures read it at `now`; rounds whose clock never started are left out. */
export function summarise(practice: Practice, now: number): Summary {
  return {
    practice: practice.id,
    date: practice.date,
    attended: practice.attended,
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
