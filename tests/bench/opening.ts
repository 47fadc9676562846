import type { BrowserContext } from 'playwright/test';
import { putRecords } from '../browser/seed.ts';
import { type Bench, SETTLE_MS, slow } from './measured-phone.ts';
import { quantile } from './quantile.ts';
import type { Row } from './row.ts';
import { seasons } from './seasons.ts';

const OPENINGS = 9;
const RATES = [1, 4];

/** Lets every page of that phone note when what is looked for stands in a frame, since the navigation began. */
const noteShown = (phone: BrowserContext): Promise<unknown> =>
  phone.addInitScript(() => {
    const shown = new Promise<number>((resolve) => {
      new MutationObserver((_, observer) => {
        if (!document.querySelector('.tile-count, #bare')) return;
        observer.disconnect();
        window.behindFrame(() => resolve(performance.now()));
      }).observe(document, { childList: true, subtree: true });
    });
    Object.assign(window, { shown });
  });

/** A phone that answers from its service worker only, with its page open at that address. */
async function offline(bench: Bench, prepare: (phone: BrowserContext) => Promise<unknown>) {
  const phone = await bench.phone('allow');
  await prepare(phone);
  const [page] = phone.pages();
  if (!page) throw new Error('no page was opened');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await phone.setOffline(true);
  await noteShown(phone);
  const session = await phone.newCDPSession(page);
  return { page, session };
}

/** From a reload without a network, in mid-round, to a tile that counts, beside a page with a button. */
export async function opening(bench: Bench): Promise<Row[]> {
  const bare = await offline(bench, (phone) => bench.open('bare/', phone));
  const court = await offline(bench, (phone) => bench.court({ phone }));
  const full = await offline(bench, async (phone) => {
    const { page } = await bench.court({ phone });
    for (const records of seasons('2026-11-20')) await putRecords(page, records);
  });
  const rows: Row[] = [];
  for (const rate of RATES) {
    const times = new Map([bare, court, full].map((each) => [each, [] as number[]]));
    for (let opening = 0; opening <= OPENINGS; opening++) {
      for (const [each, own] of times) {
        await slow(rate, each);
        await each.page.reload();
        const took = await each.page.evaluate(
          () => Reflect.get(window, 'shown') as Promise<number>,
        );
        // The first reads the files, the others follow.
        if (opening > 0) own.push(took);
        // What is read behind the screen belongs to this opening, not to the next.
        await each.page.waitForTimeout(SETTLE_MS / 2);
      }
    }
    const [none = 0, one = 0, ten = 0] = [...times.values()].map((own) => quantile(own, 0.5));
    rows.push(
      {
        figure: `reload offline to a tile, CPU ×${rate}`,
        unit: 'ms',
        measured: one,
        reference: { name: 'bare page', measured: none },
        most: 1.8,
      },
      {
        figure: `the same with ten seasons, CPU ×${rate}`,
        unit: 'ms',
        measured: ten,
        reference: { name: 'nothing stored', measured: one },
        most: 1.1,
      },
    );
  }
  for (const { page } of [bare, court, full]) await page.context().close();
  return rows;
}
