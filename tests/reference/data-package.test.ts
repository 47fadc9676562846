import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DuckDBInstance } from '@duckdb/node-api';
import { Ajv } from 'ajv';
import { strFromU8, unzipSync } from 'fflate';
import { afterAll, describe, expect, test } from 'vitest';
import { analystFiles, analystZip } from '../../app/handover/analyst-zip.ts';
import { fromCsv } from '../../core/exchange/csv.ts';
import { byPlayer } from '../../core/figures/totals.ts';
import { isKnown } from '../../core/ledger/entry.ts';
import { foldPractice } from '../../core/ledger/practice.ts';
import { type Summary, summarise } from '../../core/ledger/summary.ts';
import { season } from '../../demo-data/season.ts';

/*
 * The schema is that of Tabular Data Package 1.0 as it is published at
 * specs.frictionlessdata.io/schemas/tabular-data-package.json, in the copy that the npm package
 * `datapackage` 1.1.10 (MIT) carries.
 */
const { $schema: _, ...published } = JSON.parse(
  readFileSync(new URL('tabular-data-package.json', import.meta.url), 'utf8'),
);
const validate = new Ajv({ strict: false, validateFormats: false }).compile(published);

const naming = {
  player: (id: string) => id,
  drill: ({ drill }: { drill: string }) => drill,
  focus: (id: string) => id,
};

const known = new Map<number, Summary[]>();

/** Two weeks of an invented squad, each made once. */
function summariesOf(seed: number): Summary[] {
  const summaries = known.get(seed) ?? invented(seed);
  known.set(seed, summaries);
  return summaries;
}

function invented(seed: number): Summary[] {
  const { practices } = season({ seed, players: 8, weeks: 2, perWeek: 2, lastDate: '2026-03-04' });
  return practices.flatMap(({ entries }) => {
    const practice = foldPractice(entries.filter(isKnown));
    return practice ? [summarise(practice, Date.parse('2026-04-01'))] : [];
  });
}
const filesOf = (seed: number) => analystFiles(summariesOf(seed), `coach-${seed}`, naming);

describe('an export for analysts', () => {
  test('is a zip that holds its description and its tables', async () => {
    const files = filesOf(1);
    const zip = analystZip(files, 'week');
    const inside = unzipSync(new Uint8Array(await zip.arrayBuffer()));
    expect(Object.keys(inside)).toEqual(['datapackage.json', 'tallies.csv', 'attendance.csv']);
    for (const [path, text] of Object.entries(files)) expect(strFromU8(inside[path]!)).toBe(text);
  });

  test('is described as the published schema of a Tabular Data Package asks', () => {
    const described = JSON.parse(filesOf(1)['datapackage.json']!);
    expect(validate(described), JSON.stringify(validate.errors)).toBe(true);
    // And the schema bites.
    described.resources[0].schema.fields[0].type = 'day';
    expect(validate(described)).toBe(false);
  });

  test('describes every column that stands in its tables, in their order', () => {
    const files = filesOf(1);
    for (const { path, schema } of JSON.parse(files['datapackage.json']!).resources) {
      const [header] = fromCsv(files[path]!);
      expect(schema.fields.map(({ name }: { name: string }) => name)).toEqual(header);
    }
  });

  test('holds in every cell what its description says of the column', () => {
    const files = filesOf(2);
    for (const { path, schema } of JSON.parse(files['datapackage.json']!).resources) {
      const [, ...rows] = fromCsv(files[path]!);
      expect(rows.length).toBeGreaterThan(10);
      for (const row of rows) {
        for (const [at, { name, type, constraints = {} }] of schema.fields.entries()) {
          const cell = row[at]!;
          if (cell === '') expect(constraints.required, name).toBeUndefined();
          else {
            if (type === 'integer') expect(cell, name).toMatch(/^-?\d+$/);
            if (type === 'number') expect(Number(cell), name).not.toBeNaN();
            if (type === 'date') expect(cell, name).toMatch(/^\d{4}-\d\d-\d\d$/);
            if (constraints.enum) expect(constraints.enum, name).toContain(cell);
            if (constraints.minimum !== undefined) {
              expect(Number(cell), name).toBeGreaterThanOrEqual(constraints.minimum);
            }
          }
        }
      }
    }
  });
});

describe('a folder with the exports of fifty coaches', () => {
  const folder = mkdtempSync(join(tmpdir(), 'rally-ledger-exports-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('is read by DuckDB with the query of the README, to the totals of the app', async () => {
    let [sets, seconds, players] = [0, 0, 0];
    for (let seed = 1; seed <= 50; seed++) {
      mkdirSync(join(folder, `coach-${seed}`));
      for (const [path, text] of Object.entries(filesOf(seed))) {
        writeFileSync(join(folder, `coach-${seed}`, path), text);
      }
      const totals = [...byPlayer(summariesOf(seed)).values()];
      players += totals.length;
      for (const total of totals) {
        sets += total.sets;
        seconds += total.seconds;
      }
    }
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    const query = /```sql\n([\s\S]*?)```/.exec(readme)?.[1] ?? '';
    expect(query).toContain("'exports/*/tallies.csv'");
    const connection = await (await DuckDBInstance.create(':memory:')).connect();
    const read = await connection.runAndReadAll(query.replace('exports/', `${folder}/`));
    const rows = read.getRowObjects() as Record<string, unknown>[];
    connection.closeSync();
    expect(rows).toHaveLength(players);
    const sum = (column: string) => rows.reduce((all, row) => all + Number(row[column]), 0);
    expect(sum('sets')).toBe(sets);
    // A trio's share of the clock is written to a tenth of a second.
    expect(60 * sum('minutes')).toBeCloseTo(seconds, -2);
  });
});
