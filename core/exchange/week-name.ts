import { type Week, weeksIn } from './week.ts';

/** A week as ISO 8601 writes it: '2026-W48'. */
export const weekName = ({ year, week }: Week): string =>
  `${String(year).padStart(4, '0')}-W${String(week).padStart(2, '0')}`;

/**
 * The week that a text in the form '2026-W48' names; undefined where it is in another form or the
 * year has no such week. The calendar's first and last year are left out, so that the weeks before
 * and after always exist.
 */
export function readWeekName(text: string): Week | undefined {
  const parts = /^(\d{4})-W(\d{2})$/.exec(text);
  const year = Number(parts?.[1]);
  const week = Number(parts?.[2]);
  return year > 1 && year < 9999 && week >= 1 && week <= weeksIn(year) ? { year, week } : undefined;
}
