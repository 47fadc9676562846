import { writeFileSync } from 'node:fs';
import { besideR } from './beside-r.ts';
import { courtTouch } from './court-touch.ts';
import { figureRows } from './figures.ts';
import { Bench } from './measured-phone.ts';
import { memory } from './memory.ts';
import { opening } from './opening.ts';
import { holds, type Row, tableOf } from './row.ts';
import { screens } from './screens.ts';
import { estimateRows } from './touches.ts';
import { weight } from './weight.ts';

/** Where the last table lies, to be held against the next. */
const FILE = new URL('../../.cache/bench.json', import.meta.url);

/** What gives the rows, in the order of the table. */
const MEASURES = {
  court: courtTouch,
  opening,
  memory,
  screens,
  season: figureRows,
  estimate: estimateRows,
  r: besideR,
  weight,
} satisfies Record<string, (bench: Bench) => Row[] | Promise<Row[]>>;

/**
 * Every figure that has a goal, or those of these names, measured in one run on a real browser of a
 * phone's size: the lines of the table. Where a goal is missed the process ends with 1.
 */
export async function tableBench(only: readonly string[] = []): Promise<string[]> {
  const bench = await Bench.start();
  const rows: Row[] = [];
  try {
    for (const [name, measure] of Object.entries(MEASURES)) {
      if (only.length > 0 && !only.includes(name)) continue;
      console.error(`… ${name}`);
      rows.push(...(await measure(bench)));
    }
  } finally {
    await bench.end();
  }
  writeFileSync(FILE, `${JSON.stringify(rows, null, 2)}\n`);
  const missed = rows.filter((row) => !holds(row)).length;
  if (missed > 0) process.exitCode = 1;
  return [...tableOf(rows), '', `${rows.length - missed} of ${rows.length} hold`];
}
