import { entriesOn } from '../faults/records.ts';
import { Coach } from './coach.ts';
import { expect, type Page, test } from './test.ts';

const PLAYERS = ['Pip', 'Juno', 'Odile', 'Bram'];

const timeLeft = async (page: Page) => {
  const [minutes = 0, seconds = 0] = ((await page.getByRole('timer').textContent()) ?? '')
    .split(':')
    .map(Number);
  return 60 * minutes + seconds;
};

test('two fingers on two tiles at once count twice', async ({ page, context }) => {
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await coach.start();
  const boxes = await Promise.all(
    ['Pip', 'Odile'].map((player) => coach.tile(player).boundingBox()),
  );
  const touchPoints = boxes.map((box, id) => ({
    x: (box?.x ?? 0) + (box?.width ?? 0) / 2,
    y: (box?.y ?? 0) + (box?.height ?? 0) / 2,
    id,
  }));
  const session = await context.newCDPSession(page);
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  for (const player of ['Pip', 'Odile']) {
    await expect(coach.tile(player)).toHaveAccessibleName(/\b1 set\b/);
  }
  await coach.saved();
  expect(await entriesOn(page, 'mark')).toHaveLength(2);
});

test('a reload in mid-round opens on that round with the right time and all marks', async ({
  page,
}) => {
  const start = new Date('2026-11-24T16:30:00');
  await page.clock.install({ time: start });
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await coach.start();
  const begun = await timeLeft(page);
  for (let mark = 0; mark < 5; mark++) {
    await page.clock.fastForward(6_000);
    await coach.mark('Pip');
  }
  await coach.mark('Odile');
  await coach.saved();
  const left = await timeLeft(page);
  expect(begun - left).toBeGreaterThanOrEqual(30);

  await page.reload();
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b5 sets\b/);
  await expect(coach.tile('Odile')).toHaveAccessibleName(/\b1 set\b/);
  // By the page's own clock, which went on while the page was loaded.
  const started = (await entriesOn(page, 'clock-started'))[0]?.at ?? 0;
  const [shown, wall] = await page.evaluate(() => [
    document.querySelector('[role=timer]')?.textContent ?? '',
    Date.now(),
  ]);
  const [minutes = 0, seconds = 0] = shown.split(':').map(Number);
  const due = 120 - (wall - started) / 1000;
  expect(Math.abs(60 * minutes + seconds - due)).toBeLessThanOrEqual(2);
  await page.clock.fastForward(110_000);
  await expect(coach.button('Put counts right')).toBeVisible();
});

test('a pause stops the clock, thirty seconds can be added, and the back gesture leads nowhere while it runs', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-11-24T16:30:00') });
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await coach.start();
  await page.clock.fastForward(20_000);
  await page.goBack();
  await expect(page.getByRole('timer')).toBeVisible();
  await coach.button('Pause').tap();
  const paused = await timeLeft(page);
  await page.clock.fastForward(60_000);
  expect(await timeLeft(page)).toBe(paused);
  await coach.button('Go on').tap();
  await coach.button(/thirty more seconds/).tap();
  await expect.poll(() => timeLeft(page)).toBeGreaterThan(paused + 25);
  await page.clock.fastForward(paused * 1000);
  await expect(coach.button('Put counts right')).toHaveCount(0);
  await page.clock.fastForward(30_000);
  await expect(coach.button('Put counts right')).toBeVisible();
});

test('a set too soon after the one before is shown as doubtful and settle can strike it', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-11-24T16:30:00') });
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await coach.start();
  await page.clock.fastForward(10_000);
  await coach.mark('Pip');
  await coach.mark('Pip');
  await expect(coach.tile('Pip')).toContainText('1 doubtful');
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b2 sets\b/);
  await coach.stop();
  await coach.button('Put counts right').tap();
  await coach.button('Doesn’t count').tap();
  await expect(page.locator('.settle-count output').first()).toHaveText('1');
});

/** The first round of two drills is over, without a set, and its counts are about to be put right. */
async function atSettle(page: Page): Promise<Coach> {
  await page.clock.install({ time: new Date('2026-11-24T16:30:00') });
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally', 'Soft volleys']);
  await coach.start();
  await page.clock.fastForward(125_000);
  await coach.button('Put counts right').tap();
  return coach;
}

test('a round passed over can be settled later the same day', async ({ page }) => {
  const coach = await atSettle(page);
  await coach.button('Skip, settle later today').tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Soft volleys');
  await coach.button('Back').tap();
  await page.getByRole('link', { name: 'Round 1: Mini rally' }).tap();
  await coach.button(/^One set more for Pip/).tap();
  await coach.button('Done').tap();
  await expect(page.getByRole('listitem').filter({ hasText: 'Round 1: Mini rally' })).toContainText(
    'settled',
  );
});

test('the size that would suit, which comes late, moves no button of settle from under a finger', async ({
  page,
}) => {
  await atSettle(page);
  await page.locator('.size-off').first().waitFor();
  const late = (await page.locator('.size-off').first().boundingBox())?.y ?? 0;
  const buttons = page.locator('.settle button:visible:not(.size-off *, .before-start *)');
  for (const button of await buttons.all()) {
    const box = await button.boundingBox();
    if (box)
      expect(box.y + box.height, (await button.textContent()) ?? '').toBeLessThanOrEqual(late);
  }
});

/** The shortest round that can be set, on the browser's own timers; EVERY=1 plays the usual one. */
const REAL = process.env.EVERY === undefined ? 30 : 120;

test(`a real round of ${REAL} s with a mark every three is recorded as ${REAL} s to a tenth`, async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await coach.visit('block');
  for (let less = 120; less > REAL; less -= 30) await coach.button('A round lasts −').tap();
  await coach.visit('court');
  await page.evaluate(() => {
    const heard = () => {
      if (!('heard' in window) && document.querySelector('[data-over]')) {
        Object.assign(window, { heard: Date.now() });
      }
    };
    new MutationObserver(heard).observe(document, {
      subtree: true,
      childList: true,
      attributes: true,
    });
  });
  await coach.start();
  for (let left = REAL; left > 0; left -= 3) {
    await expect.poll(() => timeLeft(page)).toBeLessThanOrEqual(left);
    await coach.mark(left % 2 === 0 ? 'Pip' : 'Odile');
  }
  await expect(coach.button('Put counts right')).toBeVisible();
  // When the horn went by the wall, as the page itself saw it.
  const heard = await page.evaluate(() => Number(Reflect.get(window, 'heard')));
  await coach.saved();
  const started = (await entriesOn(page, 'clock-started'))[0]?.at ?? 0;
  const marks = await entriesOn(page, 'mark');
  expect(marks).toHaveLength(REAL / 3);
  // The entry's own start to the horn that was seen: a look every tenth of a second lies between.
  expect((heard - started) / 1000).toBeGreaterThanOrEqual(REAL - 0.1);
  expect((heard - started) / 1000).toBeLessThan(REAL + 1.5);
  for (const mark of marks) {
    expect(Math.abs(mark.second - (mark.at - started) / 1000)).toBeLessThan(0.1);
  }
  await coach.button('Put counts right').tap();
  await expect(page.getByText(`${REAL} s on the round clock`)).toBeVisible();
});
