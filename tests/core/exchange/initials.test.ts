import fc from 'fast-check';
import { expect, test } from 'vitest';
import { initials } from '../../../core/exchange/initials.ts';
import { nameFault } from '../../../core/ledger/squad.ts';

const of = (...names: string[]) => [
  ...initials(new Map(names.map((name, at) => [`id-${at}`, name]))).values(),
];

test('nobody has no initials', () => {
  expect(of()).toEqual([]);
});

test('one letter does where nobody who joined before begins with it', () => {
  expect(of('Lin', 'Otto', 'Mia')).toEqual(['L', 'O', 'M']);
});

test('a number tells apart who begin with the same letter, case and accents aside', () => {
  expect(of('Lin', 'Leo', 'lisa', 'Émile', 'Emma')).toEqual(['L', 'L2', 'l3', 'É', 'E2']);
});

test('no initial is a whole name of anybody', () => {
  expect(of('Ana', 'Andy')).toEqual(['A', 'A2']);
  expect(of('Al', 'A', 'a2', 'Alex')).toEqual(['A3', '1', 'a4', 'A5']);
  expect(of('A', '1', '李', '李娜', '2x')).toEqual(['2', '3', '4', '李2', '22']);
});

test('a letter keeps its accents, its vowel signs, its tone and what it is joined with', () => {
  expect(of('Zoe\u0301', 'E\u0301mile', 'किरण', 'のぞみ', '👩🏽‍🚀Mo', '🇫🇷Luc', '😀a')).toEqual([
    'Z',
    'É',
    'कि',
    'の',
    '👩🏽‍🚀',
    '🇫🇷',
    '😀',
  ]);
  expect(of('👩🏽‍🚀', '🇫🇷', 'Å')).toEqual(['1', '2', '3']);
});

test('letters that only their case tells apart are the same: ß and ss, both sigmas', () => {
  expect(of('ßen', 'SSen', 'ςa', 'Σb')).toEqual(['ß', 'S', 'ς', 'Σ2']);
});

test('whoever joins later changes nobody’s', () => {
  const four = of('Ana', 'Andy', 'Bo', 'Al');
  expect(of('Ana', 'Andy', 'Bo', 'Al', 'Amir', 'Bea').slice(0, 4)).toEqual(four);
});

test('of any squad no two get the same, none is a name, none holds all of its own name, none is longer than a letter and two digits, and it is the same every time', () => {
  // The platform's own idea of a letter (Unicode Standard Annex 29).
  const letters = new Intl.Segmenter();
  const fold = (text: string) => text.trim().normalize('NFKC').toLowerCase();
  const name = fc
    .string({
      unit: fc.constantFrom(
        ...'aAb1é#2ßς',
        'e\u0301',
        '\u0301',
        '李',
        'कि',
        '👩🏽‍🚀',
        '\u200d',
        ' ',
      ),
      minLength: 1,
      maxLength: 5,
    })
    .filter((each) => nameFault(each) === undefined);
  fc.assert(
    fc.property(fc.uniqueArray(name, { maxLength: 24, selector: fold }), (names) => {
      const given = of(...names);
      expect(new Set(given.map(fold)).size).toBe(names.length);
      const whole = new Set(names.map(fold));
      given.forEach((short, at) => {
        expect(short.trim()).not.toBe('');
        expect(whole.has(fold(short)), short).toBe(false);
        expect(fold(short)).not.toContain(fold(names[at] ?? ''));
        expect([...letters.segment(short)].length, short).toBeLessThanOrEqual(3);
      });
      expect(of(...names)).toEqual(given);
    }),
    { numRuns: 500 },
  );
});
