import { expect, test } from 'vitest';
import { lastDay } from '../../../core/figures/last-day.ts';
import { practiceWith, roundWith, termsWith } from '../made.ts';

const rally = termsWith();
const monday = practiceWith('2026-11-23', [roundWith(0, rally, [[['ana', 'bo'], 3]])]);
const wednesday = practiceWith('2026-11-25', [roundWith(0, rally, [[['ana', 'cy'], 4]])]);

test("a player's last day is the last on which the player played, not the squad's last", () => {
  expect(lastDay([monday, wednesday], 'bo')?.day.date).toBe('2026-11-23');
  expect(lastDay([monday, wednesday], 'ana')?.day.date).toBe('2026-11-25');
});

test('the order of the practices does not matter', () => {
  expect(lastDay([wednesday, monday], 'ana')).toEqual(lastDay([monday, wednesday], 'ana'));
});

test('being there without playing is no day of play', () => {
  const there = { ...practiceWith('2026-11-27', []), attended: ['ana'] };
  expect(lastDay([monday, there], 'ana')?.day.date).toBe('2026-11-23');
  expect(lastDay([there], 'ana')).toBeUndefined();
});

test('one who never played has no last day', () => {
  expect(lastDay([], 'ana')).toBeUndefined();
  expect(lastDay([monday], 'dee')).toBeUndefined();
});

test('two practices of one date are one day, neither of them earlier than the other', () => {
  const evening = practiceWith(
    '2026-11-25',
    [roundWith(0, rally, [[['bo', 'ana'], 5]])],
    'evening',
  );
  const last = lastDay([monday, wednesday, evening], 'ana');
  expect(last?.day.rounds).toEqual([...wednesday.rounds, ...evening.rounds]);
  expect(last?.day.attended).toEqual(['ana', 'cy', 'bo']);
  expect(last?.earlier).toEqual([monday]);
});

test('the other players’ later days are not among the earlier ones', () => {
  expect(lastDay([monday, wednesday], 'bo')?.earlier).toEqual([]);
});
