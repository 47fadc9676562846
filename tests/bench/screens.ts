import { putRecords } from '../browser/seed.ts';
import { dateOn } from '../faults/court.ts';
import { type Bench, type MeasuredPage, SETTLE_MS, slow } from './measured-phone.ts';
import { quantile } from './quantile.ts';
import type { Row } from './row.ts';
import { seasons, TEN_SEASONS } from './seasons.ts';

const RATE = 4;
const VISITS = 5;
/** What a screen of figures may take at the most, however much is stored. */
const MOST_MS = 100;

/** The screens that a coach and a player look at after practice, and what stands there once they are drawn. */
const SCREENS = {
  week: { address: 'week', drawn: '.at-once-row' },
  player: { address: 'player/', drawn: '.own-picture' },
  review: { address: 'review', drawn: 'ul.findings' },
  coverage: { address: 'coverage', drawn: 'table.coverage' },
} as const;

/**
 * From Today, opened anew, to a screen: milliseconds from the touch of a link to the frame in which it
 * is drawn. What is made ready in idle moments is ready by then; it need not take its time here.
 */
async function visit(opened: MeasuredPage, address: string, drawn: string): Promise<number> {
  const { page } = opened;
  await slow(1, opened);
  await page.goto('./#/');
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForTimeout(SETTLE_MS);
  await slow(RATE, opened);
  return page.evaluate(
    ([address, drawn]) =>
      new Promise<number>((resolve, reject) => {
        setTimeout(() => reject(new Error(`${drawn} never came`)), 60_000);
        const link = document.createElement('a');
        link.href = `#/${address}`;
        document.body.append(link);
        new MutationObserver((_, observer) => {
          if (!document.querySelector(drawn)) return;
          observer.disconnect();
          window.behindFrame(() => resolve(performance.now() - began));
        }).observe(document.body, { childList: true, subtree: true });
        const began = performance.now();
        link.click();
      }),
    [address, drawn] as const,
  );
}

/** A phone with the app installed, on which so many practices are stored, the last of them today, and one of its players. */
async function stored(
  bench: Bench,
  size: typeof TEN_SEASONS,
): Promise<MeasuredPage & { player: string }> {
  const opened = await bench.open('./', await bench.phone('allow'));
  const { page } = opened;
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  let player = '';
  for (const records of seasons(await dateOn(page), size)) {
    for (const [, record] of records) player ||= (record as { player?: string }).player ?? '';
    await putRecords(page, records);
  }
  return { ...opened, player };
}

/** The screens of figures with ten seasons stored, beside the same with one week. */
export async function screens(bench: Bench): Promise<Row[]> {
  const ten = await stored(bench, TEN_SEASONS);
  const week = await stored(bench, { ...TEN_SEASONS, weeks: 1 });
  const rows: Row[] = [];
  for (const [name, { address, drawn }] of Object.entries(SCREENS)) {
    const times = { ten: [] as number[], week: [] as number[] };
    for (let turn = 0; turn < VISITS; turn++) {
      for (const [each, own] of [
        [ten, times.ten],
        [week, times.week],
      ] as const) {
        const player = name === 'player' ? each.player : '';
        own.push(await visit(each, address + player, drawn));
      }
    }
    const measured = quantile(times.ten, 0.5);
    const figure = `${name}, ten seasons, CPU ×${RATE}`;
    rows.push(
      {
        figure,
        unit: 'ms',
        measured,
        reference: { name: 'one week', measured: quantile(times.week, 0.5) },
        most: 1.5,
      },
      { figure, unit: 'ms', measured, most: MOST_MS },
    );
  }
  for (const { page } of [ten, week]) await page.context().close();
  return rows;
}
