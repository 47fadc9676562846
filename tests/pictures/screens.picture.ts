import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Page, test } from 'playwright/test';
import { Coach } from '../browser/coach.ts';

/** All pictures, to be looked at; not kept with the project. */
const ALL = fileURLToPath(new URL('../../.cache/pictures/', import.meta.url));
/** Those that the README shows: light, on a phone of ordinary size. */
const README = fileURLToPath(new URL('../../demo-data/pictures/', import.meta.url));

const SIZES = [
  { name: '360x640', width: 360, height: 640 },
  { name: '390x844', width: 390, height: 844 },
  { name: '412x915', width: 412, height: 915 },
  { name: 'tablet', width: 768, height: 1024 },
  { name: 'tablet-wide', width: 1024, height: 768 },
];
const THEMES = ['light', 'dark'] as const;

/** Takes a screen at every size in every theme, each time without a reload; says what does not fit. */
async function take(page: Page, name: string, readme = false): Promise<void> {
  for (const theme of THEMES) {
    await page.emulateMedia({ colorScheme: theme });
    for (const { name: size, width, height } of SIZES) {
      await page.setViewportSize({ width, height });
      await page.waitForTimeout(100);
      const beyond = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      if (beyond > 0) console.log(`${name} at ${size}: ${beyond} px too wide`);
      await page.screenshot({ path: `${ALL}${name}-${size}-${theme}.png` });
      if (readme && theme === 'light' && size === '390x844') {
        await page.screenshot({ path: `${README}${name}.png` });
      }
    }
  }
  await page.setViewportSize({ width: 390, height: 844 });
  await page.emulateMedia({ colorScheme: 'light' });
}

test('pictures of every screen', async ({ page }) => {
  mkdirSync(ALL, { recursive: true });
  mkdirSync(README, { recursive: true });
  const coach = new Coach(page);
  await coach.open();
  await take(page, 'empty');
  await coach.button('Look around with an invented squad').tap();
  await page.getByRole('heading', { name: 'Who is here' }).waitFor({ timeout: 60_000 });
  // The history is read once the first screen stands.
  await page.waitForTimeout(2_000);

  await coach.button('Everyone is here').tap();
  await coach.planBlock([
    { name: 'Half-court rally', rounds: 2 },
    { name: 'Volley to volley' },
    { name: 'Lob and overhead', rounds: 2 },
    { name: 'Wide past the markers' },
    { name: 'Serve, return, next shot', rounds: 2 },
  ]);
  await take(page, 'today', true);
  const shown = ['week', 'review', 'glance'];
  for (const address of [
    ...['block', 'squad', 'players', 'coverage', 'settings', 'numbers', 'neglected', 'together'],
    ...['sizes', 'season', ...shown],
  ]) {
    await coach.visit(address);
    await page.waitForTimeout(500);
    await take(page, address, shown.includes(address));
  }
  for (const address of [
    ...['drill/lob-and-overhead', 'drill', 'help', 'sheet', 'propose', 'wall'],
    'tempo/lob-and-overhead',
  ]) {
    await page.goto(`./#/${address}`);
    await page.waitForTimeout(500);
    await take(page, address.replace('/', '-'));
  }

  await coach.visit('');
  await coach.button('Go to the court').tap();
  await take(page, 'card', true);
  await page.clock.install();
  await coach.start();
  const pairs = await coach.pairs();
  for (let turn = 0; turn < 4; turn++) {
    await page.clock.fastForward(19_000);
    for (const [place, [player = '']] of pairs.entries()) {
      if ((turn + place) % 3 !== 0) await coach.mark(player);
    }
  }
  await coach.saved();
  await take(page, 'court', true);
  await page.clock.fastForward(60_000);
  await coach.mark(pairs[1]?.[0] ?? '');
  await take(page, 'court-over');
  await coach.button('Put counts right').tap();
  await take(page, 'settle', true);
  await coach.visit('players');
  await page.getByRole('link', { name: 'Pip' }).tap();
  await page.getByRole('heading', { level: 1, name: 'Pip' }).waitFor();
  await page.clock.runFor(2_000);
  await take(page, 'player', true);
});
