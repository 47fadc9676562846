import { Coach } from '../browser/coach.ts';
import { tell, times } from './counts.ts';
import { offFrom, setsShown, startLongRound, type Taps, tapOnAndOn } from './court.ts';
import { marksIn, type Records, recordsOn } from './records.ts';
import { expect, test } from './test.ts';

const KILLS = times(5, 100);
/** A round of ten minutes is left for the next before its horn can go. */
const KILLS_A_ROUND = 20;
/** Seconds: the screen shows whole ones, and is written ten times in each. */
const MOST_OFF = 1.5;

const sum = (counts: readonly number[]) => counts.reduce((all, count) => all + count, 0);

const marksOfRound = (records: Records) => {
  const rounds = records.map(([, record]) => record).filter(({ kind }) => kind === 'clock-started');
  const last = rounds.at(-1);
  return {
    start: Number(last?.at),
    marks: marksIn(records).filter((mark) => (mark as { round?: unknown }).round === last?.round),
  };
};

test('the browser is killed at random moments while marks are tapped: all that showed as saved is there, once, and the clock is right', async ({
  phone,
}) => {
  let page = await phone.open();
  await startLongRound(page, Math.ceil(KILLS / KILLS_A_ROUND));
  let [tapped, shownSaved, found, lost, twice] = [0, 0, 0, 0, 0];
  let furthest = 0;
  for (let kill = 1; kill <= KILLS; kill++) {
    const before = marksOfRound(await recordsOn(page)).marks.length;
    const taps: Taps = { tapped: 0, saved: [] };
    await tapOnAndOn(page, taps);
    // Once a mark was saved, at any moment of the next second.
    await expect.poll(() => sum(taps.saved)).toBeGreaterThan(before);
    await new Promise((resolve) => setTimeout(resolve, 1_000 * Math.random()));
    await phone.kill();

    page = await phone.open();
    await page.getByRole('timer').waitFor();
    const { start, marks } = marksOfRound(await recordsOn(page));
    for (const [tile, pair] of ['A', 'B'].entries()) {
      const own = marks.filter((mark) => mark.pair === pair).length;
      lost += Math.max(0, (taps.saved[tile] ?? 0) - own);
      await expect.poll(() => setsShown(page, tile)).toBe(own);
    }
    expect(marks.length).toBeLessThanOrEqual(before + taps.tapped);
    twice += marks.length - new Set(marks.map(({ pair, second }) => `${pair} ${second}`)).size;
    tapped += taps.tapped;
    shownSaved += Math.max(0, sum(taps.saved) - before);
    found += marks.length - before;
    await expect.poll(() => offFrom(page, start)).toBeLessThanOrEqual(MOST_OFF);
    furthest = Math.max(furthest, await offFrom(page, start));

    if (kill % KILLS_A_ROUND === 0 && kill < KILLS) {
      const coach = new Coach(page);
      await coach.stop();
      await coach.button('Put counts right').tap();
      await coach.button('Next round').tap();
      await coach.start();
    }
  }
  tell('kills', KILLS);
  tell('marks tapped', tapped);
  tell('marks that showed as saved', shownSaved);
  tell('marks found afterwards', found);
  tell('marks lost that had shown as saved', lost);
  tell('marks found twice', twice);
  tell('clock off by at most, s', furthest.toFixed(1));
  expect(shownSaved).toBeGreaterThanOrEqual(KILLS);
  expect(lost).toBe(0);
  expect(twice).toBe(0);
});

test('a phone that sleeps in mid-round wakes with the right time and takes the next mark', async ({
  phone,
}) => {
  const page = await phone.open();
  const coach = await startLongRound(page);
  await coach.mark('Pip');
  await coach.saved();
  const sleeps = times(2, 10);
  let furthest = 0;
  for (let sleep = 1; sleep <= sleeps; sleep++) {
    await phone.sleep(2_500);
    await coach.mark('Pip');
    await expect.poll(async () => marksOfRound(await recordsOn(page)).marks.length).toBe(sleep + 1);
    const { start } = marksOfRound(await recordsOn(page));
    await expect.poll(() => offFrom(page, start)).toBeLessThanOrEqual(MOST_OFF);
    furthest = Math.max(furthest, await offFrom(page, start));
  }
  tell('sleeps', sleeps);
  tell('clock off by at most, s', furthest.toFixed(1));
});

test('a connection closed from under the app in mid-round costs no mark', async ({ phone }) => {
  const page = await phone.open(async (context) => {
    // Keeps hold of every connection that the app opens.
    await context.addInitScript(() => {
      const connections: IDBDatabase[] = [];
      Object.assign(window, { closeAll: () => connections.splice(0).map((db) => db.close()) });
      const open = IDBFactory.prototype.open;
      IDBFactory.prototype.open = function (...given) {
        const request = open.apply(this, given);
        request.addEventListener('success', () => connections.push(request.result));
        return request;
      };
    });
  });
  const coach = await startLongRound(page);
  const closings = times(5, 50);
  for (let closing = 1; closing <= closings; closing++) {
    const closed = await page.evaluate(
      () => (window as unknown as { closeAll(): unknown[] }).closeAll().length,
    );
    expect(closed).toBeGreaterThan(0);
    await coach.mark('Pip');
    await coach.saved();
    await expect(page.getByText(/not saved yet\./)).toHaveCount(0);
  }
  expect(marksIn(await recordsOn(page))).toHaveLength(closings);
  tell('connections closed', closings);
  tell('marks tapped and found', closings);
});

test('a database removed from under the app in mid-round is written again from what is shown', async ({
  phone,
}) => {
  const page = await phone.open();
  const coach = await startLongRound(page);
  for (let mark = 0; mark < 3; mark++) await coach.mark('Odile');
  await coach.saved();
  const before = await recordsOn(page);
  await page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const request = indexedDB.deleteDatabase('rally-ledger');
        request.onsuccess = resolve;
        request.onerror = reject;
        request.onblocked = reject;
      }),
  );
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect.poll(async () => (await recordsOn(page)).length).toBe(before.length);
  expect(await recordsOn(page)).toEqual(before);
  await page.reload();
  await coach.tile('Odile').waitFor();
  await expect.poll(() => setsShown(page, 1)).toBe(3);
});
