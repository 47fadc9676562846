import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { CsvError, fromCsv, toCsv } from '../../../core/exchange/csv.ts';

/** Texts rich in the characters that CSV and spreadsheets give a meaning to. */
const anyText = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.string({ unit: fc.constantFrom(...'",;\t\r\n\'=+-@−＝＋－＠\0 \uFEFFaé') }),
);
const anyRows = fc.array(fc.array(anyText, { minLength: 1, maxLength: 6 }), { maxLength: 8 });

const papaparse = (text: string, delimiter = ',') =>
  Papa.parse<string[]>(text, { delimiter, newline: '\r\n' });

function failure(text: string): CsvError {
  try {
    fromCsv(text);
  } catch (error) {
    if (error instanceof CsvError) return error;
    throw error;
  }
  throw new Error('the text was read without an error');
}

describe('toCsv', () => {
  test('no rows are an empty text', () => {
    expect(toCsv([])).toBe('');
  });

  test('every record ends in CRLF, the last one too', () => {
    expect(toCsv([['a'], ['b']])).toBe('a\r\nb\r\n');
  });

  test('a value that is not known is an empty field', () => {
    expect(toCsv([['a', undefined, 3]])).toBe('a,,3\r\n');
  });

  test('a row without fields is a record with one empty field', () => {
    expect(toCsv([[]])).toBe('\r\n');
  });

  test('a number is never guarded, a text that looks like one is', () => {
    expect(toCsv([[-5, 0.25, 1e21, -0, '-5', '5']])).toBe("-5,0.25,1e+21,0,'-5,5\r\n");
  });

  test('a decimal comma goes with semicolons, in numbers only and never guarded', () => {
    expect(toCsv([['a', 'b;c', '1.5', 1.5, -0.25, 1.5e21, 3, undefined]], 'comma')).toBe(
      'a;"b;c";1.5;1,5;-0,25;1,5e+21;3;\r\n',
    );
  });

  test.each([Number.NaN, Infinity, -Infinity])('%s has no cell', (cell) => {
    expect(() => toCsv([[cell]])).toThrow(RangeError);
  });

  test.each(['=', '+', '-', '\u2212', '@', '＝', '＋', '－', '＠', '\t', '\r', '\n', '\0', "'"])(
    'a text that starts with %j gets one apostrophe, which reading takes away',
    (trigger) => {
      const text = `${trigger}1`;
      expect(papaparse(toCsv([[text]])).data[0]).toEqual([`'${text}`]);
      expect(fromCsv(toCsv([[text]]))).toEqual([[text]]);
    },
  );

  test('a formula after spaces of any kind is guarded, since some programs trim', () => {
    expect(toCsv([[' =1', '\u00A0\u3000@x']])).toBe("' =1,'\u00A0\u3000@x\r\n");
  });

  test('a sign inside a text is left alone', () => {
    expect(toCsv([['5-3', "O'Brien", 'a=b', ' lead']])).toBe("5-3,O'Brien,a=b, lead\r\n");
  });
});

