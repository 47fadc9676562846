import { type Hand, nameFault } from '../ledger/squad.ts';
import { CsvError, fromCsv } from './csv.ts';

/** A player as a file names one. */
export interface RosterPlayer {
  name: string;
  level?: number;
  hand?: Hand;
}

/**
 * Why a row of a file of names cannot be taken. `twice` is a name (or a column) that the file has
 * already had, `taken` one that the squad already has; `encoding` is a text that was not decoded
 * rightly, `quote` one whose quotes do not add up.
 */
export type RosterReason =
  | 'no-name'
  | 'long-name'
  | 'hidden-character'
  | 'taken'
  | 'twice'
  | 'level'
  | 'hand'
  | 'ragged'
  | 'quote'
  | 'no-header-name'
  | 'too-many'
  | 'encoding'
  | 'empty';

export interface RosterFault {
  /** As a spreadsheet numbers its rows: from 1, header and blank rows included. */
  row: number;
  reason: RosterReason;
  /** The start of what stands there, fit to be shown. */
  value?: string;
}

/** Rows of names in one file: far more than a squad has, few enough to read every fault. */
export const MOST_ROWS = 200;

/**
 * The players that a file names, or everything that is wrong with it: one fault refuses the whole
 * file, so that nobody has to find out which half was taken.
 *
 * The file is CSV with the columns name, level (1 to 10) and hand in any order and case, in
 * English, French or Spanish; only the name is needed, columns of other headings are left unread.
 * Without a header it is a list of names, one a line. Blank rows are passed over.
 *
 * @param text the file's text, undefined where its bytes could not be decoded
 * @param taken the names already in the squad
 */
export function readRoster(
  text: string | undefined,
  taken: Iterable<string>,
): { players: RosterPlayer[] } | { faults: RosterFault[] } {
  if (text === undefined) return { faults: [{ row: 1, reason: 'encoding' }] };
  // The first record tells the separator, so blank lines before it are only counted.
  const top = /^\uFEFF?(?:[^\S\r\n]*(?:\r\n|\r|\n))*/.exec(text)?.[0] ?? '';
  const above = top.match(/\r\n|\r|\n/g)?.length ?? 0;
  let records: string[][];
  try {
    records = fromCsv(text.slice(top.length));
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    return { faults: [{ row: above + error.row, reason: 'quote' }] };
  }
  const rows = records
    .map((cells, index) => ({ row: above + index + 1, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const [first] = rows;
  if (!first) return { faults: [{ row: 1, reason: 'empty' }] };

  const header = headerOf(first.cells);
  if ('reason' in header) return { faults: [{ row: first.row, ...header }] };
  const body = header.listed ? rows : rows.slice(1);
  if (body.length === 0) return { faults: [{ row: first.row, reason: 'empty' }] };
  const beyond = body[MOST_ROWS];
  if (beyond) {
    return { faults: [{ row: beyond.row, reason: 'too-many', value: String(body.length) }] };
  }

  const others = [...taken];
  const before: string[] = [];
  const players: RosterPlayer[] = [];
  const faults: RosterFault[] = [];
  for (const { row, cells } of body) {
    const fault = (reason: RosterReason, value: string) =>
      faults.push({ row, reason, ...(value !== '' && { value: showable(value) }) });
    const { columns } = header;
    if (cells.some((cell) => cell.includes(REPLACEMENT))) {
      fault('encoding', cells.find((cell) => cell.includes(REPLACEMENT)) ?? '');
      continue;
    }
    if (cells.length < columns.length || cells.slice(columns.length).some((cell) => cell !== '')) {
      fault('ragged', cells.join(' '));
      continue;
    }
    const cellOf = (column: Column) => cells[columns.indexOf(column)] ?? '';

    const name = cellOf('name');
    const wrong = nameFault(name, others);
    if (wrong) fault(REASONS[wrong], name);
    else if (nameFault(name, before)) fault('twice', name);
    before.push(name);

    const level = levelOf(cellOf('level'));
    if (Number.isNaN(level)) fault('level', cellOf('level'));
    const hand = HANDS.get(plain(cellOf('hand')));
    if (!hand && cellOf('hand') !== '') fault('hand', cellOf('hand'));
    players.push({ name, ...(level !== undefined && { level }), ...(hand && { hand }) });
  }
  return faults.length > 0 ? { faults } : { players };
}

type Column = 'name' | 'level' | 'hand';

const HEADINGS: ReadonlyMap<string, Column> = new Map([
  ['name', 'name'],
  ['nom', 'name'],
  ['nombre', 'name'],
  ['level', 'level'],
  ['niveau', 'level'],
  ['nivel', 'level'],
  ['hand', 'hand'],
  ['main', 'hand'],
  ['mano', 'hand'],
]);

const HANDS: ReadonlyMap<string, Hand> = new Map([
  ...['right', 'r', 'droite', 'droitier', 'droitiere', 'derecha', 'diestro', 'diestra', 'd'].map(
    (word): [string, Hand] => [word, 'right'],
  ),
  ...['left', 'l', 'gauche', 'gaucher', 'gauchere', 'g', 'izquierda', 'zurdo', 'zurda', 'i'].map(
    (word): [string, Hand] => [word, 'left'],
  ),
]);

const REASONS = {
  empty: 'no-name',
  long: 'long-name',
  hidden: 'hidden-character',
  taken: 'taken',
} as const satisfies Record<string, RosterReason>;

/** What a decoder puts where the bytes made no sense. */
const REPLACEMENT = '\uFFFD';

/** A word without its case and accents. */
const plain = (word: string) => word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** What the columns hold; `listed` where the first row is no header but the first name of a list. */
function headerOf(
  cells: readonly string[],
): { columns: (Column | undefined)[]; listed: boolean } | { reason: RosterReason; value: string } {
  const width = cells.findLastIndex((cell) => cell !== '') + 1;
  const columns = cells.slice(0, width).map((cell) => HEADINGS.get(plain(cell)));
  const again = columns.findIndex((column, at) => column && columns.indexOf(column) < at);
  if (again >= 0) return { reason: 'twice', value: showable(cells[again] ?? '') };
  if (columns.includes('name')) return { columns, listed: false };
  if (width === 1 && columns[0] === undefined) return { columns: ['name'], listed: true };
  return { reason: 'no-header-name', value: showable(cells.join(' ')) };
}

/** Undefined for an empty cell, NaN for one that is no level. Some spreadsheets write 7,5. */
function levelOf(cell: string): number | undefined {
  if (cell === '') return undefined;
  const level = /^\d+(?:[.,]\d+)?$/.test(cell) ? Number(cell.replace(',', '.')) : Number.NaN;
  return level >= 1 && level <= 10 ? level : Number.NaN;
}

/** Twenty characters, with a mark in place of any that would hide or turn the message round. */
const showable = (value: string) =>
  [...value.slice(0, 40)]
    .slice(0, 20)
    .join('')
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, REPLACEMENT);
