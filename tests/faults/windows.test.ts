import { Coach } from '../browser/coach.ts';
import { tell, times } from './counts.ts';
import { secondsLeft, setsShown, startLongRound, tapOnAndOn } from './court.ts';
import { marksIn, recordsOn } from './records.ts';
import { expect, type Page, test } from './test.ts';

/** Two windows of the app on one phone, both on the same running round. */
async function twoWindows(page: Page): Promise<[Page, Page]> {
  await page.goto('./');
  await startLongRound(page);
  const other = await page.context().newPage();
  await other.goto('./');
  await other.getByRole('timer').waitFor();
  return [page, other];
}

const leaders = (page: Page) =>
  page.evaluate(async () => {
    const { held = [] } = await navigator.locks.query();
    return held.filter(({ name }) => name === 'rally-ledger/lead').length;
  });

test('two windows that tap at once keep every mark of both, and both show all of them', async ({
  page,
}) => {
  const windows = await twoWindows(page);
  const each = times(40, 400);
  const taps = windows.map(() => ({ tapped: 0, saved: [] }));
  await Promise.all(windows.map((window, at) => tapOnAndOn(window, taps[at]!, each)));
  await expect
    .poll(async () => marksIn(await recordsOn(page)).length, { timeout: 120_000 })
    .toBe(2 * each);
  const marks = marksIn(await recordsOn(page));
  expect(new Set(marks.map(({ id }) => id)).size).toBe(2 * each);
  const own = ['A', 'B'].map((pair) => marks.filter((mark) => mark.pair === pair).length);
  for (const window of windows) {
    await expect
      .poll(async () => [await setsShown(window, 0), await setsShown(window, 1)])
      .toEqual(own);
  }
  tell('windows', windows.length);
  tell('marks tapped', 2 * each);
  tell('marks kept and shown in both', marks.length);
});

test('a round started, paused and resumed in either window is so in both, on one clock', async ({
  page,
}) => {
  const [one, other] = await twoWindows(page);
  expect(await leaders(one)).toBe(1);
  await new Coach(other).button('Pause').tap();
  await expect(new Coach(one).button('Go on')).toBeVisible();
  await expect.poll(async () => (await secondsLeft(one)) - (await secondsLeft(other))).toBe(0);
  await new Coach(one).button('Go on').tap();
  await expect(new Coach(other).button('Pause')).toBeVisible();
  expect(Math.abs((await secondsLeft(one)) - (await secondsLeft(other)))).toBeLessThanOrEqual(1);
  expect(await leaders(one)).toBe(1);
  await one.close();
  await expect.poll(() => leaders(other)).toBe(1);
});

test('a mark taken back in one window is taken back in the other', async ({ page }) => {
  const [one, other] = await twoWindows(page);
  await new Coach(one).mark('Pip');
  await new Coach(one).mark('Pip');
  await expect.poll(() => setsShown(other, 0)).toBe(2);
  await new Coach(other).takeBack('Pip');
  await expect.poll(() => setsShown(one, 0)).toBe(1);
});

test('what is no entry is never taken from another window', async ({ page }) => {
  const [one, other] = await twoWindows(page);
  await new Coach(one).mark('Pip');
  await expect.poll(() => setsShown(other, 0)).toBe(1);
  await other.evaluate(() => {
    const channel = new BroadcastChannel('rally-ledger');
    for (const told of [
      undefined,
      7,
      'entries',
      {},
      { entries: 'none' },
      { entries: [undefined, 7, {}, { kind: 'mark' }, { kind: 'mark', id: 'x', at: -1 }] },
    ]) {
      channel.postMessage(told);
    }
  });
  await new Coach(one).mark('Pip');
  await expect.poll(() => setsShown(other, 0)).toBe(2);
  await expect.poll(() => setsShown(one, 0)).toBe(2);
});
