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
