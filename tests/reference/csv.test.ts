import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { fromCsv, toCsv } from '../../core/exchange/csv.ts';
import { check, checks, named } from './values.ts';

const papaparse = (text: string) => {
  const rows = Papa.parse<string[]>(text, { delimiter: ',' }).data;
  return rows.at(-1)?.join('') === '' ? rows.slice(0, -1) : rows;
};

test.each(checks('K.parse.').map((c) => [named(c), c] as const))('reads %s', (_, c) => {
  expect(fromCsv(c.inputs.text)).toEqual(c.expected.rows);
  expect(papaparse(c.inputs.text)).toEqual(c.expected.rows);
});

test.each(checks('K.write.').map((c) => [named(c), c] as const))('writes %s', (_, c) => {
  expect(toCsv(c.inputs.rows)).toBe(c.expected.text_minimal_quoting);
  expect(papaparse(toCsv(c.inputs.rows))).toEqual(c.inputs.rows);
});

// Three answers of the table are not a plain "this is a formula". A text '=1 is none, and is guarded
// because its apostrophe would be taken for a guard on reading. For a text -5 and for a text with a
// space before the sign, the table's words leave one safe choice: guard.
test.each(checks('K.inject.').map((c) => [named(c), c] as const))('guards %s', (_, c) => {
  const text: string = c.inputs.field;
  const guarded = c.expected.starts_a_formula !== false || text.startsWith("'");
  expect(papaparse(toCsv([[text]]))).toEqual([[guarded ? `'${text}` : text]]);
  expect(fromCsv(toCsv([[text]]))).toEqual([[text]]);
});

test('K.inject.10: the number -5 stays a number', () => {
  expect(toCsv([[-5]])).toBe('-5\r\n');
});

test(named(check('K.roundtrip')), () => {
  const { rows } = check('K.roundtrip').inputs;
  expect(fromCsv(toCsv(rows))).toEqual(rows);
});
