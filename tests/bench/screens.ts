import type { Page } from 'playwright/test';
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

/** From Today, opened anew, to a screen: milliseconds from the touch of a link to the frame in which it is drawn. */
async function visit(page: Page, address: string, drawn: string): Promise<number> {
  await page.goto('./#/');
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForTimeout(SETTLE_MS);
  return page.evaluate(
    ([address, drawn]) =>
      new Promise<number>((resolve, reject) => {
        setTimeout(() => reject(new Error(`${drawn} never came`)), 60_000);
        const link = document.createElement('a');
        link.href = `#/${address}`;
        document.body.append(link);
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve(performance.now() - began);
        new MutationObserver((_, observer) => {
          if (!document.querySelector(drawn)) return;
          observer.disconnect();
          requestAnimationFrame(() => port2.postMessage(0));
        }).observe(document.body, { childList: true, subtree: true });
        const began = performance.now();
        link.click();
      }),
    [address, drawn] as const,
  );
}

/** A phone on which so many practices are stored, the last of them today. */
async function stored(bench: Bench, size: typeof TEN_SEASONS): Promise<MeasuredPage> {
  const opened = await bench.open('./');
  const { page } = opened;
  await page.getByRole('heading', { level: 1 }).waitFor();
  for (const records of seasons(await dateOn(page), size)) await putRecords(page, records);
  return opened;
}

/** The screens of figures with ten seasons stored, beside the same with one week. */
export async function screens(bench: Bench): Promise<Row[]> {
  const ten = await stored(bench, TEN_SEASONS);
  const week = await stored(bench, { ...TEN_SEASONS, weeks: 1 });
  await slow(RATE, ten, week);
  const rows: Row[] = [];
  for (const [name, { address, drawn }] of Object.entries(SCREENS)) {
    const times = { ten: [] as number[], week: [] as number[] };
    for (let turn = 0; turn < VISITS; turn++) {
      for (const [each, own] of [
        [ten, times.ten],
        [week, times.week],
      ] as const) {
        const player = name === 'player' ? await playerOn(each.page) : '';
        own.push(await visit(each.page, address + player, drawn));
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

/** Somebody who is in the book. */
const playerOn = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const open = indexedDB.open('rally-ledger');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const all = open.result.transaction('records').objectStore('records');
          const found = all.getAll(IDBKeyRange.bound('s/', 's0'));
          found.onsuccess = () => {
            open.result.close();
            resolve(found.result.find(({ kind }) => kind === 'player-added').player);
          };
        };
      }),
  );
