import { Coach } from './coach.ts';
import { expect, type Page, test } from './test.ts';

/*
 * Counts that the pairs shout at the horn: how many touches they take, and that none is lost.
 */

const TWELVE = 'Pip Juno Odile Bram Wren Teo Ines Kofi Lars Mila Suki Noor'.split(' ');
const START = new Date('2026-03-03T18:00:00');

/** A coach whose touches are counted. */
async function withCount(page: Page) {
  await page.clock.install({ time: START });
  const coach = new Coach(page);
  let touches = 0;
  const touch = async (name: string | RegExp, exact = false) => {
    touches += 1;
    await page.getByRole('button', { name, exact }).tap();
  };
  /** One number on the pads, for whoever is asked. */
  const call = async (sets: number) => {
    touches += 1;
    await page
      .locator('.call-pads .pads .button')
      .filter({ hasText: String(sets) })
      .first()
      .tap();
  };
  return { coach, touch, call, touches: () => touches };
}

/** Everyone on court with two drills, counted as it is called, from the card to the horn. */
async function playCalled(coach: Coach, drill: string) {
  await coach.reachCourt(TWELVE, [drill, 'Mini rally']);
  await coach.button('Called at the horn').tap();
  await expect(coach.button('Called at the horn')).toHaveAttribute('aria-pressed', 'true');
}

test('six pairs are called with at most seven touches from the horn to the next card, and nothing scrolls', async ({
  page,
}) => {
  const { coach, touch, call, touches } = await withCount(page);
  await playCalled(coach, 'The long rally');
  await touch(/^Start/);
  expect(touches()).toBe(1);
  await page.clock.runFor(125_000);
  const before = touches();
  const rows = page.locator('.call-row');
  await expect(rows).toHaveCount(6);
  for (const [at, sets] of [3, 0, 5, 2, 7, 1].entries()) {
    // The one who is asked is in view, and so are the pads.
    await expect(rows.nth(at)).toHaveAttribute('aria-pressed', 'true');
    await expect(rows.nth(at)).toBeInViewport({ ratio: 1 });
    await expect(page.locator('.call-pads .pads')).toBeInViewport({ ratio: 1 });
    await call(sets);
    await expect(rows.nth(at).locator('.number')).toHaveText(String(sets));
  }
  const scrolled = await page
    .locator('.call-list')
    .evaluate((list) => [list.scrollHeight - list.clientHeight, list.scrollTop, scrollY]);
  expect(scrolled).toEqual([0, 0, 0]);
  await touch('Next round');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Mini rally');
  expect(touches() - before).toBeLessThanOrEqual(7);
});

test('twelve players on target are called with at most fourteen touches', async ({ page }) => {
  const { coach, touch, call, touches } = await withCount(page);
  await playCalled(coach, 'Deep past the markers');
  await touch(/^Start/);
  await page.clock.runFor(125_000);
  const before = touches();
  const rows = page.locator('.call-row');
  await expect(rows).toHaveCount(12);
  for (let at = 0; at < 12; at++) {
    await expect(rows.nth(at)).toBeInViewport({ ratio: 1 });
    await call((3 * at) % 10);
  }
  await touch('Next round');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Mini rally');
  expect(touches() - before).toBeLessThanOrEqual(14);
});

test('a pair that was not heard is in no sum, the week says so, and it can be put in afterwards', async ({
  page,
}) => {
  const { coach, touch, call } = await withCount(page);
  await playCalled(coach, 'The long rally');
  await touch(/^Start/);
  await page.clock.runFor(125_000);
  for (const sets of [3, 1, 2, 2, 4]) await call(sets);
  await touch('Next round');
  await coach.visit('week');
  await coach.unfold();
  await page.clock.runFor(2_000);
  await expect(page.getByText('1 count was not heard')).toBeVisible();
  await page.getByRole('link', { name: 'Put right practice 1' }).first().tap();
  await page.getByRole('link', { name: /^Round 1/ }).tap();
  await page.locator('.pads[aria-label^="Teo"]').first().getByText('3', { exact: true }).tap();
  await touch('Done');
  await coach.visit('week');
  await page.clock.runFor(2_000);
  await expect(page.getByText(/was not heard/)).toHaveCount(0);
});

test('more sets than can be struck are kept, and asked about at once', async ({ page }) => {
  const { coach, touch, call } = await withCount(page);
  await playCalled(coach, 'The long rally');
  await touch(/^Start/);
  await page.clock.runFor(125_000);
  await touch('More than these');
  await touch('More than these');
  await call(29);
  await expect(page.locator('.call-row .number').first()).toHaveText('29');
  await expect(page.getByText(/29 is more than can be struck in this time/)).toBeVisible();
});

test('a reload while calling in loses nothing and goes on with the next pair', async ({ page }) => {
  const { coach, touch, call } = await withCount(page);
  await playCalled(coach, 'The long rally');
  await touch(/^Start/);
  await page.clock.runFor(125_000);
  await call(3);
  await call(5);
  await coach.kept({ kind: 'count-called' }, 2);
  await page.reload();
  const rows = page.locator('.call-row');
  await expect(rows.nth(0).locator('.number')).toHaveText('3');
  await expect(rows.nth(1).locator('.number')).toHaveText('5');
  await expect(rows.nth(2)).toHaveAttribute('aria-pressed', 'true');
});

test('a round with nothing in doubt is settled by one touch', async ({ page }) => {
  await page.clock.install({ time: START });
  const coach = new Coach(page);
  await coach.reachCourt(TWELVE.slice(0, 4), ['The long rally', 'Mini rally']);
  await coach.start();
  await page.clock.runFor(60_000);
  await coach.mark('Pip');
  await page.clock.runFor(65_000);
  await coach.button('Next round').tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Mini rally');
  await coach.visit('');
  await expect(page.getByText('settled', { exact: true })).toBeVisible();
});

test('a late mark is to be decided before the round is settled', async ({ page }) => {
  await page.clock.install({ time: START });
  const coach = new Coach(page);
  await coach.reachCourt(TWELVE.slice(0, 4), ['The long rally', 'Mini rally']);
  await coach.start();
  await page.clock.runFor(123_000);
  await coach.mark('Pip');
  await expect(coach.button('Next round')).toHaveCount(0);
  await coach.button('Put counts right').tap();
  await expect(page.getByText(/^After the horn, /)).toBeVisible();
});

test('roles turn at half the clock of a lob and its overhead: seen, and kept', async ({ page }) => {
  await page.clock.install({ time: START });
  const coach = new Coach(page);
  await coach.reachCourt(TWELVE.slice(0, 4), ['Lob and overhead', 'Mini rally']);
  await expect(coach.button('Roles turn at half-time')).toHaveAttribute('aria-pressed', 'true');
  await coach.start();
  await page.clock.runFor(60_200);
  await expect(page.getByRole('status').filter({ hasText: 'Turn roles' })).toBeVisible();
  await page.clock.runFor(65_000);
  await coach.button('Put counts right').tap();
  await expect(page.getByText(/^Roles turned at 1:0[01]\.$/)).toBeVisible();
  await coach.button('They did not turn').tap();
  await expect(page.getByText('Roles did not turn in this round.')).toBeVisible();
});
