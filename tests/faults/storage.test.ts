import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { wholeBrowser } from '../browser/browser.ts';
import { Coach } from '../browser/coach.ts';
import { tell, times } from './counts.ts';
import { PLAYERS, setsShown, startLongRound } from './court.ts';
import { marksIn, recordsOn } from './records.ts';
import { expect, type Page, test } from './test.ts';

/** Allows the origin so many bytes, or as many as there are. */
async function allow(page: Page, origin: string, quotaSize?: number): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Storage.overrideQuotaForOrigin', {
    origin,
    ...(quotaSize !== undefined && { quotaSize }),
  });
}

/** Fills whatever room is left with records of nothing, beside the app's own. */
const fill = (page: Page) =>
  page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const open = indexedDB.open('filler');
      open.onupgradeneeded = () => open.result.createObjectStore('filler');
      open.onsuccess = () => resolve(open.result);
      open.onerror = () => reject(open.error);
    });
    let size = 1_000_000;
    for (let record = 0; size >= 50; record++) {
      const fits = await new Promise<boolean>((resolve) => {
        const transaction = db.transaction('filler', 'readwrite');
        transaction
          .objectStore('filler')
          .put(crypto.getRandomValues(new Uint8Array(Math.min(size, 65_000))), record);
        transaction.oncomplete = () => resolve(true);
        transaction.onabort = () => resolve(false);
      });
      if (!fits) size = Math.floor(size / 2);
    }
  });

/** The entries of a file that was handed over as a download. */
async function handedOver(page: Page, button: string): Promise<{ kind?: string }[]> {
  const download = page.waitForEvent('download');
  await new Coach(page).button(button).tap();
  const text = readFileSync(await (await download).path(), 'utf8');
  return text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
}

const withoutShareSheet = (page: Page) =>
  page.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined }),
  );

test('a phone that is really full is said; marks are held, handed over by file, and saved once there is room', async ({
  page,
  host,
}) => {
  await withoutShareSheet(page);
  const { origin } = new URL(host.address);
  await allow(page, origin, 4_000_000);
  await page.goto('./');
  const coach = await startLongRound(page);
  await fill(page);
  // The browser reckons the room that is left: it may still take a few.
  let tapped = 0;
  const said = page.getByText(/Phone full/);
  await expect(async () => {
    await coach.mark('Pip');
    tapped += 1;
    await expect(said).toBeVisible({ timeout: 500 });
  }).toPass({ timeout: 120_000 });
  for (let more = times(20, 300); more > 0; more--) {
    await coach.mark('Pip');
    tapped += 1;
  }
  await expect.poll(() => setsShown(page, 0)).toBe(tapped);
  const inDatabase = marksIn(await recordsOn(page)).length;
  expect(inDatabase).toBeLessThan(tapped);

  const file = await handedOver(page, 'Share this practice as a file');
  expect(file.filter(({ kind }) => kind === 'mark')).toHaveLength(tapped);
  expect(file.filter(({ kind }) => kind === 'player-added')).toHaveLength(PLAYERS.length);

  await allow(page, origin);
  await expect(page.getByText(/Phone full/)).toHaveCount(0, { timeout: 60_000 });
  await coach.saved();
  expect(marksIn(await recordsOn(page))).toHaveLength(tapped);
  tell('marks tapped on a full phone', tapped);
  tell('of them in the file handed over', tapped);
  tell('of them saved once there was room', tapped);
});

test('writing that fails again and again, each time in another way, costs no mark and keeps their order', async ({
  page,
}) => {
  await page.goto('./');
  const coach = await startLongRound(page);
  await page.evaluate(() => {
    const names = ['QuotaExceededError', 'UnknownError', 'InvalidStateError', 'AbortError', ''];
    const { transaction } = IDBDatabase.prototype;
    let calls = 0;
    const failures = Object.assign(window, { failures: 0 });
    IDBDatabase.prototype.transaction = function (...given) {
      calls += 1;
      if (given[1] !== 'readwrite' || calls % 3 === 0) return transaction.apply(this, given);
      failures.failures += 1;
      const name = names[failures.failures % names.length];
      if (name) throw new DOMException('on purpose', name);
      // Begins, and is aborted before it ends, with no reason given.
      const begun = transaction.apply(this, given);
      queueMicrotask(() => begun.abort());
      return begun;
    };
  });
  const tapped = times(15, 150);
  for (let mark = 0; mark < tapped; mark++) await coach.mark('Pip');
  await expect
    .poll(async () => marksIn(await recordsOn(page)).length, { timeout: 120_000 })
    .toBe(tapped);
  const marks = marksIn(await recordsOn(page)).toSorted((a, b) => (a.id < b.id ? -1 : 1));
  expect(marks.map(({ second }) => second)).toEqual(
    marks.map(({ second }) => second).toSorted((a, b) => a - b),
  );
  tell(
    'transactions that failed',
    await page.evaluate(() => Number(Reflect.get(window, 'failures'))),
  );
  tell('marks tapped', tapped);
  tell('marks found', marks.length);
});

