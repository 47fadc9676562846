import { expect, test } from 'vitest';
import { deedOf, keyOf } from '../../../app/court/keys.ts';

const pairs = ['A', 'B', 'D'].map((letter) => ({ letter }));
const split = [
  { letter: 'A', player: 'pip' },
  { letter: 'A', player: 'juno' },
  { letter: 'B', player: 'odile' },
];

const stroke = (key: string, more: Partial<KeyboardEvent> = {}) => ({
  key,
  code: /^[1-9]$/.test(key) ? `Digit${key}` : `Key${key.toUpperCase()}`,
  shiftKey: false,
  ctrlKey: false,
  altKey: false,
  metaKey: false,
  repeat: false,
  ...more,
});

test('a digit counts for the tile at that side of the order, whatever letters are missing', () => {
  expect(deedOf(stroke('3'), pairs)).toEqual({ do: 'count', side: { letter: 'D' } });
});

test('a letter counts for the pair of that letter, small or large', () => {
  expect(deedOf(stroke('d'), pairs)).toEqual({ do: 'count', side: { letter: 'D' } });
  expect(deedOf(stroke('D'), pairs)).toEqual({ do: 'count', side: { letter: 'D' } });
});

test('a digit or letter that no tile has does nothing', () => {
  expect(deedOf(stroke('4'), pairs)).toBeUndefined();
  expect(deedOf(stroke('c'), pairs)).toBeUndefined();
  expect(deedOf(stroke('Enter', { code: 'Enter' }), pairs)).toBeUndefined();
});

test('Shift takes back, also where it turns the digit into a sign', () => {
  const back = { do: 'take-back', side: { letter: 'B' } };
  expect(deedOf(stroke('B', { shiftKey: true }), pairs)).toEqual(back);
  expect(deedOf(stroke('@', { shiftKey: true, code: 'Digit2' }), pairs)).toEqual(back);
});

test('a French keyboard, whose digits want Shift, counts without it', () => {
  expect(deedOf(stroke('é', { code: 'Digit2' }), pairs)).toEqual({
    do: 'count',
    side: { letter: 'B' },
  });
});

test('the number pad and a clicker that names no side on the keyboard count too', () => {
  for (const code of ['Numpad2', '']) {
    expect(deedOf(stroke('2', { code }), pairs)).toEqual({ do: 'count', side: { letter: 'B' } });
  }
});

test('where tiles are split each has a digit, and a letter would not say which player', () => {
  expect(deedOf(stroke('2'), split)).toEqual({ do: 'count', side: split[1] });
  expect(deedOf(stroke('a'), split)).toBeUndefined();
});

test('the space bar runs the clock', () => {
  expect(deedOf(stroke(' ', { code: 'Space' }), pairs)).toEqual({ do: 'clock' });
});

test('a key that is held down counts once', () => {
  expect(deedOf(stroke('1', { repeat: true }), pairs)).toBeUndefined();
});

test('keys with Ctrl, Alt or Meta are left to the phone', () => {
  for (const held of ['ctrlKey', 'altKey', 'metaKey']) {
    expect(deedOf(stroke('a', { [held]: true }), pairs)).toBeUndefined();
    expect(deedOf(stroke(' ', { [held]: true }), pairs)).toBeUndefined();
  }
});

test('every key that a tile shows counts for that tile', () => {
  const twelve = [...'ABCDEFGHIJKL'].map((letter) => ({ letter }));
  for (const sides of [pairs, split, twelve]) {
    for (const side of sides) {
      const key = keyOf(sides, side);
      expect(deedOf(stroke(key ?? ''), sides)).toEqual({ do: 'count', side });
    }
  }
});

test('a split tile beyond the ninth has no key', () => {
  const many = [...'ABCDE'].flatMap((letter) => [
    { letter, player: `${letter}1` },
    { letter, player: `${letter}2` },
  ]);
  expect(keyOf(many, { letter: 'E', player: 'E1' })).toBe('9');
  expect(keyOf(many, { letter: 'E', player: 'E2' })).toBeUndefined();
});
