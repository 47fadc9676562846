import { statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { type Browser, chromium, type Page } from 'playwright/test';
import { endingLine, entryLine, headingLine } from '../../core/exchange/backup.ts';
import type { Entry } from '../../core/ledger/entry.ts';
import { stampTime, writerOf } from '../../core/ledger/stamp.ts';
import { season } from '../../demo-data/season.ts';
import { BROWSER_ARGUMENTS, findBrowser } from '../browser/browser.ts';
import { Apache, hasApache, PASSWORD, USER } from '../faults/apache.ts';
import { quantile } from './quantile.ts';

const DEVICES = 50;
/** Ten coaches and assistants share a squad. */
const SQUADS = 5;
const PLAYERS = 12;
/** How much slower than this machine a phone is taken to be. */
const SLOWED = 4;
const OPENINGS = 5;

/** A season's entries as a phone wrote them, of one of the club's squads: its players have one id each. */
function entriesOf(device: number): Entry[] {
  const { standing, practices } = season({
    ...{ seed: device, players: PLAYERS, weeks: 12, perWeek: 3, lastDate: '2026-11-20' },
  });
  const all = [...standing, ...practices.flatMap(({ entries }) => entries)];
  let own = JSON.stringify(
    all.map((entry) => ({ ...entry, id: stampOf(entry.id, phoneOf(device)) })),
  );
  for (const [place, entry] of standing.entries()) {
    if (entry.kind !== 'player-added') continue;
    own = own.replaceAll(`"${entry.player}"`, `"squad-${device % SQUADS}-${place}"`);
  }
  return JSON.parse(own) as Entry[];
}

const stampOf = (id: string, phone: string) =>
  `${stampTime(id).toString(36).padStart(9, '0')}-${id.slice(10, 13)}-${writerOf(phone, 'window')}`;

const phoneOf = (device: number) => `dev${String(device).padStart(7, '0')}`;

/** Milliseconds from the start of the navigation to the first heading; the first opening, which reads the files, is left out. */
async function openingOf(page: Page, address: string): Promise<number> {
  const times: number[] = [];
  for (let opening = 0; opening <= OPENINGS; opening++) {
    await page.goto('about:blank');
    await page.goto(address);
    await page.locator('main h1').waitFor();
    if (opening > 0) times.push(await page.evaluate(() => performance.now()));
  }
  return quantile(times, 0.5);
}

/** A page of a phone that is slower than this machine, with nothing on it. */
async function slowPage(browser: Browser, baseURL: string): Promise<Page> {
  const page = await browser.newPage({ baseURL, serviceWorkers: 'block' });
  page.setDefaultTimeout(3_600_000);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  return page;
}

/** A club of fifty devices with a season each, met by one more phone, slowed as phones are. */
export async function clubBench(): Promise<string[]> {
  if (!hasApache()) return ['club: Debian’s Apache cannot be had here'];
  const apache = await Apache.start();
  const browser = await chromium.launch({ executablePath: findBrowser(), args: BROWSER_ARGUMENTS });
  try {
    let [bytes, packed, entries] = [0, 0, 0];
    for (let device = 1; device <= DEVICES; device++) {
      const own = entriesOf(device);
      const text = [headingLine(), ...own.map(entryLine), endingLine(own.length)].join('');
      const file = join(apache.club, `rally-ledger-${phoneOf(device)}.txt`);
      writeFileSync(file, text);
      bytes += statSync(file).size;
      packed += gzipSync(text).length;
      entries += own.length;
    }
    const page = await slowPage(browser, apache.address);
    await page.goto('./#/handover/club');
    let requests = 0;
    page.on('request', (request) => {
      if (request.url().includes('/club/')) requests += 1;
    });
    await page.getByLabel('Name', { exact: true }).fill(USER);
    await page.getByLabel('Password').fill(PASSWORD);
    const began = performance.now();
    await page.getByRole('button', { name: 'Meet there' }).click();
    await page.getByText(/^Last met on/).waitFor();
    const joined = performance.now() - began;
    const faults = await page.getByRole('alert').count();
    const first = requests;
    requests = 0;
    const again = performance.now();
    await page.getByRole('button', { name: 'Meet now' }).click();
    await page.getByRole('button', { name: 'Meet now', disabled: false }).waitFor();
    const second = performance.now() - again;
    const full = await openingOf(page, apache.address);
    const empty = await openingOf(await slowPage(browser, apache.address), apache.address);
    return [
      `${DEVICES} devices with a season each of ${SQUADS} squads of ${PLAYERS}: ${entries} entries, ${(bytes / 1e6).toFixed(1)} MB (${(packed / 1e6).toFixed(1)} MB packed)`,
      `on a CPU slowed ${SLOWED} times a phone that has none of it meets them all in ${(joined / 1000).toFixed(1)} s and ${first} requests, ${faults} faults`,
      `meeting again with nothing new: ${Math.round(second)} ms and ${requests} requests`,
      `opening: ${Math.round(empty)} ms empty, ${Math.round(full)} ms with all of it (${(full / empty).toFixed(2)} times)`,
    ];
  } finally {
    await browser.close();
    await apache.discard();
  }
}
