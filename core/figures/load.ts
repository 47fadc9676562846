import { mustMeasure } from '../arguments.ts';

const DAYS = 7;

/**
 * The load of one week and how even it is (Foster 1998, Med. Sci. Sports Exerc. 30: 1164–1168): seven
 * daily loads in any one unit, rest days as 0; all but the two ratios in that unit.
 *
 * Monotony is the daily mean over the standard deviation of the days, strain is load times monotony.
 * Foster does not say which standard deviation; both are given, and the sample's (divisor 6) is the one
 * used. Monotony and strain are `undefined` where all days are equal. Another number of days, and a
 * negative or infinite load, are a RangeError.
 */
export function weekLoad(days: readonly number[]): {
  load: number;
  mean: number;
  sdSample: number;
  sdPopulation: number;
  monotony?: number;
  strain?: number;
} {
  if (days.length !== DAYS) {
    throw new RangeError(`days must be the ${DAYS} of one week, not ${days.length}`);
  }
  for (const day of days) mustMeasure('each of days', day);
  const load = days.reduce((sum, day) => sum + day, 0);
  const mean = load / DAYS;
  // Seven equal days must give exactly 0, and the rounded mean of seven numbers can miss them all.
  const even = days.every((day) => day === days[0]);
  const squares = even ? 0 : days.reduce((sum, day) => sum + (day - mean) ** 2, 0);
  const sdSample = Math.sqrt(squares / (DAYS - 1));
  const week = { load, mean, sdSample, sdPopulation: Math.sqrt(squares / DAYS) };
  if (even) return week;
  const monotony = mean / sdSample;
  return { ...week, monotony, strain: load * monotony };
}
