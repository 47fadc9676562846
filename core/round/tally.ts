import type { Terms } from '../drill/drill.ts';
import type { Pair } from './pair.ts';

/** How the sets of a pair are counted: tapped as they happen, or called by the pair at the horn. */
export const countingWays = ['tapped', 'called'] as const;
export type CountingWay = (typeof countingWays)[number];

/** One touch of a tile, as settle and the court screen see it. */
export interface Mark {
  id: string;
  player?: string;
  /** Seconds of live clock into the round. */
  second: number;
  /** After the horn: counts only once settle says so. */
  late: boolean;
  /** Faster after the mark before it than the drill allows: counts until settle strikes it. */
  doubtful: boolean;
  takenBack: boolean;
  /** What settle decided, where it did. */
  judged?: boolean;
}

/** The marks of one pair in one round, after corrections. */
export interface Tally {
  pair: Pair;
  /** Completed sets, never negative. For `on-target` the sum over the players. */
  sets: number;
  /**
   * Players of whom nobody knows what they did: the pair counts for itself and was not heard, or
   * nobody watched. All of them, but where each player has an own count. No figure takes it for a
   * round without a set.
   */
  unheard?: string[];
  /** Where the count comes from: left out where it was tapped. */
  origin?: 'called' | 'corrected';
  /** `on-target` only: each player's own. */
  byPlayer?: Record<string, number>;
  /** Seconds of the marks that count, rising. Fewer or more than `sets` where a count was corrected. */
  times: number[];
  /** Marks tapped late or doubtful, whatever was decided of them. */
  late: number;
  doubtful: number;
  /** Late or doubtful marks that settle has not decided. */
  open: number;
  /** Seconds of the round in which this pair played: left out where it was all of them. */
  span?: { from: number; to: number };
  /** The second at which its two players turned their roles; left out where they did not. */
  turned?: number;
  /** Shots of the unfinished set at the horn. */
  showing?: number;
  /** Longest run in a round without a set. */
  best?: number;
  /** What other phones counted of the same pair in the same round: shown, and never added. */
  also?: { phone: string; sets: number; byPlayer?: Record<string, number> }[];
  /** The coach said that this count holds, and not another phone's. */
  chosen?: true;
}

/**
 * Half a second a shot: no pair strikes n shots faster. Elite match play has 1.2 s between hits
 * (Carboch, Placha and Sklenarik 2018), two juniors at the net somewhat less; a second tap on the
 * same tile within n × 0.5 s is far more likely a slip.
 */
export const LEAST_SECONDS_A_SHOT = 0.5;

/** Fewest seconds in which a set of these terms can be struck. */
export const leastSeconds = (terms: Terms): number => terms.size * LEAST_SECONDS_A_SHOT;

/** Whether a mark is in the count. */
export const counts = ({ takenBack, judged, late }: Omit<Mark, 'id' | 'second' | 'doubtful'>) =>
  !takenBack && (judged ?? !late);

/** The most sets of these terms that can be struck in so many seconds: a larger count wants a look. */
export const mostSets = (terms: Terms, seconds: number): number =>
  Math.floor(seconds / leastSeconds(terms));

/** Whether the count of a pair is known at all. */
export const isHeard = ({ pair, unheard }: Pick<Tally, 'pair' | 'unheard'>): boolean =>
  unheard === undefined || unheard.length < pair.players.length;

/** Whether the count that a player has a part in is known. */
export const isHeardOf = ({ unheard }: Pick<Tally, 'unheard'>, player: string): boolean =>
  !unheard?.includes(player);
