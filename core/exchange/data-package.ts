import { countingRules, families } from '../drill/drill.ts';
import { attendance } from '../figures/attendance.ts';
import type { Summary } from '../ledger/summary.ts';
import type { CsvCell } from './csv.ts';
import { TALLY_COLUMNS, type TallyColumn } from './tallies.ts';

/*
 * What an analyst is told of the tables, in the form of a Tabular Data Package with its Table Schema
 * (Frictionless Data, specs.frictionlessdata.io, version 1): types, units, what an empty cell means.
 */

interface Field {
  type: 'string' | 'integer' | 'number' | 'date';
  description: string;
  /** Of the quantity, where it has one. */
  unit?: string;
  constraints?: {
    required?: true;
    minimum?: number;
    maximum?: number;
    enum?: readonly string[];
  };
}

const required = { required: true } as const;
const none = { minimum: 0 };
const share = { minimum: 0, maximum: 1 };

/** Every column of the table of tallies: one that is not described here does not compile. */
const TALLY_FIELDS: Record<TallyColumn, Field> = {
  date: { type: 'date', description: 'Date of the practice', constraints: required },
  practice: {
    type: 'integer',
    description: 'Which practice of that date, from 1',
    constraints: { ...required, minimum: 1 },
  },
  round: {
    type: 'integer',
    description: 'Which round of the practice, from 1',
    constraints: { ...required, minimum: 1 },
  },
  drill: { type: 'string', description: 'Name of the drill, in the language of the phone' },
  family: { type: 'string', description: 'Family of strokes', constraints: { enum: families } },
  counting_rule: {
    type: 'string',
    description: 'How a set is completed',
    constraints: { enum: countingRules },
  },
  set_size: {
    type: 'integer',
    description: 'Shots in one set',
    unit: 'shots',
    constraints: { minimum: 1 },
  },
  player: { type: 'string', description: 'Nickname or initials', constraints: required },
  partners: { type: 'string', description: 'The others of the pair or trio, with + between them' },
  role: {
    type: 'string',
    description: '1, 2, or turns',
    constraints: { enum: ['1', '2', 'turns'] },
  },
  sets: {
    type: 'number',
    description: 'Completed sets; empty where the count was not heard',
    unit: 'sets',
    constraints: { minimum: 0 },
  },
  touches_counted: {
    type: 'number',
    description: 'The player’s touches in completed sets',
    unit: 'touches',
    constraints: { minimum: 0 },
  },
  live_seconds: {
    type: 'number',
    description: 'The player’s own live clock',
    unit: 's',
    constraints: { minimum: 0 },
  },
  sets_per_minute: { type: 'number', description: 'Sets by live clock', unit: 'sets/min' },
  late_marks: { type: 'integer', description: 'Marks of the pair after the horn' },
  doubtful_marks: {
    type: 'integer',
    description: 'Marks of the pair sooner than a set can be struck',
  },
  quality: { type: 'string', description: 'Left for whoever judges it' },
  touches_estimated: {
    type: 'number',
    description: 'All touches of the player, by the model of the clock',
    unit: 'touches',
  },
  touches_low: {
    type: 'number',
    description: 'Lower 80% limit of all touches',
    unit: 'touches',
  },
  touches_high: {
    type: 'number',
    description: 'Upper 80% limit of all touches',
    unit: 'touches',
  },
  consistency: {
    type: 'number',
    description:
      'Share of the pair’s shots that come back; on target the player’s own that meet it',
    constraints: share,
  },
  consistency_low: { type: 'number', description: 'Lower 80% limit', constraints: share },
  consistency_high: { type: 'number', description: 'Upper 80% limit', constraints: share },
  counted_by: {
    type: 'string',
    description: 'Where the count comes from',
    constraints: { enum: ['tapped', 'called', 'corrected', 'not heard'] },
  },
  focus: {
    type: 'string',
    description: 'What was looked at in the round; empty where nothing was',
  },
  looks: { type: 'integer', description: 'Looks at the player', unit: 'looks', constraints: none },
  held: {
    type: 'integer',
    description: 'Looks at the player in which the focus was held',
    unit: 'looks',
    constraints: none,
  },
  round_looks: {
    type: 'integer',
    description: 'Looks at anybody in the round',
    unit: 'looks',
    constraints: none,
  },
  round_held: {
    type: 'integer',
    description: 'Looks at anybody in the round in which the focus was held',
    unit: 'looks',
    constraints: none,
  },
  drill_id: { type: 'string', description: 'The drill’s own id', constraints: required },
};

const ATTENDANCE_FIELDS: Record<'date' | 'player', Field> = {
  date: { type: 'date', description: 'Date of the practice', constraints: required },
  player: { type: 'string', description: 'Nickname or initials', constraints: required },
};

/** Who was there on which date, header first. */
export const attendanceRows = (
  summaries: readonly Summary[],
  nameOf: (player: string) => string,
): CsvCell[][] => [
  Object.keys(ATTENDANCE_FIELDS),
  ...[...attendance(summaries)].flatMap(([date, players]) =>
    [...players].map((player) => [date, nameOf(player)]),
  ),
];

/**
 * The description that goes beside `tallies.csv` and `attendance.csv` (written by `toCsv` with a
 * point for the decimal sign).
 *
 * @param name lower-case letters, digits, `.`, `_` and `-`
 */
export const dataPackage = (name: string) => ({
  profile: 'tabular-data-package',
  name,
  title: 'Practice counts from Rally Ledger',
  resources: [
    resource('tallies', 'One row for each player in each round', TALLY_COLUMNS, TALLY_FIELDS),
    resource(
      'attendance',
      'One row for each player on each date',
      ['date', 'player'],
      ATTENDANCE_FIELDS,
    ),
  ],
});

const resource = <Column extends string>(
  name: string,
  description: string,
  columns: readonly Column[],
  fields: Record<Column, Field>,
) => ({
  profile: 'tabular-data-resource',
  name,
  description,
  path: `${name}.csv`,
  format: 'csv',
  mediatype: 'text/csv',
  encoding: 'utf-8',
  schema: {
    fields: columns.map((column) => ({ name: column, ...fields[column] })),
    missingValues: [''],
  },
});