describe('fromCsv', () => {
  test('an empty text has no rows', () => {
    expect(fromCsv('')).toEqual([]);
    expect(fromCsv('\uFEFF')).toEqual([]);
  });

  test('a blank line is a record with one empty field', () => {
    expect(fromCsv('a\r\n\r\nb')).toEqual([['a'], [''], ['b']]);
  });

  test.each(['\r\n', '\n', '\r'])('lines may end in %j, with or without a last one', (end) => {
    const rows = [
      ['a', 'b'],
      ['c', ''],
    ];
    expect(fromCsv(`a,b${end}c,`)).toEqual(rows);
    expect(fromCsv(`a,b${end}c,${end}`)).toEqual(rows);
  });

  test('a byte order mark is dropped before a plain and before a quoted field', () => {
    expect(fromCsv('\uFEFFa,b\r\n')).toEqual([['a', 'b']]);
    expect(fromCsv('\uFEFF"a","b"\r\n')).toEqual([['a', 'b']]);
  });

  test.each([';', '\t'])('%j separates where the first record says so', (separator) => {
    const text = `name${separator}rate${separator}note\r\nAna${separator}2,5${separator}"a${separator}b"\r\n`;
    expect(fromCsv(text)).toEqual([
      ['name', 'rate', 'note'],
      ['Ana', '2,5', `a${separator}b`],
    ]);
  });

  test('a separator inside quotes says nothing about the file', () => {
    expect(fromCsv('"a;b;c;d",e\r\n1;2,3\r\n')).toEqual([
      ['a;b;c;d', 'e'],
      ['1;2', '3'],
    ]);
  });

  test('a comma separates where the first record has as many semicolons', () => {
    expect(fromCsv('a;b,c')).toEqual([['a;b', 'c']]);
  });

  test('an apostrophe that guards nothing belongs to the name', () => {
    expect(fromCsv("'t Hooft,O'Brien,'")).toEqual([["'t Hooft", "O'Brien", "'"]]);
  });

  test.each([
    ['a,b\r\nc,"d', 'quote-not-closed', 2],
    ['"', 'quote-not-closed', 1],
    ['"a""', 'quote-not-closed', 1],
    ['a"b,c', 'quote-inside-field', 1],
    ['a,b\nc,d\ne, "f"', 'quote-inside-field', 3],
    ['"a" ,b', 'text-after-quote', 1],
    ['"a\r\nb"\r\n"c"d', 'text-after-quote', 2],
  ])('%j fails with its reason and record', (text, reason, row) => {
    expect(failure(text)).toMatchObject({ name: 'CsvError', reason, row });
  });

  test('never fails otherwise, whatever the text', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        try {
          for (const row of fromCsv(text)) expect(row.length).toBeGreaterThan(0);
        } catch (error) {
          expect(error).toBeInstanceOf(CsvError);
        }
      }),
    );
  });
});

describe('there and back', () => {
  test('any texts come back as they were', () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        expect(fromCsv(toCsv(rows))).toEqual(rows);
      }),
      { numRuns: 2000 },
    );
  });

  test('any texts under a header come back from a file with decimal commas', () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        const table = [['name', 'note'], ...rows];
        expect(fromCsv(toCsv(table, 'comma'))).toEqual(table);
      }),
      { numRuns: 1000 },
    );
  });

  test('any texts come back after a program has put a byte order mark before them', () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        expect(fromCsv(`\uFEFF${toCsv(rows)}`)).toEqual(rows);
      }),
    );
  });

  test('another reader (papaparse) finds the same fields, guarded ones with their apostrophe', () => {
    fc.assert(
      fc.property(anyRows, (rows) => {
        fc.pre(rows.length > 0);
        const { data, errors } = papaparse(toCsv(rows));
        expect(errors).toEqual([]);
        // It reads an empty record after the last line end.
        expect(data.pop()).toEqual(['']);
        expect(data.map((row) => row.length)).toEqual(rows.map((row) => row.length));
        data.flat().forEach((field, i) => {
          const text = rows.flat()[i];
          expect([text, `'${text}`]).toContain(field);
          expect(field).not.toMatch(/^[=+\-@\u2212\uFF1D\uFF0B\uFF0D\uFF20\t\r\n]/);
        });
      }),
      { numRuns: 1000 },
    );
  });

  test.each([',', ';', '\t'])(
    'what another writer (papaparse) separates by %j is read',
    (separator) => {
      // No other separator and no apostrophe: a foreign file may have both, and means itself by them.
      const text = fc.string({ unit: fc.constantFrom(...'"\r\n =-aé', separator) });
      const rows = fc
        .integer({ min: 2, max: 5 })
        .chain((width) => fc.array(fc.array(text, { minLength: width, maxLength: width })));
      fc.assert(
        fc.property(rows, (table) => {
          const written = Papa.unparse(table, { delimiter: separator, newline: '\r\n' });
          expect(fromCsv(written)).toEqual(table);
        }),
      );
    },
  );
});
