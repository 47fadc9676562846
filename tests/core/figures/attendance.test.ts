import { expect, test } from 'vitest';
import { attendance, daysThere } from '../../../core/figures/attendance.ts';
import type { Summary } from '../../../core/ledger/summary.ts';
import { practiceWith, roundWith, termsWith } from '../made.ts';

const practice = (date: string, attended: string[], id = date): Summary => ({
  ...practiceWith(date, [], id),
  attended,
});

test('who was there is told date by date, whatever the order of the practices', () => {
  const days = attendance([practice('2026-11-25', ['cy', 'ana']), practice('2026-11-23', ['bo'])]);
  expect([...days].map(([date, there]) => [date, ...there])).toEqual([
    ['2026-11-23', 'bo'],
    ['2026-11-25', 'cy', 'ana'],
  ]);
});

test('two practices of one date are one day', () => {
  const both = [
    practice('2026-11-23', ['ana', 'bo'], 'morning'),
    practice('2026-11-23', ['ana', 'cy'], 'evening'),
  ];
  expect([...(attendance(both).get('2026-11-23') ?? [])]).toEqual(['ana', 'bo', 'cy']);
  expect(daysThere(both)).toEqual(
    new Map([
      ['ana', 1],
      ['bo', 1],
      ['cy', 1],
    ]),
  );
});

test('days are counted for each player, and one who never was there is not in it', () => {
  const days = daysThere([practice('2026-11-23', ['ana', 'bo']), practice('2026-11-25', ['ana'])]);
  expect(days).toEqual(
    new Map([
      ['ana', 2],
      ['bo', 1],
    ]),
  );
});

test('a practice that nobody came to and nothing was played in is no day of practice', () => {
  expect(attendance([practice('2026-11-23', [])]).size).toBe(0);
});

test('a practice that was played is a day, also where everyone of it was put right to away', () => {
  const round = roundWith(0, termsWith(), [[['ana', 'bo'], 3]]);
  const played = { ...practiceWith('2026-11-23', [round]), attended: [] };
  expect(attendance([played])).toEqual(new Map([['2026-11-23', new Set()]]));
});

test('no practices are no days', () => {
  expect(attendance([]).size).toBe(0);
  expect(daysThere([]).size).toBe(0);
});
