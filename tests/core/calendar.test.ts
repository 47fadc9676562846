import {
  addDays as addDaysTo,
  differenceInCalendarDays,
  format,
  getISODay,
  getISOWeek,
  getISOWeeksInYear,
  getISOWeekYear,
  parseISO,
} from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  daysBetween,
  isDate,
  isoWeek,
  readWeekName,
  weekDays,
  weekName,
  weekStep,
  weeksIn,
} from '../../core/calendar.ts';

const anyDate = fc
  .integer({ min: -100_000, max: 100_000 })
  .map((days) => format(addDaysTo(new Date(2000, 0, 1), days), 'yyyy-MM-dd'));
const anyWeek = anyDate.map((date) => {
  const { year, week } = isoWeek(date);
  return { year, week };
});

describe('isoWeek', () => {
  test('agrees with another library (date-fns) on every day from 1895 to 2105', () => {
    const different: string[] = [];
    for (let day = new Date(1895, 0, 1); day.getFullYear() <= 2105; day = addDaysTo(day, 1)) {
      const date = format(day, 'yyyy-MM-dd');
      const ours = isoWeek(date);
      const same =
        ours.year === getISOWeekYear(day) &&
        ours.week === getISOWeek(day) &&
        ours.day === getISODay(day);
      if (!same) different.push(date);
    }
    expect(different).toEqual([]);
  });

  test('the first two centuries are no other centuries', () => {
    // Python: datetime.date(1, 1, 1).isocalendar(), datetime.date(99, 12, 31).isocalendar().
    expect(isoWeek('0001-01-01')).toEqual({ year: 1, week: 1, day: 1 });
    expect(isoWeek('0099-12-31')).toEqual({ year: 99, week: 53, day: 4 });
    expect(isoWeek('9999-12-31')).toEqual({ year: 9999, week: 52, day: 5 });
  });

  test.each([
    '2026-02-30',
    '2025-02-29',
    '1900-02-29',
    '2026-04-31',
    '2026-00-10',
    '2026-13-01',
    '2026-01-00',
    '2026-01-32',
    '0000-01-01',
    '2026-1-5',
    '26-01-05',
    '20260105',
    '2026-01-05T10:00',
    ' 2026-01-05',
    '2026-W01-1',
    '',
  ])('%j is no date', (text) => {
    expect(() => isoWeek(text)).toThrow(RangeError);
    expect(() => addDays(text, 0)).toThrow(/date/);
    expect(() => daysBetween('2026-01-05', text)).toThrow(RangeError);
  });
});

describe('weekDays', () => {
  test('a week has seven days in a row from Monday, each of which knows its week', () => {
    fc.assert(
      fc.property(anyWeek, ({ year, week }) => {
        const days = weekDays(year, week);
        expect(days.map(isoWeek)).toEqual(
          [1, 2, 3, 4, 5, 6, 7].map((day) => ({ year, week, day })),
        );
        expect(days).toEqual([0, 1, 2, 3, 4, 5, 6].map((n) => addDays(days[0]!, n)));
      }),
    );
  });

  test.each([
    [2025, 53],
    [2026, 54],
    [2026, 0],
    [2026, 1.5],
    [2026.5, 1],
    [0, 1],
    [Number.NaN, 1],
    [2026, Number.NaN],
  ])('year %s has no week %s', (year, week) => {
    expect(() => weekDays(year, week)).toThrow(RangeError);
    expect(() => weekStep({ year, week }, 1)).toThrow(RangeError);
  });
});

describe('weeksIn', () => {
  test('agrees with another library (date-fns) on every year from 1900 to 2400', () => {
    for (let year = 1900; year <= 2400; year += 1) {
      expect(weeksIn(year), String(year)).toBe(getISOWeeksInYear(new Date(year, 5, 1)));
    }
  });

  test.each([2026.5, 0, 10_000, Number.NaN, Infinity])('%s is no year', (year) => {
    expect(() => weeksIn(year)).toThrow(/year/);
  });
});

describe('addDays and daysBetween', () => {
  test('agree with another library (date-fns)', () => {
    fc.assert(
      fc.property(anyDate, fc.integer({ min: -5000, max: 5000 }), (date, n) => {
        const later = format(addDaysTo(parseISO(date), n), 'yyyy-MM-dd');
        expect(addDays(date, n)).toBe(later);
        expect(daysBetween(date, later)).toBe(
          differenceInCalendarDays(parseISO(later), parseISO(date)),
        );
      }),
    );
  });

  test('days are whole and stay inside the years 0001 to 9999', () => {
    expect(() => addDays('2026-01-05', 0.5)).toThrow(/n must be/);
    expect(() => addDays('2026-01-05', Number.NaN)).toThrow(RangeError);
    expect(() => addDays('9999-12-31', 1)).toThrow(RangeError);
    expect(() => addDays('0001-01-01', -1)).toThrow(RangeError);
    expect(() => addDays('2026-01-05', 1e300)).toThrow(RangeError);
  });
});

describe('weekStep', () => {
  test('the week after the 53rd is the first of the next year', () => {
    expect(weekStep({ year: 2026, week: 53 }, 1)).toEqual({ year: 2027, week: 1 });
    expect(weekStep({ year: 2026, week: 1 }, -1)).toEqual({ year: 2025, week: 52 });
  });

  test('steps there and back end where they began, seven days a step', () => {
    fc.assert(
      fc.property(anyWeek, fc.integer({ min: -500, max: 500 }), (from, by) => {
        const to = weekStep(from, by);
        expect(weekStep(to, -by)).toEqual(from);
        const [monday, other] = [
          weekDays(from.year, from.week)[0]!,
          weekDays(to.year, to.week)[0]!,
        ];
        expect(daysBetween(monday, other)).toBe(7 * by);
      }),
    );
  });

  test('a step is whole', () => {
    expect(() => weekStep({ year: 2026, week: 1 }, 0.5)).toThrow(/by must be/);
  });
});

describe('isDate', () => {
  test('a date is one exactly where its week can be told', () => {
    const anyDigits = fc
      .tuple(fc.integer({ min: 0, max: 9999 }), fc.nat(14), fc.nat(33))
      .map(([year, month, day]) =>
        [
          String(year).padStart(4, '0'),
          ...[month, day].map((n) => String(n).padStart(2, '0')),
        ].join('-'),
      );
    const hasWeek = (text: string) => {
      try {
        return isoWeek(text).week > 0;
      } catch {
        return false;
      }
    };
    fc.assert(
      fc.property(anyDigits, (text) => {
        expect(isDate(text)).toBe(hasWeek(text));
      }),
    );
  });

  test('what only looks like a date is none', () => {
    expect(['2026-02-28', '2024-02-29', '0001-01-01', '9999-12-31'].every(isDate)).toBe(true);
    const wrong = ['2026-02-29', '2026-2-3', '0000-01-01', '2026-13-01', '2026-01-01T00:00', ''];
    expect(wrong.some(isDate)).toBe(false);
  });
});

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
