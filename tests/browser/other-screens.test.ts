import { Coach } from './coach.ts';
import { NOON, openPlanted } from './planted-round.ts';
import { expect, type Page, test } from './test.ts';

/* The screens that others than the coach look at: a pair's own, and the wall. */

const PAIRS = [
  ['Pip', 'Juno'],
  ['Odile', 'Bram'],
];

const LONG_ENOUGH = 2_100;

/** Holds a control by the page's own clock; one that acts is gone before it is let go. */
async function hold(page: Page, name: string, ms: number): Promise<void> {
  const button = page.getByRole('button', { name });
  await button.dispatchEvent('pointerdown', { button: 0, pointerId: 1 });
  await page.locator('.hold-fill').waitFor({ state: 'attached' });
  await page.clock.runFor(ms);
  if (ms < LONG_ENOUGH) await button.dispatchEvent('pointerup', { pointerId: 1 });
}

test.describe("a pair's own screen", () => {
  test.beforeEach(async ({ page }) => {
    await page.clock.install({ time: NOON });
  });

  test('is reached from the card, starts by a press of two seconds, and counts for that pair only', async ({
    page,
  }) => {
    const coach = new Coach(page);
    await openPlanted(page, { pairs: PAIRS, started: false });
    await page.getByText('Other screens').tap();
    await page.getByRole('link', { name: /^B: the own screen/ }).tap();
    await expect(page.getByText('Waits for the start.')).toBeVisible();
    await coach.button('Start').tap();
    await expect(page.locator('.tile')).toHaveCount(0);
    await hold(page, 'Start', LONG_ENOUGH);
    await expect(page.locator('.tile')).toHaveCount(1);
    await coach.mark('Odile');
    await page.keyboard.press('b');
    await page.keyboard.press('a');
    await page.keyboard.press(' ');
    await expect(page.locator('.tile-sets')).toContainText('2');

    await hold(page, 'For the coach', LONG_ENOUGH);
    await expect(coach.tile('Odile')).toHaveAccessibleName(/\b2 sets\b/);
    await expect(coach.tile('Pip')).toHaveAccessibleName(/\b0 sets\b/);
    await expect(coach.button('Pause')).toBeVisible();
  });

  test('is left by no tap, no short press, no back gesture and no address, and not by a reload', async ({
    page,
  }) => {
    const coach = new Coach(page);
    await openPlanted(page, { pairs: PAIRS });
    await coach.button('Pause').tap();
    await coach.button('Other screens').tap();
    await page.getByRole('link', { name: /^A: the own screen/ }).tap();
    const leave = coach.button('For the coach');
    await leave.tap();
    await hold(page, 'For the coach', 1_000);
    await page.goBack();
    await expect(leave).toBeVisible();
    await page.evaluate(() => {
      location.hash = '#/settings';
    });
    await expect(leave).toBeVisible();
    expect(new URL(page.url()).hash).toBe('#/pair/A');
    await page.reload();
    await expect(leave).toBeVisible();
    await hold(page, 'Go on', LONG_ENOUGH);
    await expect(coach.button('Go on')).toHaveCount(0);
    await page.clock.fastForward(125_000);
    await expect(page.getByRole('status').filter({ hasText: 'Time’s up' })).toBeVisible();
    await hold(page, 'For the coach', LONG_ENOUGH);
    await expect(coach.button('Put counts right')).toBeVisible();
  });

  test('of a letter that does not play says so, and can be left', async ({ page }) => {
    await openPlanted(page, { pairs: PAIRS }, 'pair/H');
    await expect(page.getByText('No pair H plays in this round.')).toBeVisible();
    await hold(page, 'For the coach', LONG_ENOUGH);
    await expect(page.locator('.tile')).toHaveCount(2);
  });
});

