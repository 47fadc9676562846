import { Coach } from '../browser/coach.ts';
import { tell } from './counts.ts';
import { secondsLeft, setsShown, startLongRound } from './court.ts';
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

/** The page is out of sight, or in sight again. */
const showPage = (page: Page, state: 'hidden' | 'visible') =>
  page.evaluate((to) => {
    Object.defineProperty(document, 'visibilityState', { value: to, configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  }, state);

/** Ends the round and reads what settle says of its clock. */
async function settle(page: Page): Promise<string> {
  const coach = new Coach(page);
  await coach.button('Stop').tap();
  await coach.button('Stop now?').tap();
  await coach.button('Put counts right').tap();
  await page.getByRole('heading', { level: 1 }).waitFor();
  return (await page.getByRole('main').textContent()) ?? '';
}

/** The marks sort by their ids as they were made on the round's own clock. */
async function inOrder(page: Page): Promise<void> {
  const marks = marksIn(await recordsOn(page)).toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const seconds = marks.map(({ second }) => second);
  expect(seconds).toEqual(seconds.toSorted((a, b) => a - b));
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
    const [begun, left] = [Date.now(), await secondsLeft(page)];
    const off = async () =>
      Math.abs(left - (await secondsLeft(page)) - (Date.now() - begun) / 1000);
    let furthest = 0;
    for (const then of ['mark', 'wait', 'reload', 'reload'] as const) {
      if (then === 'mark') await setClock(page, by);
      if (then === 'reload') {
        await page.reload();
        await page.getByRole('timer').waitFor();
      } else await page.waitForTimeout(1_500);
      await coach.mark('Pip');
      await coach.saved();
      furthest = Math.max(furthest, await off());
    }
    expect(furthest).toBeLessThanOrEqual(2.5);
    expect(await setsShown(page, 0)).toBe(5);
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
  await page.waitForTimeout(3_000);
  await coach.mark('Pip');
  await coach.saved();
  const left = await secondsLeft(page);
  await setClock(page, -HOUR);
  await page.reload();
  await page.getByRole('timer').waitFor();
  expect(Math.abs((await secondsLeft(page)) - left)).toBeLessThanOrEqual(3);
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
  const left = await secondsLeft(page);
  await showPage(page, 'hidden');
  // A minute passes on the wall and not on the steady clock.
  await setClock(page, 60_000);
  await showPage(page, 'visible');
  await page.waitForTimeout(300);
  expect(left - (await secondsLeft(page))).toBeGreaterThanOrEqual(60);
  expect(left - (await secondsLeft(page))).toBeLessThanOrEqual(64);
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
  const left = await secondsLeft(page);
  await page.clock.fastForward(180_000);
  expect(Math.abs(left - (await secondsLeft(page)) - 180)).toBeLessThanOrEqual(4);
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
  expect(await setsShown(page, 0)).toBe(2);
  await page.reload();
  await page.getByRole('timer').waitFor();
  expect(await setsShown(page, 0)).toBe(2);
});
