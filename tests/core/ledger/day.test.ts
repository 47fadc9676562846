import { describe, expect, test } from 'vitest';
import {
  GOES_ON_MS,
  goesOn,
  type Held,
  isPast,
  lastOnCourt,
  openedLast,
  underWay,
} from '../../../core/ledger/day.ts';
import type { PracticeEntry } from '../../../core/ledger/entry.ts';
import type { Practice } from '../../../core/ledger/practice.ts';

const HOUR = 3_600_000;
/** Days of UTC, so that no zone of the machine matters. */
const dateOf = (time: number) => new Date(time).toISOString().slice(0, 10);
const at = (text: string) => Date.parse(`${text}Z`);

const held = (date: string, last: string, over: Partial<Practice> = {}): Held => ({
  practice: {
    ...{ id: `${date} ${last}`, date, opened: `${date} ${last}`, here: [], attended: [] },
    ...{ rounds: [], closed: false, struck: false },
    ...over,
  },
  last: at(last),
});
const on = (each: Held, now: string) => goesOn(each, dateOf(at(now)), at(now));

describe('a practice', () => {
  const evening = held('2026-03-02', '2026-03-02T23:30');

  test('goes on all its date, however long nothing was said', () => {
    expect(on(held('2026-03-02', '2026-03-02T07:00'), '2026-03-02T22:00')).toBe(true);
  });

  test('goes on past midnight while something is done in it', () => {
    expect(on(evening, '2026-03-03T00:10')).toBe(true);
    expect(on(evening, '2026-03-03T03:29')).toBe(true);
  });

  test('is over the next morning, before anything is written', () => {
    expect(on(evening, '2026-03-03T03:31')).toBe(false);
    expect(on(evening, '2026-03-03T17:00')).toBe(false);
  });

  test('is over once it is closed or struck out', () => {
    expect(
      on({ ...evening, practice: { ...evening.practice, closed: true } }, '2026-03-02T23:31'),
    ).toBe(false);
    expect(
      on({ ...evening, practice: { ...evening.practice, struck: true } }, '2026-03-02T23:31'),
    ).toBe(false);
  });
});

describe('the last thing that was done on the court', () => {
  const said = (...times: string[]) => times.map((time) => ({ at: at(time) }) as PracticeEntry);

  test('is the last of its date, and what follows it within four hours', () => {
    const day = said('2026-03-02T09:00', '2026-03-02T23:50', '2026-03-03T00:20');
    expect(lastOnCourt(day, '2026-03-02', dateOf)).toBe(at('2026-03-03T00:20'));
  });

  test('is nothing that was put right on another day', () => {
    const later = said('2026-03-02T18:00', '2026-03-03T08:00', '2026-03-03T08:01');
    expect(lastOnCourt(later, '2026-03-02', dateOf)).toBe(at('2026-03-02T18:00'));
    expect(GOES_ON_MS).toBe(4 * HOUR);
  });
});

describe('of several practices', () => {
  const morning = held('2026-03-02', '2026-03-02T09:00', { closed: true });
  const evening = held('2026-03-02', '2026-03-02T18:00');
  const tuesday = held('2026-02-24', '2026-02-24T18:00');
  const all = [evening, tuesday, morning];
  const now = at('2026-03-02T19:00');

  test('the one under way is that which was opened last and is not over', () => {
    expect(underWay(all, '2026-03-02', now)).toBe(evening);
    expect(underWay([tuesday, morning], '2026-03-02', now)).toBeUndefined();
    expect(underWay([], '2026-03-02', now)).toBeUndefined();
  });

  test('all are past but the one under way, and the last one on its own date', () => {
    const past = (each: Held, of = all) => isPast(each, of, '2026-03-02', now);
    expect([tuesday, morning, evening].map((each) => past(each))).toEqual([true, true, false]);
    // Closed a moment ago, it can still be reopened; the next day it cannot.
    expect(past(morning, [morning, tuesday])).toBe(false);
    expect(isPast(morning, [morning], '2026-03-03', now + 24 * HOUR)).toBe(true);
    expect(openedLast(all)).toBe(evening);
  });
});