test.describe('the wall', () => {
  const names = (pairs: number) =>
    Array.from({ length: pairs }, (_, pair) => [`Wren ${pair}`, `Teo ${pair}`]);

  test('follows the window that counts, and counts nothing itself', async ({ page, context }) => {
    const coach = new Coach(page);
    await coach.reachCourt(['Pip', 'Juno', 'Odile', 'Bram'], ['Mini rally']);
    await page.getByText('Other screens').tap();
    const opened = context.waitForEvent('page');
    await page.getByRole('link', { name: 'Wall view' }).tap();
    const wall = await opened;
    await expect(wall.getByRole('heading', { level: 1 })).toHaveText('Mini rally');
    await expect(wall.getByRole('timer')).toHaveText('2:00');
    await expect(wall.locator('.wall-sets')).toHaveCount(0);

    await coach.start();
    await coach.mark('Odile');
    await coach.mark('Odile');
    const sets = wall.locator('.wall-pair').filter({ hasText: 'Odile' }).locator('.wall-sets');
    await expect(sets).toHaveText(/^2/);
    await sets.tap();
    await wall.keyboard.press('1');
    await wall.keyboard.press('2');
    await coach.button('Pause').tap();
    await expect(wall.getByRole('status')).toHaveText('Paused');
    await expect(sets).toHaveText(/^2/);
    await expect(wall.locator('.wall-sets').filter({ hasText: '0' })).toHaveCount(1);
  });

  for (const pairs of [2, 7, 12]) {
    test(`of ${pairs} pairs is read from 20 m on a television, a laptop and a tablet, either way round`, async ({
      page,
    }) => {
      await page.clock.install({ time: NOON });
      await openPlanted(page, { pairs: names(pairs) }, 'wall');
      await expect(page.locator('.wall-pair')).toHaveCount(pairs);
      for (const [width, height] of [
        [1920, 1080],
        [1080, 1920],
        [1024, 768],
        [768, 1024],
      ] as const) {
        await page.setViewportSize({ width, height });
        const found = await page.evaluate(() => {
          const short = Math.min(innerWidth, innerHeight);
          const size = (selector: string) =>
            Math.min(
              ...[...document.querySelectorAll(selector)].map((element) =>
                Number.parseFloat(getComputedStyle(element).fontSize),
              ),
            ) / short;
          const within = (inner: Element, outer: DOMRect) => {
            const { left, right, top, bottom } = inner.getBoundingClientRect();
            return (
              left >= outer.left - 1 &&
              right <= outer.right + 1 &&
              top >= outer.top - 1 &&
              bottom <= outer.bottom + 1
            );
          };
          const screen = new DOMRect(0, 0, innerWidth, innerHeight);
          const loose = [
            ...[...document.querySelectorAll('.wall-head > *, .wall-pair')].filter(
              (element) => !within(element, screen),
            ),
            ...[...document.querySelectorAll('.wall-pair')].flatMap((pair) =>
              [...pair.querySelectorAll('.letter, .wall-names > span, .wall-sets')].filter(
                (element) => !within(element, pair.getBoundingClientRect()),
              ),
            ),
          ];
          return {
            clock: size('.wall-clock'),
            sets: size('.wall-sets'),
            letter: size('.wall-pair .letter b'),
            name: size('.wall-names'),
            loose: loose.map((element) => element.className),
          };
        });
        const at = `${width} × ${height}`;
        expect.soft(found.loose, at).toEqual([]);
        if (Math.max(width, height) < 1920) continue; // A tablet is looked at from nearer.
        // Shares of a television's shorter side, which is 685 mm at 55 inches. A capital or numeral
        // has seven tenths of its font's size. At 20 m a letter of five minutes of arc, which good
        // eyes read, is 29 mm: 0.06. Clock and counts are for everybody's eyes.
        expect.soft(found.clock, at).toBeGreaterThan(0.18);
        expect.soft(found.sets, at).toBeGreaterThan(0.12);
        expect.soft(found.letter, at).toBeGreaterThan(0.06);
        expect.soft(found.name, at).toBeGreaterThan(0.045);
      }
    });
  }
});
