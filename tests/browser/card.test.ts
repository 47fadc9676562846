import { readFileSync } from 'node:fs';
import { Coach } from './coach.ts';
import { see, withCamera } from './film.ts';
import { NOON } from './planted-round.ts';
import { openPractised, playerId } from './played-practice.ts';
import { expect, type Page, test } from './test.ts';

/* A player's card: own figures alone, in a link that no server sees. */

const NAMES = ['Pip', 'Juno', 'Odile', 'Bram'];

async function open(page: Page): Promise<string> {
  await page.addInitScript(() => {
    Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined });
    Object.defineProperty(navigator, 'clipboard', {
      value: {
        writeText: async (text: string) => {
          (window as unknown as { copied: string }).copied = text;
        },
      },
    });
  });
  await page.clock.install({ time: NOON });
  await openPractised(page, { names: NAMES, drills: ['mini-rally'], daysBefore: [9, 2] });
  const coach = new Coach(page);
  await coach.visit(`player/${playerId(0)}`);
  await page.getByRole('link', { name: 'Card to take home' }).tap();
  await expect(page.getByRole('article', { name: 'Pip' })).toContainText('usual 3, best 3');
  await coach.button('Copy the link').tap();
  await expect(page.getByText('Copied.')).toBeVisible();
  return page.evaluate(() => (window as unknown as { copied: string }).copied);
}

test('a card opens from its link on a phone that knows nobody, with the same figures and no other name', async ({
  page,
  browser,
  baseURL,
}) => {
  const link = await open(page);
  const mine = await page.getByRole('article').textContent();
  expect(mine).toContain('Pip');
  for (const other of NAMES.slice(1)) expect(mine).not.toContain(other);
  const context = await browser.newContext({ locale: 'en-GB', serviceWorkers: 'block' });
  const asked: string[] = [];
  context.on('request', (request) => asked.push(request.url()));
  const family = await context.newPage();
  await family.goto(link);
  await expect(family.getByRole('article', { name: 'Pip' })).toBeVisible();
  expect(await family.getByRole('article').textContent()).toBe(mine);
  await expect(family.getByRole('button')).toHaveCount(0);
  // The data stand after the #: no address that was asked for has them.
  const data = new URL(link).hash.split('/').at(-1) ?? '';
  expect(data.length).toBeGreaterThan(50);
  expect(asked.filter((url) => url.includes(data) && !url.startsWith('blob:'))).toEqual([]);
  expect(asked.every((url) => url.startsWith(baseURL ?? '-'))).toBe(true);
  await family.goto('about:blank');
  await family.goto(link.slice(0, -9));
  await expect(family.getByRole('alert')).toContainText('This is no whole card.');
  await context.close();
});

test('a card is read from its code by the camera of the app', async ({ page, context }) => {
  await withCamera(context);
  await open(page);
  const png = await page.locator('.code canvas').screenshot();
  const other = await context.newPage();
  await new Coach(other).visit('handover/read');
  while (!(await other.getByRole('article').isVisible())) await see(other, png);
  await expect(other.getByRole('article', { name: 'Pip' })).toBeVisible();
});

test('a card is a picture for the family’s chat', async ({ page }) => {
  await open(page);
  const coming = page.waitForEvent('download');
  await new Coach(page).button('Share as a picture').tap();
  const file = await coming;
  expect(file.suggestedFilename()).toBe('rally-ledger-card.png');
  const png = readFileSync(await file.path());
  // The signature of PNG, and the width in its header (ISO/IEC 15948).
  expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  expect(png.readUInt32BE(16)).toBe(1080);
});
