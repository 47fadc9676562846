import { Coach } from './coach.ts';
import { NOON, openPlanted } from './planted-round.ts';
import { expect, type Page, test } from './test.ts';

/* A keyboard or a clicker at the court: keys count, take back, start and pause. */

const PAIRS = [
  ['Pip', 'Juno'],
  ['Odile', 'Bram'],
];
const SPLIT = 'wide-past-the-markers';

const sets = (page: Page) => page.locator('.tile-sets').allInnerTexts();
const expectSets = (page: Page, ...counts: string[]) =>
  expect.poll(async () => (await sets(page)).map((text) => text.trim()[0])).toEqual(counts);

test.beforeEach(async ({ page }) => {
  await page.clock.install({ time: NOON });
});

test('a whole round is run by keys alone, with nothing focused', async ({ page }) => {
  const coach = new Coach(page);
  await openPlanted(page, { pairs: PAIRS, started: false });
  await coach.button(/^Start/).waitFor();
  await page.keyboard.press(' ');
  await page.getByRole('timer').waitFor();
  await page.keyboard.press('1');
  await page.keyboard.press('b');
  await page.keyboard.press('2');
  await expectSets(page, '1', '2');
  await page.keyboard.press('Shift+B');
  await expectSets(page, '1', '1');
  await page.keyboard.press('Shift+Digit1');
  await expectSets(page, '0', '1');
  await page.keyboard.press('Shift+Digit1'); // Nothing is left to take back.
  await expectSets(page, '0', '1');

  await page.keyboard.press(' ');
  await expect(coach.button('Go on')).toBeVisible();
  await page.keyboard.press(' ');
  await expect(coach.button('Pause')).toBeVisible();
});

test('tiles show their key once a key was used, and not before', async ({ page }) => {
  await openPlanted(page, { pairs: PAIRS });
  await page.locator('.tiles').waitFor();
  await expect(page.locator('.tile-key')).toHaveCount(0);
  await page.keyboard.press('1');
  await expect(page.locator('.tile-key')).toHaveText(['1', '2']);
  await expect(page.locator('.tile-count').last()).toHaveAttribute('aria-keyshortcuts', '2');
});

test('after a touch the space bar still runs the clock and counts nothing', async ({ page }) => {
  const coach = new Coach(page);
  await openPlanted(page, { pairs: PAIRS });
  await coach.mark('Pip');
  await coach.button(/thirty more seconds/).tap();
  await expectSets(page, '1', '0');
  await page.keyboard.press(' ');
  await expect(coach.button('Go on')).toBeVisible();
  await expectSets(page, '1', '0');
});

test('a control that was gone to by keyboard keeps its own space bar, and letters still count', async ({
  page,
}) => {
  const coach = new Coach(page);
  await openPlanted(page, { pairs: PAIRS });
  await page.locator('.tiles').waitFor();
  await coach.button('Who is here').focus();
  await page.keyboard.press(' ');
  await expect(coach.button('Who is here')).toHaveAttribute('aria-expanded', 'true');
  await expect(coach.button('Pause')).toBeVisible();
  await page.keyboard.press('a');
  await expectSets(page, '1', '0');
});

test('a tile that was gone to by keyboard counts once, however long the key is held', async ({
  page,
}) => {
  await openPlanted(page, { pairs: PAIRS });
  await page.locator('.tile-count').first().focus();
  for (let held = 0; held < 5; held++) await page.keyboard.down('Enter');
  await page.keyboard.up('Enter');
  await expectSets(page, '1', '0');
});

test('where tiles are split each has its digit, and a letter counts for nobody', async ({
  page,
}) => {
  await openPlanted(page, { pairs: PAIRS, drill: SPLIT });
  await page.locator('.tiles').waitFor();
  for (const key of ['1', '3', '3', '4', 'a', 'b']) await page.keyboard.press(key);
  await expectSets(page, '1', '0', '2', '1');
});

test('keys that were switched off do nothing', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('rally-ledger', '{"keys":false}'));
  const coach = new Coach(page);
  await openPlanted(page, { pairs: PAIRS });
  await page.locator('.tiles').waitFor();
  await page.keyboard.press('1');
  await page.keyboard.press(' ');
  await expect(coach.button('Pause')).toBeVisible();
  await expectSets(page, '0', '0');
});
