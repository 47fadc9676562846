import { daysBetween } from '../calendar.ts';

/** Practices that are older than so many days and in no copy are too many to lose. */
const DAYS_WITHOUT_COPY = 7;

/**
 * Whether more than a week of practice is in no copy: a practice of more than seven days ago that
 * was held after the last copy was made. All dates are YYYY-MM-DD.
 *
 * @param copied the date of the last copy; undefined where there is none
 */
export const copyDue = (
  practices: readonly string[],
  copied: string | undefined,
  today: string,
): boolean =>
  practices.some(
    (date) =>
      (copied === undefined || date > copied) && daysBetween(date, today) > DAYS_WITHOUT_COPY,
  );
