import { Coach } from '../browser/coach.ts';
import { tell } from './counts.ts';
import { clocksOf, secondsLeft, setsShown, startLongRound } from './court.ts';
import { marksIn, recordsOn } from './records.ts';
import { expect, type Page, test } from './test.ts';

const HOUR = 3_600_000;

/** A page whose wall clock can be set, and keeps what it was set to over a reload. */
async function withClock(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const Real = Date;
    const shift = () => Number(sessionStorage.getItem('shift') ?? 0);
    class Shifted extends Real {
      constructor(...given: unknown[]) {
        if (given.length === 0) super(Real.now() + shift());
        else super(...(given as [number]));
      }
      static override now = () => Real.now() + shift();
    }
    window.Date = Shifted as DateConstructor;
  });
}

/** Sets the phone's clock, away from where it is. */
const setClock = (page: Page, by: number) =>
  page.evaluate((ms) => {
    sessionStorage.setItem('shift', String(Number(sessionStorage.getItem('shift') ?? 0) + ms));
  }, by);

/** The app has looked at its clocks and noted what it found. */
const jumpSeen = (page: Page) =>
  expect
    .poll(async () => (await recordsOn(page)).map(([, { kind }]) => kind))
    .toContain('clock-doubted');

/** The page is out of sight, or in sight again. */
const showPage = (page: Page, state: 'hidden' | 'visible') =>
  page.evaluate((to) => {
    Object.defineProperty(document, 'visibilityState', { value: to, configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  }, state);

/** Ends the round and reads what settle says of its clock. */
async function settle(page: Page): Promise<string> {
  const coach = new Coach(page);
  await coach.stop();
  await coach.button('Put counts right').tap();
  // The court has a heading of its own: only settle's says that the screen has changed.
  await page.getByRole('heading', { level: 1, name: 'Put counts right' }).waitFor();
  return (await page.getByRole('main').textContent()) ?? '';
}

/** The marks sort by their ids as they were made on the round's own clock. */
async function inOrder(page: Page): Promise<void> {
  const marks = marksIn(await recordsOn(page)).toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const seconds = marks.map(({ second }) => second);
  expect(seconds).toEqual(seconds.toSorted((a, b) => a - b));
}

/** As much has gone from the screen since then as on the wall. */
async function followsWall(page: Page, before: { left: number; wall: number }): Promise<void> {
  const off = async () => {
    const { left, wall } = await clocksOf(page);
    return Math.abs(before.left - left - (wall - before.wall) / 1000);
  };
  await expect.poll(off).toBeLessThanOrEqual(1.5);
}

for (const [name, by] of [
  ['forward', HOUR],
  ['back', -HOUR],
] as const) {
  test(`a clock set ${name} an hour in mid-round does not move the round, also after a reload, and settle says so`, async ({
    page,
  }) => {
    await withClock(page);
    await page.goto('./');
    const coach = await startLongRound(page);
    await coach.mark('Pip');
    const before = await clocksOf(page);
    const off = async () => {
      const { left, steady } = await clocksOf(page);
      return Math.abs(before.left - left - (steady - before.steady) / 1000);
    };
    let furthest = 0;
    for (const then of ['set', 'seen', 'reload', 'reload'] as const) {
      if (then === 'set') await setClock(page, by);
      if (then === 'seen') await jumpSeen(page);
      if (then === 'reload') {
        await page.reload();
        await page.getByRole('timer').waitFor();
      }
      await coach.mark('Pip');
      await coach.saved();
      await expect.poll(off).toBeLessThanOrEqual(2.5);
      furthest = Math.max(furthest, await off());
    }
    await expect.poll(() => setsShown(page, 0)).toBe(5);
    await inOrder(page);
    expect(await settle(page)).toMatch(/clock jumped by 3,?[56]\d\d/);
    tell(`clock set ${name} by an hour: off by at most, s`, furthest.toFixed(1));
  });
}

test('a clock set back an hour while the app was gone lets the round go on from its last mark, and settle says so', async ({
  page,
}) => {
  await withClock(page);
  await page.goto('./');
  const coach = await startLongRound(page);
  await expect.poll(() => secondsLeft(page)).toBeLessThanOrEqual(597);
  await coach.mark('Pip');
  await coach.saved();
  const [mark] = marksIn(await recordsOn(page));
  const { steady: stood } = await clocksOf(page);
  await page.evaluate(
    (shift) => addEventListener('pagehide', () => sessionStorage.setItem('shift', shift)),
    String(-HOUR),
  );
  await page.reload();
  await page.getByRole('timer').waitFor();
  const { left, steady } = await clocksOf(page);
  // The screen shows whole seconds, and the page has been there again for some.
  const gone = 600 - (mark?.second ?? 0) - left;
  expect(gone).toBeGreaterThanOrEqual(-1);
  expect(gone).toBeLessThanOrEqual(1 + (steady - stood) / 1000);
  await coach.mark('Pip');
  await coach.saved();
  await inOrder(page);
  expect(await settle(page)).toContain('clock jumped');
});

test('a phone whose steady clock slept in mid-round follows the wall, and settle says so', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const real = performance.now.bind(performance);
    Object.assign(window, { slept: 0 });
    performance.now = () => real() - Number(Reflect.get(window, 'slept'));
  });
  await withClock(page);
  await page.goto('./');
  const coach = await startLongRound(page);
  await coach.mark('Pip');
  const before = await clocksOf(page);
  await showPage(page, 'hidden');
  // A minute passes on the wall and not on the steady clock.
  await setClock(page, 60_000);
  await showPage(page, 'visible');
  await followsWall(page, before);
  expect(before.left - (await secondsLeft(page))).toBeGreaterThanOrEqual(60);
  await coach.mark('Pip');
  await coach.saved();
  await inOrder(page);
  expect(await settle(page)).toMatch(/clock jumped by (59|60|61)/);
});

test('a round over which summer time ends, or midnight passes, is as long as any other', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-10-25T00:58:00Z') });
  await page.goto('./');
  const coach = await startLongRound(page);
  const before = await clocksOf(page);
  await page.clock.fastForward(180_000);
  await followsWall(page, before);
  expect(before.left - (await secondsLeft(page))).toBeGreaterThanOrEqual(180);
  await coach.mark('Pip');
  await coach.saved();
  expect(await settle(page)).not.toContain('clock jumped');
});

test('a practice goes on past midnight', async ({ page }) => {
  await page.clock.install({ time: new Date('2026-11-24T23:58:00+01:00') });
  await page.goto('./');
  const coach = await startLongRound(page);
  await coach.mark('Pip');
  await page.clock.fastForward(240_000);
  await coach.mark('Pip');
  await coach.saved();
  await expect.poll(() => setsShown(page, 0)).toBe(2);
  await page.reload();
  await page.getByRole('timer').waitFor();
  await expect.poll(() => setsShown(page, 0)).toBe(2);
});
