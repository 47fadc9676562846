import { expect, test } from 'vitest';
import { isoWeek, weekDays, weeksIn } from '../../core/calendar.ts';
import { check, checks, named } from './values.ts';

const dates = [...checks('H.1'), ...checks('H.2')];

test.each(dates.map((c) => [named(c), c] as const))('%s', (_, c) => {
  const { iso_year: year, iso_week: week, iso_weekday: day, week_starts_monday } = c.expected;
  expect(isoWeek(c.inputs.date)).toEqual({ year, week, day });
  expect(weekDays(year, week)[0]).toBe(week_starts_monday);
  expect(weekDays(year, week)[day - 1]).toBe(c.inputs.date);
});

const yearsFrom = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, i) => first + i);

test(named(check('H.53weeks')), () => {
  const { inputs, expected } = check('H.53weeks');
  const long = yearsFrom(inputs.from_year, inputs.to_year).filter((year) => weeksIn(year) === 53);
  expect(long).toEqual(expected.years_with_53_weeks);
});

test(named(check('H.71in400')), () => {
  const { expected } = check('H.71in400');
  const weeks = yearsFrom(2000, 2399).map(weeksIn);
  const total = weeks.reduce<number>((sum, n) => sum + n, 0);
  expect(weeks.filter((n) => n === 53)).toHaveLength(expected.years_with_53_weeks);
  expect(total).toBe(expected.total_weeks);
  expect(total * 7).toBe(expected.total_days);
});
