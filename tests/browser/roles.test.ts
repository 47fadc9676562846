import { Coach } from './coach.ts';
import { NOON } from './planted-round.ts';
import { openPractised } from './played-practice.ts';
import { expect, type Locator, type Page, test } from './test.ts';

/* Who has role 1 and who role 2 decides whose lob and whose overhead it was: every screen says it. */

const NAMES = ['Pip', 'Juno', 'Odile', 'Bram', 'Suki'];
const practise = (page: Page, drill: string, address = '') =>
  openPractised(page, { names: NAMES, drills: [drill], daysBefore: [], here: 5 }, address);

/** The names of some place, each with the number before it where there is one. */
const named = (place: Locator): Promise<(string | null)[]> =>
  place.locator('.pair-name').evaluateAll((all) => all.map((name) => name.textContent));

/** The smallest number, in CSS pixels of its digits' font. */
const smallest = (page: Page) =>
  page
    .locator('.pair-role')
    .evaluateAll((all) =>
      Math.min(...all.map((role) => Number.parseFloat(getComputedStyle(role).fontSize))),
    );

test.beforeEach(async ({ page }) => {
  await page.clock.install({ time: NOON });
});

test('the numbers of the roles stand beside a pair’s names on every screen, and in no trio', async ({
  page,
}) => {
  const coach = new Coach(page);
  await practise(page, 'lob-and-overhead');
  const PAIR = ['1 Pip', '2 Juno'];
  const TRIO = ['Odile', 'Bram', 'Suki'];
  for (const [address, pair] of [
    ['', '.pairs li'],
    ['sheet', '.pairs li'],
    ['wall', '.wall-pair'],
    ['court', '.pairs li'],
  ] as const) {
    await page.goto(`./#/${address}`);
    await page.locator(pair).first().waitFor();
    expect.soft(await named(page.locator(pair).nth(0)), address).toEqual(PAIR);
    expect.soft(await named(page.locator(pair).nth(1)), address).toEqual(TRIO);
    expect.soft(await smallest(page), address).toBeGreaterThanOrEqual(12);
  }
  await expect(coach.button('1 Pip')).toBeVisible();
  await expect(coach.button('2 Juno')).toBeVisible();
  await coach.start();
  expect(await named(page.locator('.tile-pair').nth(0))).toEqual(PAIR);
  expect(await named(page.locator('.tile-pair').nth(1))).toEqual(TRIO);
  expect(await smallest(page)).toBeGreaterThanOrEqual(12);
  await expect(page.getByRole('region', { name: '1 Pip, 2 Juno' })).toBeVisible();
  await expect(coach.tile('Pip')).toHaveAccessibleName(/1 Pip.*2 Juno/);
  await page.goto('./#/pair/A');
  await page.locator('.pair-screen').waitFor();
  expect(await named(page.locator('.pair-screen'))).toEqual(PAIR);
});

test('a pair’s own screen has the numbers before the start as well', async ({ page }) => {
  await practise(page, 'lob-and-overhead', 'pair/A');
  await page.locator('.pair-said').waitFor();
  expect(await named(page.locator('.pair-said'))).toEqual(['1 Pip', '2 Juno']);
});

test('no numbers stand where both do the same on target, or where no drill is chosen yet', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.pasteSquad(NAMES.join('\n'));
  await coach.visit('');
  await coach.button('Everyone is here').tap();
  await expect(page.locator('.pair-name')).toHaveCount(5);
  await expect(page.locator('.pair-role')).toHaveCount(0);
  await coach.planBlock([{ name: 'Wide past the markers' }]);
  await coach.button('Go to the court').tap();
  await expect(page.locator('.pair-name')).toHaveCount(5);
  await coach.start();
  await expect(page.locator('.tile .pair-name')).toHaveCount(5);
  await expect(page.locator('.pair-role')).toHaveCount(0);
});

test('two taps that swap the two of a pair swap their roles', async ({ page }) => {
  const coach = new Coach(page);
  await practise(page, 'lob-and-overhead', 'court');
  await coach.button('1 Pip').tap();
  await coach.button('2 Juno').tap();
  await expect(coach.button('1 Juno')).toBeVisible();
  await expect(coach.button('2 Pip')).toBeVisible();
});

test('a trio on target is told to turn by the clock, so that all three strike as many; else after each set', async ({
  page,
}) => {
  await practise(page, 'wide-past-the-markers', 'court');
  await expect(page.getByText('Change at each third of the round')).toBeVisible();
  await expect(page.getByText('After each set')).toHaveCount(0);
});

test('a trio whose sets are the pair’s turns after each of them', async ({ page }) => {
  await practise(page, 'lob-and-overhead', 'court');
  await expect(page.getByText('After each set')).toBeVisible();
});
