import { en } from '../../app/words/en.ts';
import { Coach } from './coach.ts';
import { expect, test } from './test.ts';

test.use({ serviceWorkers: 'allow' });

test('the manifest names an id, scope and start that end in a slash, and icons of every kind', async ({
  page,
  request,
}) => {
  await page.goto('./');
  const href = await page.locator('link[rel=manifest]').getAttribute('href');
  const address = new URL(href ?? '', page.url());
  const manifest = await (await request.get(address.href)).json();
  for (const field of ['id', 'scope', 'start_url']) expect(manifest[field]).toMatch(/\/$/);
  const icons: { src: string; sizes: string; purpose?: string }[] = manifest.icons;
  expect(icons.some((icon) => icon.sizes === '192x192')).toBe(true);
  expect(icons.some((icon) => icon.sizes === '512x512' && icon.purpose !== 'maskable')).toBe(true);
  expect(icons.some((icon) => icon.purpose === 'maskable')).toBe(true);
  for (const icon of icons) {
    expect((await request.get(new URL(icon.src, address).href)).status(), icon.src).toBe(200);
  }
  expect(manifest.shortcuts).toHaveLength(1);
});

test('the app opens in airplane mode at any of its addresses', async ({ page, context }) => {
  await page.goto('./');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await context.setOffline(true);
  for (const address of [
    '',
    '#/squad',
    '#/block',
    '#/court',
    '#/players',
    '#/week',
    '#/settings',
    '#/drill',
  ]) {
    await page.goto(`./${address}`);
    await page.reload();
    await expect(page.getByRole('heading', { level: 1 }), address).toBeVisible();
  }
});

test('every screen of an open page is there, even where a newer version has taken its files away', async ({
  page,
  context,
}) => {
  await page.goto('./');
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.reload();
  // What is loaded in idle moments, one screen after the other: these are among the last.
  await page.waitForFunction(() =>
    ['season-screen', 'help-screen'].every((screen) =>
      performance.getEntriesByType('resource').some(({ name }) => name.includes(screen)),
    ),
  );
  await page.evaluate(async () => {
    for (const name of await caches.keys()) await caches.delete(name);
  });
  await context.setOffline(true);
  const coach = new Coach(page);
  for (const address of [
    'squad',
    'players',
    'week',
    'coverage',
    'propose',
    'review',
    'numbers',
    'glance',
    'season',
    'settings',
    'help',
  ]) {
    await coach.visit(address);
    await expect(page.getByText(en.notLoaded), address).toHaveCount(0);
    await expect(page.getByRole('heading', { level: 1 }), address).toBeVisible();
  }
});
