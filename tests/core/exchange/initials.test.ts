import fc from 'fast-check';
import { expect, test } from 'vitest';
import { initials } from '../../../core/exchange/initials.ts';

const of = (...names: string[]) => [
  ...initials(new Map(names.map((name, at) => [`id-${at}`, name]))).values(),
];

test('nobody has no initials', () => {
  expect(of()).toEqual([]);
});

test('one letter does where no other name begins with it', () => {
  expect(of('Lin', 'Otto', 'Mia')).toEqual(['L', 'O', 'M']);
});

test('as many letters are taken as tell names apart, case aside', () => {
  expect(of('Lin', 'Leo', 'lisa', 'Otto')).toEqual(['Lin', 'Le', 'lis', 'O']);
});

test('beyond three letters a number tells them apart, so that no long name is given away', () => {
  expect(of('Marta', 'Martin', 'Mark', 'Max')).toEqual(['Mar1', 'Mar2', 'Mar3', 'Max']);
});

test('a short name that begins another is itself', () => {
  expect(of('Al', 'Alex')).toEqual(['Al1', 'Ale']);
});

test('two letters of one emoji stay together', () => {
  expect(of('😀a', '😎b')).toEqual(['😀', '😎']);
});

test('a number passes over what another player already has', () => {
  expect(of('A1', 'A', 'a')).toEqual(['A1', 'A2', 'a3']);
});

test('no two players ever get the same, and it is the same every time', () => {
  const name = fc.string({ unit: fc.constantFrom(...'aAb1é '), maxLength: 5 });
  fc.assert(
    fc.property(fc.array(name, { maxLength: 24 }), (names) => {
      const given = of(...names);
      expect(new Set(given.map((text) => text.toLowerCase())).size).toBe(names.length);
      expect(given.every((text) => text !== '')).toBe(true);
      expect(of(...names)).toEqual(given);
    }),
  );
});
