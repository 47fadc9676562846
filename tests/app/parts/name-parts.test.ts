import { expect, test } from 'vitest';
import { partsOf } from '../../../app/parts/name-parts.ts';
import { shortName } from '../../../app/parts/short-name.ts';

test('a name that its first letters tell apart is left whole', () => {
  expect(partsOf('Pip', ['Pia', 'Juno'])).toBeUndefined();
  expect(partsOf('Maximilienne', [])).toBeUndefined();
  expect(partsOf('Maximilienne', ['Max', 'Margot'])).toBeUndefined();
});

test('two names that differ in a late letter each keep it in a part of its own', () => {
  expect(partsOf('Alexandra N', ['Pip', 'Alexandra M'])).toEqual({
    head: 'Alexandra ',
    apart: 'N',
    rest: '',
  });
  expect(partsOf('Alexandra', ['Alexandro', 'Alexander'])).toEqual({
    head: 'Alexandr',
    apart: 'a',
    rest: '',
  });
});

test('the parts are the name again, also where letters are pairs of code units', () => {
  const parts = partsOf('Wrenna🎾🎾ab', ['Wrenna🎾🎽ab']);
  expect(parts).toEqual({ head: 'Wrenna🎾', apart: '🎾', rest: 'ab' });
});

test('a name that another goes on from is left whole, and the other keeps what it goes on with', () => {
  expect(partsOf('Wilhelm', ['Wilhelmina'])).toBeUndefined();
  expect(partsOf('Wilhelmina', ['Wilhelm'])?.apart).toBe('i');
});

test('a long name is cut with a sign, and two that begin alike stay apart', () => {
  expect(shortName('Maximilienne', ['Pip'])).toBe('Maximilienne');
  expect(shortName('Wilhelmina-Alexandrina', ['Pip'])).toBe('Wilhelmina…');
  expect(shortName('Wilhelmina-Alexandrin', ['Wilhelmina-Alexandrim'])).toBe('Wilhelmina…n');
  expect(shortName('Maximilian-Theodor', ['Maxima'])).toBe('Maximilian…');
});
