import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { tell } from './counts.ts';
import { setsShown, startLongRound } from './court.ts';
import { marksIn, recordsOn } from './records.ts';
import { test as base, expect, type Page } from './test.ts';

/** Says on the page which version it is; the names of all files that hold it change with it. */
const marker = (version: number) => ({
  name: 'version-marker',
  transform: (code: string, id: string) =>
    id.endsWith('/app/main.tsx') ? `${code}\nwindow.version = ${version};` : undefined,
});

async function built(version: number): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), 'rally-ledger-version-'));
  await build({
    configFile: fileURLToPath(new URL('../../app/vite.config.ts', import.meta.url)),
    build: { outDir, emptyOutDir: true },
    plugins: [marker(version)],
    logLevel: 'error',
  });
  return outDir;
}

const test = base.extend<object, { versions: [first: string, second: string] }>({
  versions: [
    // biome-ignore lint/correctness/noEmptyPattern: the fixture needs none, and must say so this way
    async ({}, use) => {
      const folders: [string, string] = [await built(1), await built(2)];
      await use(folders);
      for (const folder of folders) rmSync(folder, { recursive: true, force: true });
    },
    { scope: 'worker' },
  ],
});

test.use({ serviceWorkers: 'allow' });
// Both in one worker: the two versions are built once.
test.describe.configure({ mode: 'default' });

const versionOf = (page: Page) =>
  page.evaluate(() => (window as unknown as { version?: number }).version);

/** Looks for a newer version, as the app does when it is taken out again, until one waits. */
const untilOneWaits = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (!registration.waiting) await new Promise((resolve) => setTimeout(resolve, 50));
  });

/** Lets the page have so many moments in which it has nothing to do. */
const idleMoments = (page: Page, many: number) =>
  page.evaluate(async (moments) => {
    for (let moment = 0; moment < moments; moment++) {
      await new Promise((resolve) => requestIdleCallback(resolve));
    }
  }, many);

/** Whether the page has asked for a file whose name holds this. */
const loaded = (page: Page, name: string) =>
  page.evaluate(
    (part) => performance.getEntriesByType('resource').some((file) => file.name.includes(part)),
    name,
  );

test('a version published in mid-round waits: no reload, no lost mark, no part that fails to load, and one tap takes it in', async ({
  page,
  host,
  versions,
}) => {
  const [first, second] = versions;
  host.publish(first);
  const failed: string[] = [];
  await page.goto('./');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  const coach = await startLongRound(page);
  page.on('requestfailed', (request) => failed.push(request.url()));
  page.on('response', (response) => {
    if (response.status() >= 400) failed.push(response.url());
  });
  await coach.mark('Pip');
  await page.evaluate(() => Object.assign(window, { stayed: true }));

  host.publish(second);
  await untilOneWaits(page);
  const offer = page.getByText('A new version is on this phone.');
  for (let mark = 0; mark < 5; mark++) await coach.mark('Pip');
  await coach.saved();
  await expect(offer).toHaveCount(0);

  // Parts of the running version that were never looked at come with it, though the host has
  // only those of the next one.
  await coach.button('Pause').tap();
  await coach.button('Other screens').tap();
  for (const address of ['settings', 'week', 'players', 'squad', 'drill']) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, `#/${address}`);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByText('could not be loaded')).toHaveCount(0);
    await expect(offer).toHaveCount(0);
  }
  await page.evaluate(() => {
    location.hash = '#/court';
  });
  await coach.button('Go on').tap();
  await coach.mark('Pip');
  await coach.saved();
  expect(await page.evaluate(() => 'stayed' in window)).toBe(true);
  expect(await versionOf(page)).toBe(1);

  await coach.stop();
  await coach.button('Put counts right').tap();
  await expect(offer).toBeVisible();
  // Nor is anything loaded ahead any more: what the next version takes away could be half on its way.
  await idleMoments(page, 30);
  expect(await loaded(page, 'season-screen')).toBe(false);
  await coach.button('Update now').tap();
  await expect.poll(() => versionOf(page).catch(() => undefined)).toBe(2);
  expect(marksIn(await recordsOn(page))).toHaveLength(7);
  await expect(offer).toHaveCount(0);
  expect(failed).toEqual([]);
  tell('marks tapped before, while and after it was published', 7);
  tell('marks found in the new version', marksIn(await recordsOn(page)).length);
  tell('requests that failed', failed.length);
});

test('a second window on the older version goes on with its round, and starts anew after it', async ({
  page,
  host,
  versions,
  context,
}) => {
  const [first, second] = versions;
  host.publish(first);
  await page.goto('./');
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  const other = await context.newPage();
  await other.goto('./');
  await other.getByRole('heading', { level: 1 }).waitFor();
  host.publish(second);
  await untilOneWaits(page);
  const take = page.getByRole('button', { name: 'Update now' });
  await take.waitFor();
  const coach = await startLongRound(other);
  await coach.mark('Pip');
  await coach.saved();
  await other.evaluate(() =>
    navigator.serviceWorker.addEventListener('controllerchange', () =>
      Object.assign(window, { outdated: true }),
    ),
  );
  // The first window's offer is from before the round; a finger may still be on its way to it. Now
  // and then the browser lets the new version wait for all that, and it is tapped again.
  const inCharge = () =>
    page.evaluate(async () => {
      const { waiting } = await navigator.serviceWorker.ready;
      waiting?.postMessage({ type: 'SKIP_WAITING' });
      return waiting === null;
    });
  await expect.poll(inCharge).toBe(true);
  // The other window has heard of it, looks three times whether it may start anew, and does not.
  await other.waitForFunction(() => 'outdated' in window);
  await other.evaluate(
    () =>
      new Promise<void>((resolve) => {
        let looks = 0;
        setInterval(() => {
          looks += 1;
          if (looks === 3) resolve();
        }, 500);
      }),
  );
  expect(await versionOf(other)).toBe(1);
  await coach.mark('Pip');
  await coach.saved();
  await coach.stop();
  await expect.poll(() => versionOf(other).catch(() => undefined)).toBe(2);
  await other.getByRole('timer').waitFor();
  await expect.poll(() => setsShown(other, 0)).toBe(2);
});
