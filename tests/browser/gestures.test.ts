import { NOON, openPlanted } from './planted-round.ts';
import { type CDPSession, expect, type Page, test } from './test.ts';

/* No gesture of a hurried hand takes a running round away: no scroll, no zoom, no pull, no way back. */

const PAIRS = Array.from({ length: 8 }, (_, pair) => [`Wren ${pair}`, `Teo ${pair}`]);

/** Drags a finger from one place to another, as fast as a hand does. */
async function drag(session: CDPSession, from: [number, number], to: [number, number]) {
  const at = (share: number) => ({
    x: from[0] + share * (to[0] - from[0]),
    y: from[1] + share * (to[1] - from[1]),
  });
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at(0)] });
  for (const share of [0.2, 0.4, 0.6, 0.8, 1]) {
    await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [at(share)] });
  }
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

/** Spreads two fingers around the middle of the screen. */
async function spread(session: CDPSession) {
  const fingers = (apart: number) => [
    { x: 195 - apart, y: 420, id: 1 },
    { x: 195 + apart, y: 420, id: 2 },
  ];
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: fingers(20) });
  for (const apart of [40, 70, 100, 140]) {
    await session.send('Input.dispatchTouchEvent', {
      type: 'touchMove',
      touchPoints: fingers(apart),
    });
  }
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

const view = (page: Page) =>
  page.evaluate(() => ({
    scrolled: [scrollX, scrollY],
    zoom: visualViewport?.scale,
    selected: String(getSelection()),
  }));

const STILL = { scrolled: [0, 0], zoom: 1, selected: '' };

test('drags, spread fingers, two quick taps and a long press leave a running round as it stands', async ({
  page,
  context,
}) => {
  await page.clock.install({ time: NOON });
  await openPlanted(page, { pairs: PAIRS });
  await expect(page.locator('.tile')).toHaveCount(8);
  const session = await context.newCDPSession(page);
  await drag(session, [195, 700], [195, 200]);
  await drag(session, [195, 60], [195, 700]); // From the clock down, as one pulls to load anew.
  await drag(session, [5, 400], [350, 400]);
  expect(await view(page)).toEqual(STILL);
  await spread(session);
  expect(await view(page)).toEqual(STILL);
  for (const place of ['.running-clock', '.tile-name', '.tile-sets']) {
    await page.locator(place).first().tap();
    await page.locator(place).first().tap();
  }
  await page.locator('.tile-name').first().click({ delay: 900 });
  expect(await view(page)).toEqual(STILL);
  await expect(page.locator('.tile')).toHaveCount(8);
  await expect(page.getByRole('button', { name: 'Pause' })).toBeVisible();
});

test('the same gestures do scroll and zoom a page that is read', async ({ page, context }) => {
  await page.goto('./#/settings');
  await page.getByRole('heading', { level: 1 }).waitFor();
  const session = await context.newCDPSession(page);
  await drag(session, [195, 700], [195, 200]);
  await expect.poll(async () => (await view(page)).scrolled[1]).toBeGreaterThan(100);
  await spread(session);
  await expect.poll(async () => (await view(page)).zoom).toBeGreaterThan(1.2);
});

test('the page asks the browser for no pull to load anew and no swipe to another page', async ({
  page,
}) => {
  await page.clock.install({ time: NOON });
  await openPlanted(page, { pairs: PAIRS });
  await page.locator('.tiles').waitFor();
  expect(
    await page.evaluate(() => ({
      page: getComputedStyle(document.documentElement).overscrollBehavior,
      touch: ['.running', '.tile-count', '.tile-back'].map(
        (place) => getComputedStyle(document.querySelector(place) as Element).touchAction,
      ),
    })),
  ).toEqual({ page: 'none', touch: ['none', 'none', 'none'] });
});
