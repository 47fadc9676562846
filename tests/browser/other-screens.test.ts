import { expect, type Page, test } from 'playwright/test';
import { Coach } from './coach.ts';
import { NOON, openPlanted } from './planted-round.ts';

/* The screens that others than the coach look at: a pair's own, and the wall. */

const PAIRS = [
  ['Pip', 'Juno'],
  ['Odile', 'Bram'],
];

/** Holds a control, by the page's own clock. */
async function hold(page: Page, name: string, ms: number): Promise<void> {
  const button = page.getByRole('button', { name });
  await button.dispatchEvent('pointerdown', { button: 0, pointerId: 1 });
  await page.clock.runFor(ms);
  await button.dispatchEvent('pointerup', { button: 0, pointerId: 1 }).catch(() => {});
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
    await hold(page, 'Start', 2_100);
    await expect(page.locator('.tile')).toHaveCount(1);
    await coach.mark('Odile');
    await page.keyboard.press('b');
    await page.keyboard.press('a');
    await page.keyboard.press(' ');
    await expect(page.locator('.tile-sets')).toContainText('2');

    await hold(page, 'Leave this screen', 2_100);
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
    const leave = coach.button('Leave this screen');
    await leave.tap();
    await hold(page, 'Leave this screen', 1_500);
    await page.goBack();
    await expect(leave).toBeVisible();
    await page.evaluate(() => {
      location.hash = '#/settings';
    });
    await expect(leave).toBeVisible();
    expect(new URL(page.url()).hash).toBe('#/pair/A');
    await page.reload();
    await expect(leave).toBeVisible();
    await hold(page, 'Go on', 2_100);
    await expect(coach.button('Go on')).toHaveCount(0);
    await page.clock.fastForward(125_000);
    await expect(page.getByRole('status').filter({ hasText: 'Time' })).toBeVisible();
    await hold(page, 'Leave this screen', 2_100);
    await expect(coach.button('Put counts right')).toBeVisible();
  });

  test('of a letter that does not play says so, and can be left', async ({ page }) => {
    await openPlanted(page, { pairs: PAIRS }, 'pair/H');
    await expect(page.getByText('No pair H plays in this round.')).toBeVisible();
    await hold(page, 'Leave this screen', 2_100);
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
    await expect(wall.locator('.wall-sets')).toHaveText([/^0/, /^2/]);
    await wall.locator('.wall-pair').first().tap();
    await wall.keyboard.press('1');
    await coach.button('Pause').tap();
    await expect(wall.getByRole('status')).toHaveText('Paused');
    await expect(wall.locator('.wall-sets')).toHaveText([/^0/, /^2/]);
    await expect(coach.tile('Pip')).toHaveAccessibleName(/\b0 sets\b/);
  });

  for (const size of [
    { width: 1920, height: 1080 },
    { width: 1080, height: 1920 },
    { width: 1024, height: 768 },
    { width: 768, height: 1024 },
  ]) {
    test(`is read from 20 m on ${size.width} × ${size.height}, with two pairs and with twelve, and nothing is cut`, async ({
      page,
    }) => {
      await page.clock.install({ time: NOON });
      await page.setViewportSize(size);
      for (const pairs of [2, 7, 12]) {
        await openPlanted(page, { pairs: names(pairs) }, 'wall');
        await expect(page.locator('.wall-pair')).toHaveCount(pairs);
        const found = await page.evaluate(() => {
          const short = Math.min(innerWidth, innerHeight);
          const size = (selector: string) =>
            Math.min(
              ...[...document.querySelectorAll(selector)].map((element) =>
                Number.parseFloat(getComputedStyle(element).fontSize),
              ),
            );
          const inside = (inner: Element, outer: Element | null | undefined) => {
            const a = inner.getBoundingClientRect();
            const b = outer?.getBoundingClientRect() ?? new DOMRect(0, 0, innerWidth, innerHeight);
            return (
              a.left >= b.left - 1 &&
              a.right <= b.right + 1 &&
              a.top >= b.top - 1 &&
              a.bottom <= b.bottom + 1
            );
          };
          return {
            clock: size('.wall-clock') / short,
            sets: size('.wall-sets') / short,
            letter: size('.wall-pair .letter b') / short,
            name: size('.wall-names') / short,
            cut: [...document.querySelectorAll('.wall-pair *:not(.unseen)')].filter(
              (element) => !inside(element, element.closest('.wall-pair')),
            ).length,
            off: [...document.querySelectorAll('.wall-head > *, .wall-pair')].filter(
              (element) => !inside(element, undefined),
            ).length,
          };
        });
        // A capital is about seven tenths of its font's size. On a television of 55 inches, 685 mm
        // high, five minutes of arc at 20 m (29 mm, a letter for good eyes) want 0.06 of the height.
        expect(found.clock, `${pairs} pairs`).toBeGreaterThan(0.18);
        expect(found.sets, `${pairs} pairs`).toBeGreaterThan(0.1);
        expect(found.letter, `${pairs} pairs`).toBeGreaterThan(0.045);
        expect(found.name, `${pairs} pairs`).toBeGreaterThan(0.04);
        expect(found.cut, `${pairs} pairs`).toBe(0);
        expect(found.off, `${pairs} pairs`).toBe(0);
        await page.evaluate(() => indexedDB.deleteDatabase('rally-ledger'));
      }
    });
  }
});
