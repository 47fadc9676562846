import { localeOf } from './locale.ts';

/**
 * What a language's numbers, dates, plurals and lists look like, in the country that the phone had
 * as the app was opened; every file of words has its own.
 */
export function formats(code: string) {
  const language = localeOf(code, globalThis.navigator?.languages ?? []);
  const one = new Intl.NumberFormat(language, { maximumFractionDigits: 1 });
  // What is counted is whole: a share of the balls of a set that was turned in need not be.
  const number = new Intl.NumberFormat(language, { maximumFractionDigits: 0 });
  const plural = new Intl.PluralRules(language);
  const isOne = (n: number) => plural.select(n) === 'one';
  const ofDay = (shown: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat(language, { ...shown, day: 'numeric', timeZone: 'UTC' });
  return {
    number,
    /** Up to one place after the point, and up to two. */
    one,
    two: new Intl.NumberFormat(language, { maximumFractionDigits: 2, useGrouping: false }),
    /** The sign between the whole and the parts. */
    decimalSign: one.formatToParts(0.5).find(({ type }) => type === 'decimal')?.value,
    /** Exactly one place after the point, and exactly two. */
    tenths: decimals(language, 1),
    hundredths: decimals(language, 2),
    percent: new Intl.NumberFormat(language, { style: 'percent' }),
    day: ofDay({ weekday: 'long', month: 'long' }),
    shortDay: ofDay({ month: 'short' }),
    weekday: ofDay({ weekday: 'short' }),
    month: new Intl.DateTimeFormat(language, {
      month: 'short',
      year: '2-digit',
      timeZone: 'UTC',
    }),
    span: ofDay({ month: 'long', year: 'numeric' }),
    list: new Intl.ListFormat(language, { type: 'conjunction' }),
    /** Whether a number asks for the singular: 1 in English, 0 and 1 in French. */
    isOne,
    /** A number with what it counts. */
    count: (n: number, single: string, many: string) =>
      `${number.format(n)} ${isOne(n) ? single : many}`,
  };
}

const decimals = (language: string, places: number) =>
  new Intl.NumberFormat(language, {
    minimumFractionDigits: places,
    maximumFractionDigits: places,
  });

/** Midnight of a date YYYY-MM-DD, for a format of days. */
export const at = (date: string): Date => new Date(`${date}T00:00:00Z`);
