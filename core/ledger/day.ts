import type { PracticeEntry } from './entry.ts';
import type { Practice } from './practice.ts';

/**
 * Which practice is under way. A practice belongs to the date on which it was opened; one that goes
 * on past midnight stays the same. Dates are the phone's own, so how a time becomes a date is told.
 */

/** So long after the last thing done on the court a practice goes on into another date. */
export const GOES_ON_MS = 4 * 3_600_000;

/**
 * Milliseconds since 1970 of the last thing that belongs to the practice itself: on its date, or
 * within four hours of what came before. What is put right days later does not make it go on.
 *
 * @param entries the practice's own, sorted by id
 * @param dateOf the date of a time on this phone
 */
export function lastOnCourt(
  entries: readonly PracticeEntry[],
  date: string,
  dateOf: (time: number) => string,
): number {
  let last = entries[0]?.at ?? 0;
  for (const { at } of entries) {
    if (at - last < GOES_ON_MS || dateOf(at) === date) last = at;
  }
  return last;
}

/** A practice, and when the last thing was done in it. */
export interface Held {
  practice: Practice;
  /** Milliseconds since 1970, as `lastOnCourt` has it. */
  last: number;
}

/** Whether a practice goes on at `now`, on the phone's date `today`. */
export const goesOn = ({ practice, last }: Held, today: string, now: number): boolean =>
  !practice.closed &&
  !practice.struck &&
  (practice.date === today || Math.abs(now - last) < GOES_ON_MS);

/** The practice that is under way, the one opened last where several are. */
export function underWay(held: readonly Held[], today: string, now: number): Held | undefined {
  return byOpening(held).findLast((each) => goesOn(each, today, now));
}

/** The practice that was opened last. */
export const openedLast = (held: readonly Held[]): Held | undefined => byOpening(held).at(-1);

/**
 * Whether a practice can be put away: it is over, and nobody would look for it among what is going
 * on. The one opened last stays at hand on its date, since it can be reopened.
 */
export function isPast(each: Held, held: readonly Held[], today: string, now: number): boolean {
  if (goesOn(each, today, now)) return false;
  return openedLast(held)?.practice.id !== each.practice.id || each.practice.date !== today;
}

const byOpening = (held: readonly Held[]): Held[] =>
  held.toSorted((a, b) => (a.practice.opened < b.practice.opened ? -1 : 1));
