import fc from 'fast-check';
import { expect, test } from 'vitest';
import { weekStep, weeksIn } from '../../../core/exchange/week.ts';
import { readWeekName, weekName } from '../../../core/exchange/week-name.ts';

test('a week is written as ISO 8601 writes it', () => {
  // ISO 8601-1:2019, 5.2.3: YYYY-Www, both padded with zeros (from memory).
  expect(weekName({ year: 2026, week: 48 })).toBe('2026-W48');
  expect(weekName({ year: 26, week: 3 })).toBe('0026-W03');
});

test('every name reads back as its week, and has a week before and after it', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 9998 }),
      fc.integer({ min: 1, max: 52 }),
      (year, week) => {
        expect(readWeekName(weekName({ year, week }))).toEqual({ year, week });
        expect(weekStep(weekStep({ year, week }, -1), 1)).toEqual({ year, week });
        expect(weekStep(weekStep({ year, week }, 1), -1)).toEqual({ year, week });
      },
    ),
  );
});

test('week 53 is read only in a year that has it', () => {
  expect(weeksIn(2026)).toBe(53);
  expect(readWeekName('2026-W53')).toEqual({ year: 2026, week: 53 });
  expect(weeksIn(2027)).toBe(52);
  expect(readWeekName('2027-W53')).toBeUndefined();
});

test('a text in any other form names no week', () => {
  for (const text of [
    '',
    '2026',
    '2026-48',
    '2026-W5',
    '2026-W00',
    '2026-w48',
    ' 2026-W48',
    '٢٠٢٦-W48',
  ]) {
    expect(readWeekName(text), text).toBeUndefined();
  }
});

test('the first and the last year of the calendar are not read', () => {
  for (const text of ['0000-W01', '0001-W01', '9999-W52']) {
    expect(readWeekName(text), text).toBeUndefined();
  }
});
