/**
 * The ISO 8601 calendar: weeks that start on Monday, week 1 being the one with the year's first
 * Thursday. Dates are texts 'YYYY-MM-DD' of the years 0001 to 9999, without a time or a time zone:
 * a practice belongs to the day that was on the coach's calendar.
 */

/** A week by its ISO year, which near 1 January can differ from the calendar year. */
export interface Week {
  year: number;
  week: number;
}

/** Whether a text is a date, and not merely looks like one (2026-02-30, 2026-2-3). */
export const isDate = (text: string): boolean => dayOf(text) !== undefined;

/**
 * The ISO week of a date and its day, 1 for Monday to 7 for Sunday.
 *
 * @throws RangeError for a text that is no date (2026-02-30, 2026-2-3).
 */
export function isoWeek(date: string): Week & { day: number } {
  const day = dayNumber(date);
  const weekday = modulo(day - MONDAY, 7) + 1;
  // A week lies in the year of its Thursday.
  const thursday = day - weekday + 4;
  const year = new Date(thursday * DAY).getUTCFullYear();
  return { year, week: Math.floor((thursday - firstOfJanuary(year)) / 7) + 1, day: weekday };
}

/**
 * The seven dates of a week, Monday first.
 *
 * @throws RangeError for a week that the year does not have.
 */
export function weekDays(year: number, week: number): string[] {
  const monday = mondayOf({ year, week });
  return Array.from({ length: 7 }, (_, i) => dateOf(monday + i));
}

/**
 * How many weeks an ISO year has: 53 where it starts or ends on a Thursday, else 52.
 *
 * @throws RangeError for a year that is not whole or not in 1 to 9999.
 */
export function weeksIn(year: number): 52 | 53 {
  if (!Number.isInteger(year) || year < 1 || year > 9999) {
    throw new RangeError(`year must be a whole number from 1 to 9999, not ${year}`);
  }
  return (firstMonday(year + 1) - firstMonday(year)) / 7 === 53 ? 53 : 52;
}

/**
 * The date `n` days later, earlier where `n` is negative.
 *
 * @throws RangeError for a text that is no date, an `n` that is not whole, or a result outside the
 * years 0001 to 9999.
 */
export function addDays(date: string, n: number): string {
  if (!Number.isInteger(n)) throw new RangeError(`n must be a whole number of days, not ${n}`);
  return dateOf(dayNumber(date) + n);
}

/**
 * The week `by` weeks later, earlier where `by` is negative.
 *
 * @throws RangeError for a week that the year does not have, or a `by` that is not whole.
 */
export function weekStep(from: Week, by: number): Week {
  if (!Number.isInteger(by)) throw new RangeError(`by must be a whole number of weeks, not ${by}`);
  const { year, week } = isoWeek(dateOf(mondayOf(from) + 7 * by));
  return { year, week };
}

/**
 * Whole days from `a` to `b`, negative where `b` is the earlier one.
 *
 * @throws RangeError for a text that is no date.
 */
export function daysBetween(a: string, b: string): number {
  return dayNumber(b) - dayNumber(a);
}

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

/** Milliseconds of a day: UTC has no days of another length. */
const DAY = 86_400_000;

/** Day numbers count from 1970-01-01, a Thursday, so day 4 is a Monday. */
const MONDAY = 4;

function dayNumber(date: string): number {
  const day = dayOf(date);
  if (day === undefined) {
    throw new RangeError(`date must be a day of the calendar as YYYY-MM-DD, not ${date}`);
  }
  return day;
}

/** Days that were read once: of ten seasons the same two thousand are asked for again and again. */
const read = new Map<string, number | undefined>();
const MOST_READ = 5_000;

function dayOf(date: string): number | undefined {
  if (read.has(date)) return read.get(date);
  if (read.size >= MOST_READ) read.clear();
  const day = readDay(date);
  read.set(date, day);
  return day;
}

function readDay(date: string): number | undefined {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  const day = parts ? utcDay(Number(parts[1]), Number(parts[2]), Number(parts[3])) : Number.NaN;
  // A day that its month does not have would roll over into the next one.
  return textOf(day) === date ? day : undefined;
}

function dateOf(day: number): string {
  const date = textOf(day);
  if (date === undefined) throw new RangeError('the date is outside the years 0001 to 9999');
  return date;
}

function textOf(day: number): string | undefined {
  return day >= FIRST_DAY && day <= LAST_DAY
    ? new Date(day * DAY).toISOString().slice(0, 10)
    : undefined;
}

function utcDay(year: number, month: number, day: number): number {
  // Date.UTC takes the years 0 to 99 for 1900 to 1999; 400 years are a whole number of days.
  return Date.UTC(year + 400, month - 1, day) / DAY - DAYS_OF_400_YEARS;
}

const DAYS_OF_400_YEARS = 146_097;
const FIRST_DAY = utcDay(1, 1, 1);
const LAST_DAY = utcDay(9999, 12, 31);

function firstOfJanuary(year: number): number {
  return utcDay(year, 1, 1);
}

/** The Monday of week 1, the week that 4 January lies in. */
function firstMonday(year: number): number {
  const fourth = firstOfJanuary(year) + 3;
  return fourth - modulo(fourth - MONDAY, 7);
}

function mondayOf({ year, week }: Week): number {
  if (!Number.isInteger(week) || week < 1 || week > weeksIn(year)) {
    throw new RangeError(`week must be a week of ${year}, not ${week}`);
  }
  return firstMonday(year) + 7 * (week - 1);
}

function modulo(value: number, divisor: number): number {
  return ((value % divisor) + divisor) % divisor;
}
