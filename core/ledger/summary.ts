import type { Terms } from '../drill/drill.ts';
import type { Look } from '../round/look.ts';
import type { Tally } from '../round/tally.ts';
import type { Pace } from '../round/tempo.ts';
import {
  type Effort,
  type Practice,
  recordedIn,
  roundsThatCount,
  type Stretch,
} from './practice.ts';

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
  /** Its place among the rounds of the practice, from 0; one that was struck out leaves a gap. */
  ordinal: number;
  terms: Terms;
  /** Live clock as it was recorded. */
  seconds: number;
  settled: boolean;
  jumped?: number;
  /** Stretches of the clock in which nobody watched; left out where there are none. */
  unwatched?: Stretch[];
  /** What was looked at; left out where nothing was. */
  focus?: string;
  /** Looks at its players that somebody answered; left out where there are none. */
  looks?: Look[];
  tallies: PlayedTally[];
}

/**
 * Seconds of live clock in which a pair was watched at play: of its part of the round, without the
 * stretches in which nobody looked.
 */
export function secondsOf(
  { seconds, unwatched = [] }: Pick<PlayedRound, 'seconds' | 'unwatched'>,
  { span = { from: 0, to: seconds } }: Pick<Tally, 'span'>,
): number {
  const inside = ({ from, to }: Stretch) =>
    Math.max(0, Math.min(to, span.to, seconds) - Math.max(from, span.from));
  return unwatched.reduce((left, stretch) => left - inside(stretch), inside(span));
}

/**
 * The version of what a summary says of its practice: one that an earlier version made is made anew
 * from the practice.
 */
export const SUMMARY_VERSION = 3;

/**
 * What figures read of a practice: everything but the marks themselves. A closed practice is
 * stored whole beside it.
 */
export interface Summary {
  version: number;
  practice: string;
  /** YYYY-MM-DD. */
  date: string;
  /** The stamp of its opening. */
  opened: string;
  /** Struck out by the coach: then nobody was present and nothing was played. */
  struck?: true;
  /** Who was present. */
  attended: string[];
  /** What was measured in it, by drill; left out where nothing was. */
  paces?: Record<string, Pace>;
  /** How hard and how long it was, by player; left out where nobody said. */
  efforts?: Record<string, Effort>;
  rounds: PlayedRound[];
}

/** The practice as figures read it at `now`; rounds that do not count are left out. */
export function summarise(practice: Practice, now: number): Summary {
  const { id, date, opened, attended, paces, efforts, struck } = practice;
  return {
    version: SUMMARY_VERSION,
    practice: id,
    date,
    opened,
    ...(struck && { struck }),
    attended: struck ? [] : attended,
    ...(paces && { paces }),
    ...(efforts && !struck && { efforts }),
    rounds: roundsThatCount(practice).flatMap(
      ({ id, ordinal, terms, clock, left, settled, jumped, unwatched, focus, looks, tallies }) =>
        clock && tallies.length > 0
          ? [
              {
                id,
                ordinal,
                terms,
                seconds: recordedIn({ left }, clock, now),
                settled,
                ...(jumped !== undefined && { jumped }),
                ...(unwatched && { unwatched }),
                ...(focus !== undefined && { focus }),
                ...(looks && { looks }),
                tallies,
              },
            ]
          : [],
    ),
  };
}

/** Practices in the order in which they were held: by date, and by their opening on one date. */
export const inOrderHeld = (
  a: Pick<Summary, 'date' | 'opened'>,
  b: Pick<Summary, 'date' | 'opened'>,
): number => (a.date === b.date ? (a.opened < b.opened ? -1 : 1) : a.date < b.date ? -1 : 1);

/** The summary with what an earlier one of the same practice had worked out of the same tallies. */
export function withEstimatesOf(summary: Summary, earlier: Summary | undefined): Summary {
  if (!earlier) return summary;
  const known = new Map(
    earlier.rounds.flatMap((round) =>
      round.tallies.flatMap(({ estimate, ...tally }) =>
        estimate ? [[workedOutOf(round, tally), estimate] as const] : [],
      ),
    ),
  );
  if (known.size === 0) return summary;
  return {
    ...summary,
    rounds: summary.rounds.map((round) => ({
      ...round,
      tallies: round.tallies.map((tally) => {
        const estimate = known.get(workedOutOf(round, tally));
        return estimate ? { ...tally, estimate } : tally;
      }),
    })),
  };
}

/** All that an estimate is made from, but for what was measured of the drill's clock. */
export const workedOutOf = ({ terms, seconds, unwatched }: PlayedRound, tally: Tally): string =>
  JSON.stringify([terms, seconds, unwatched, tally]);
