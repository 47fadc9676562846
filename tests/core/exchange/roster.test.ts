import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toCsv } from '../../../core/exchange/csv.ts';
import { MOST_ROWS, type RosterFault, readRoster } from '../../../core/exchange/roster.ts';
import { LONGEST_NAME } from '../../../core/ledger/squad.ts';

const taken = (text: string | undefined, names: string[] = []) => readRoster(text, names);
const faults = (text: string | undefined, names: string[] = []): RosterFault[] => {
  const reading = readRoster(text, names);
  if ('players' in reading) throw new Error('the file was taken');
  return reading.faults;
};

describe('a file that is taken', () => {
  test('gives names, levels and hands', () => {
    expect(taken('name,level,hand\r\nLin,7,right\r\nOtto,3.5,left\r\nMia,,\r\n')).toEqual({
      players: [
        { name: 'Lin', level: 7, hand: 'right' },
        { name: 'Otto', level: 3.5, hand: 'left' },
        { name: 'Mia' },
      ],
    });
  });

  test('has its columns in any order and case, and others are left unread', () => {
    expect(taken('Born,HAND,Name\n2014-02-03,L,Lin\n')).toEqual({
      players: [{ name: 'Lin', hand: 'left' }],
    });
  });

  test('needs no column but the name', () => {
    expect(taken('name\nLin\n')).toEqual({ players: [{ name: 'Lin' }] });
  });

  test('without a header is a list of names, one a line', () => {
    expect(taken('Lin\nOtto\n')).toEqual({ players: [{ name: 'Lin' }, { name: 'Otto' }] });
  });

  test.each(['nom;niveau;main\nLin;7,5;gaucher\n', 'Nombre;Nivel;Mano\nLin;7,5;Zurdo\n'])(
    'can be headed in French or Spanish, with their decimal comma: %j',
    (text) => {
      expect(taken(text)).toEqual({ players: [{ name: 'Lin', level: 7.5, hand: 'left' }] });
    },
  );

  test.each([
    ['droite', 'right'],
    ['D', 'right'],
    ['diestro', 'right'],
    ['R', 'right'],
    ['g', 'left'],
    ['Gauchère', 'left'],
    ['izquierda', 'left'],
  ])('says %s for the %s hand', (word, hand) => {
    expect(taken(`name,hand\nLin,${word}\n`)).toEqual({ players: [{ name: 'Lin', hand }] });
  });

  test('may have blank rows anywhere, and blank cells after its columns', () => {
    expect(taken('\uFEFF\r\n \r\nname;level;;\r\n;;;\r\nLin;5;;\r\n\r\n')).toEqual({
      players: [{ name: 'Lin', level: 5 }],
    });
  });

  test('gives back any names that were written by toCsv', () => {
    const name = fc
      .string({ unit: fc.constantFrom(...'aé,;"\'=+-@ 名😀'), minLength: 1, maxLength: 8 })
      .map((text) => `n${text}`.trim());
    fc.assert(
      fc.property(fc.uniqueArray(name, { minLength: 1, maxLength: 20 }), (names) => {
        const csv = toCsv([['name'], ...names.map((each) => [each])]);
        expect(taken(csv)).toEqual({ players: names.map((each) => ({ name: each })) });
      }),
    );
  });
});