test('a browser that blocks storage is said, the practice can be run, and goes out by file', async ({
  phone,
}) => {
  phone.browser = wholeBrowser(); // The one for tests has no settings.
  const settings = join(phone.profile, 'Default');
  mkdirSync(settings, { recursive: true });
  writeFileSync(
    join(settings, 'Preferences'),
    JSON.stringify({ profile: { default_content_setting_values: { cookies: 2 } } }),
  );
  const page = await phone.open(async (context) => {
    await context.addInitScript(() =>
      Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined }),
    );
  });
  const refused = await page.evaluate(() => {
    try {
      localStorage.length;
      return false;
    } catch {
      return true;
    }
  });
  expect(refused, 'the browser blocks storage').toBe(true);
  const coach = new Coach(page);
  await expect(page.getByText(/does not let the app save/)).toBeVisible();
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await coach.start();
  for (let mark = 0; mark < 3; mark++) await coach.mark('Pip');
  await expect.poll(() => setsShown(page, 0)).toBe(3);
  const file = await handedOver(page, 'Share this practice as a file');
  expect(file.filter(({ kind }) => kind === 'mark')).toHaveLength(3);
});

test('what could not be read at first is read and joined in as soon as it can be', async ({
  page,
}) => {
  await page.goto('./');
  const coach = await startLongRound(page);
  for (let mark = 0; mark < 3; mark++) await coach.mark('Pip');
  await coach.saved();
  const before = await recordsOn(page);
  await page.addInitScript(() => {
    const open = IDBFactory.prototype.open;
    Object.assign(window, {
      allow: () => Object.assign(IDBFactory.prototype, { open }),
    });
    IDBFactory.prototype.open = () => {
      throw new DOMException('refused for now', 'UnknownError');
    };
  });
  await page.reload();
  await expect(page.getByText(/does not let the app save/)).toBeVisible();
  await page.evaluate(() => {
    location.hash = '#/squad';
  });
  await page.getByLabel('Nickname').fill('Suki');
  await page.getByLabel('Nickname').press('Enter');
  await page.evaluate(() => (window as unknown as { allow(): void }).allow());
  await expect(coach.tile('Pip')).toBeVisible({ timeout: 20_000 });
  await expect.poll(() => setsShown(page, 0)).toBe(3);
  await expect.poll(async () => (await recordsOn(page)).length).toBe(before.length + 1);
  const names = (await recordsOn(page)).map(([, { name }]) => name);
  expect(names.filter((name) => name !== undefined).toSorted()).toEqual(
    [...PLAYERS, 'Suki'].toSorted(),
  );
});

test('a database that does not answer keeps nobody waiting, and is joined in once it does', async ({
  page,
}) => {
  await page.goto('./');
  const coach = await startLongRound(page);
  await coach.mark('Pip');
  await coach.saved();
  await page.addInitScript(() => {
    const open = IDBFactory.prototype.open;
    IDBFactory.prototype.open = function (...given) {
      const late = {} as IDBOpenDBRequest;
      setTimeout(() => {
        const request = open.apply(this, given);
        for (const event of ['onsuccess', 'onerror', 'onupgradeneeded'] as const) {
          (request as unknown as Record<string, unknown>)[event] = (happened: Event) => {
            Object.assign(late, { result: request.result });
            (late[event] as ((event: Event) => void) | null)?.(happened);
          };
        }
      }, 5_000);
      return late;
    };
  });
  await page.reload();
  await expect(page.getByText(/has not answered yet/)).toBeVisible();
  await expect(coach.tile('Pip')).toBeVisible({ timeout: 20_000 });
  await expect.poll(() => setsShown(page, 0)).toBe(1);
  await expect(page.getByText(/has not answered yet/)).toHaveCount(0);
});

test('the browser is asked to keep the ledger once there is a round to lose, and a no is normal', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const asked = Object.assign(window, { asked: 0 });
    StorageManager.prototype.persist = async () => {
      asked.asked += 1;
      return false;
    };
  });
  const asked = () => page.evaluate(() => Number(Reflect.get(window, 'asked')));
  await page.goto('./');
  const coach = await startLongRound(page);
  await coach.mark('Pip');
  await coach.stop();
  expect(await asked()).toBe(0);
  await coach.button('Put counts right').tap();
  await coach.button('Done').tap();
  await expect.poll(asked).toBe(1);
  await page.evaluate(() => {
    location.hash = '#/settings';
  });
  await expect(page.getByText('has not promised to keep the ledger')).toBeVisible();
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test('in a tab of a phone that clears what pages keep, the app says so before anything is entered', async ({
  page,
}) => {
  const said = page.getByText('This phone may clear what a page keeps');
  await page.goto('./');
  await page.getByRole('heading', { level: 1 }).waitFor();
  await expect(said).toHaveCount(0);
  await page.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'standalone', { value: false, configurable: true }),
  );
  await page.reload();
  await expect(said).toBeVisible();
  await page.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'standalone', { value: true, configurable: true }),
  );
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await expect(said).toHaveCount(0);
});
