/** What a cell can hold on the way out; `undefined` ("not enough data") is written as nothing. */
export type CsvCell = string | number | undefined;

/**
 * Why a text could not be read: a quoted field that is never closed, a quote inside a field that
 * did not start with one, or text between a closing quote and the next separator.
 */
export type CsvReason = 'quote-not-closed' | 'quote-inside-field' | 'text-after-quote';

/** A text that is not CSV. `row` is the record's number, from 1 and the header included. */
export class CsvError extends Error {
  constructor(
    readonly reason: CsvReason,
    readonly row: number,
  ) {
    super(`${reason} (record ${row})`);
    this.name = 'CsvError';
  }
}

/**
 * How a file writes its numbers. `point`: RFC 4180, with commas between the fields. `comma`: for
 * spreadsheets that take a point for no number, with semicolons between the fields.
 */
export type DecimalSign = 'point' | 'comma';

/**
 * Rows as CSV: RFC 4180 (with semicolons where the decimal sign is the comma), every record ending
 * in CRLF, fields quoted where they need it. A file with decimal commas tells its semicolons by its
 * first record: that must be a header.
 *
 * A text that a spreadsheet could take for a formula gets one apostrophe before it, which `fromCsv`
 * takes away again; numbers are what they are and never get one. A row without fields is written
 * like a row with one empty field, since CSV has no other way to say it.
 *
 * @throws RangeError for a number that is not finite: no spreadsheet has a cell for it.
 */
export function toCsv(
  rows: readonly (readonly CsvCell[])[],
  decimal: DecimalSign = 'point',
): string {
  const separator = decimal === 'comma' ? ';' : ',';
  const written = (cell: CsvCell) => field(cell, decimal);
  return rows.map((row) => `${row.map(written).join(separator)}\r\n`).join('');
}

/**
 * The rows of a CSV text, every field as text: RFC 4180, and what spreadsheets write beside it.
 * Lines may end in CRLF, LF or CR, the last line end may be missing, a byte order mark is dropped.
 * The separator is the one of comma, semicolon and TAB that the first record has most of (comma
 * where they tie), because spreadsheets write semicolons where the comma is the decimal sign.
 * Fields guarded by `toCsv` come back as they were: `fromCsv(toCsv(rows))` is `rows` for any texts.
 *
 * @throws CsvError where quotes do not add up.
 */
export function fromCsv(text: string): string[][] {
  const body = text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
  const separator = separatorOf(body);
  const rows: string[][] = [];
  let at = 0;

  const quotedField = (): string => {
    let value = '';
    for (;;) {
      const close = body.indexOf('"', at + 1);
      if (close < 0) throw new CsvError('quote-not-closed', rows.length + 1);
      value += body.slice(at + 1, close);
      at = close + 1;
      if (body[at] !== '"') break;
      value += '"';
    }
    if (!endsField(body[at], separator)) throw new CsvError('text-after-quote', rows.length + 1);
    return value;
  };

  const plainField = (): string => {
    const start = at;
    while (!endsField(body[at], separator)) {
      if (body[at] === '"') throw new CsvError('quote-inside-field', rows.length + 1);
      at += 1;
    }
    return body.slice(start, at);
  };

  while (at < body.length) {
    const row: string[] = [];
    for (;;) {
      row.push(unguard(body[at] === '"' ? quotedField() : plainField()));
      if (body[at] !== separator) break;
      at += 1;
    }
    rows.push(row);
    at += body.startsWith('\r\n', at) ? 2 : 1;
  }
  return rows;
}

const BYTE_ORDER_MARK = '\uFEFF';
const SEPARATORS = [',', ';', '\t'] as const;

/**
 * What may start a formula: = + - @ and their full-width forms and the minus sign U+2212, also after
 * spaces, since some programs trim; TAB, CR, LF and NUL. (OWASP, "CSV Injection", and Application
 * Security Verification Standard 5.0, 1.2.10.) The apostrophe is here so that taking one away on
 * reading always gives back what was written.
 */
const STARTS_FORMULA = /^(?:\s*[=+\-@\u2212\uFF1D\uFF0B\uFF0D\uFF20]|[\t\r\n\0'])/;

/**
 * A comma, quote or line end must be quoted. Semicolon and TAB are quoted too, or a reader that
 * finds the separator by itself could take them for it; a byte order mark, or it would be dropped.
 */
const NEEDS_QUOTES = /[",;\t\r\n\uFEFF]/;

function field(cell: CsvCell, decimal: DecimalSign): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') {
    if (!Number.isFinite(cell)) throw new RangeError(`a cell must be a finite number, not ${cell}`);
    return decimal === 'comma' ? String(cell).replace('.', ',') : String(cell);
  }
  const text = STARTS_FORMULA.test(cell) ? `'${cell}` : cell;
  return NEEDS_QUOTES.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/** Only an apostrophe that guards something is a guard: a name such as 't Hooft keeps its own. */
function unguard(text: string): string {
  return text.startsWith("'") && STARTS_FORMULA.test(text.slice(1)) ? text.slice(1) : text;
}

function endsField(character: string | undefined, separator: string): boolean {
  return (
    character === undefined || character === separator || character === '\r' || character === '\n'
  );
}

function separatorOf(body: string): string {
  const seen = new Map<string, number>(SEPARATORS.map((separator) => [separator, 0]));
  let quoted = false;
  for (const character of body) {
    if (character === '"') quoted = !quoted;
    if (quoted) continue;
    if (character === '\r' || character === '\n') break;
    const count = seen.get(character);
    if (count !== undefined) seen.set(character, count + 1);
  }
  return [...seen].reduce((best, next) => (next[1] > best[1] ? next : best))[0];
}