describe('one fault refuses the whole file', () => {
  test('and every fault is told with its row', () => {
    const text = 'name,level,hand\nLin,5,right\n\n,5,right\nOtto,eleven,both\nLIN,11,\n';
    expect(faults(text)).toEqual([
      { row: 4, reason: 'no-name' },
      { row: 5, reason: 'level', value: 'eleven' },
      { row: 5, reason: 'hand', value: 'both' },
      { row: 6, reason: 'twice', value: 'LIN' },
      { row: 6, reason: 'level', value: '11' },
    ]);
  });

  test('a name that the squad has is taken, whatever its case', () => {
    expect(faults('name\nlin\n', ['Lin'])).toEqual([{ row: 2, reason: 'taken', value: 'lin' }]);
  });

  test('a name may be as long as any other, and no longer', () => {
    expect(taken(`name\n${'a'.repeat(LONGEST_NAME)}\n`)).toHaveProperty('players');
    expect(faults(`name\n${'a'.repeat(10_000)}\n`)).toEqual([
      { row: 2, reason: 'long-name', value: 'a'.repeat(20) },
    ]);
  });

  test('a hidden character is refused and never handed on', () => {
    expect(faults('name\nLin\u202Exe\n')).toEqual([
      { row: 2, reason: 'hidden-character', value: 'Lin\uFFFDxe' },
    ]);
  });

  test.each(['0', '-1', '10.5', '1e1', '5/10', 'NaN', 'Infinity', '=5'])(
    '%s is no level',
    (level) => {
      expect(faults(`name,level\nLin,${level}\n`)).toEqual([
        { row: 2, reason: 'level', value: level },
      ]);
    },
  );

  test('a row with more or fewer cells than the header is ragged', () => {
    expect(faults('name,level\nLin\nOtto,5,left\n')).toEqual([
      { row: 2, reason: 'ragged', value: 'Lin' },
      { row: 3, reason: 'ragged', value: 'Otto 5 left' },
    ]);
    expect(faults('Lin\nOtto,5\n')).toEqual([{ row: 2, reason: 'ragged', value: 'Otto 5' }]);
  });

  test('quotes that do not add up are told with their row', () => {
    expect(faults('\nname\n"Lin\n')).toEqual([{ row: 3, reason: 'quote' }]);
    expect(faults('name\nL"in\n')).toEqual([{ row: 2, reason: 'quote' }]);
  });

  test('a table needs a column of names', () => {
    expect(faults('Lin,5,right\n')).toEqual([
      { row: 1, reason: 'no-header-name', value: 'Lin 5 right' },
    ]);
    expect(faults('level\n5\n')).toEqual([{ row: 1, reason: 'no-header-name', value: 'level' }]);
  });

  test('a column that is there twice leaves open which one is meant', () => {
    expect(faults('name,Nom\nLin,Otto\n')).toEqual([{ row: 1, reason: 'twice', value: 'Nom' }]);
  });

  test('two hundred rows are read, one more is too many', () => {
    const rows = (count: number) => Array.from({ length: count }, (_, at) => `Player ${at}\n`);
    expect(taken(`name\n${rows(MOST_ROWS).join('')}`)).toHaveProperty('players.length', 200);
    expect(faults(`name\n${rows(MOST_ROWS + 1).join('')}`)).toEqual([
      { row: 202, reason: 'too-many', value: '201' },
    ]);
  });

  test('a text that was not decoded, or not rightly, is told as its encoding', () => {
    expect(faults(undefined)).toEqual([{ row: 1, reason: 'encoding' }]);
    expect(faults('name\nAndr\uFFFD\n')).toEqual([
      { row: 2, reason: 'encoding', value: 'Andr\uFFFD' },
    ]);
  });

  test.each(['', '\uFEFF', '\n\n', ' , ,\n'])('%j is empty', (text) => {
    expect(faults(text)).toEqual([{ row: 1, reason: 'empty' }]);
  });

  test('a header alone is empty', () => {
    expect(faults('\nname,level\n\n')).toEqual([{ row: 2, reason: 'empty' }]);
  });

  test('any text at all is taken or told, never thrown', () => {
    const unit = fc.constantFrom(...'name,;\t\r\n"\'5\u202E\uFEFF ', '\ud800', '😀');
    fc.assert(
      fc.property(fc.string({ unit, maxLength: 60 }), (text) => {
        const reading = taken(text);
        if ('faults' in reading) {
          expect(reading.faults.length).toBeGreaterThan(0);
          for (const { row, value } of reading.faults) {
            expect(row).toBeGreaterThan(0);
            expect([...(value ?? '')].length).toBeLessThanOrEqual(20);
            expect(value ?? '').not.toMatch(/[\u202E\uFEFF]/);
          }
        } else {
          expect(reading.players.length).toBeGreaterThan(0);
        }
      }),
    );
  });
});
