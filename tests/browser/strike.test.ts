import { marksIn, recordsOn } from '../faults/records.ts';
import { Coach } from './coach.ts';
import { NOON, openPlanted } from './planted-round.ts';
import { expect, type Page, test } from './test.ts';

/* A tile answers in the moment of the touch; what the touch sets off comes behind its frame. */

const PAIRS = [
  ['Pip', 'Juno'],
  ['Odile', 'Bram'],
];

/** Touches the tile of the first pair so often without any frame between, and gives what it shows after each. */
const touches = (page: Page, times: number) =>
  page.evaluate(async (times) => {
    const tile = document.querySelector('.tile-count');
    const shown: number[] = [];
    for (let touch = 0; touch < times; touch++) {
      tile?.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, button: 0 }));
      await new Promise((resolve) => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = resolve; // What was put off to the end of the touch's own task is done.
        port2.postMessage(0);
      });
      shown.push(Number.parseInt(tile?.querySelector('.tile-sets')?.textContent ?? '', 10));
    }
    return shown;
  }, times);

/** On a phone whose clock stands, so that a frame comes only when it is let on. */
async function onTheCourt(page: Page): Promise<Coach> {
  await page.clock.install({ time: NOON });
  await openPlanted(page, { pairs: PAIRS });
  const coach = new Coach(page);
  await coach.tile('Pip').waitFor();
  await page.clock.pauseAt(NOON + 10_000);
  return coach;
}

test('the number stands on the tile before any frame has come', async ({ page }) => {
  const coach = await onTheCourt(page);
  expect(await touches(page, 3)).toEqual([1, 2, 3]);
  await page.clock.runFor(1_000);
  await coach.saved();
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b3 sets\b/);
  expect(marksIn(await recordsOn(page))).toHaveLength(3);
});

test('no disc is full beside a number that is not on the disk, not even before the frame', async ({
  page,
}) => {
  const coach = await onTheCourt(page);
  await touches(page, 1);
  await page.clock.runFor(1_000);
  await coach.saved();
  expect(await touches(page, 1)).toEqual([2]);
  const disc = page.locator('.tile').first().locator('.tile-saved');
  expect(await disc.getAttribute('data-saved')).toBe('false');
  await page.clock.runFor(1_000);
  await expect(disc).toHaveAttribute('data-saved', 'true');
  expect(marksIn(await recordsOn(page))).toHaveLength(2);
});

test('a mark bears the time of its touch, however late the frame behind it', async ({ page }) => {
  await onTheCourt(page);
  const touched = await page.evaluate(() => Date.now());
  await touches(page, 1);
  await page.clock.runFor(1_000);
  const begun = (await recordsOn(page)).find(([, record]) => record.kind === 'clock-started')?.[1];
  await expect
    .poll(async () => marksIn(await recordsOn(page)).map(({ second }) => second))
    .toEqual([expect.closeTo((touched - Number(begun?.at)) / 1_000, 2)]);
});

test('a page that is left before the frame has kept the mark all the same', async ({ page }) => {
  await onTheCourt(page);
  await touches(page, 2);
  await page.evaluate(() => dispatchEvent(new PageTransitionEvent('pagehide')));
  await expect.poll(async () => marksIn(await recordsOn(page)).length).toBe(2);
});

test('a touch after the horn is no set on the tile, and waits for a decision', async ({ page }) => {
  const coach = await onTheCourt(page);
  await page.clock.runFor(125_000);
  expect(await touches(page, 1)).toEqual([0]);
  await page.clock.runFor(1_000);
  await expect(coach.tile('Pip')).toContainText('late');
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b0 sets\b/);
});

test('a tile is ink for a moment after a touch, and only that tile', async ({ page }) => {
  await onTheCourt(page);
  await touches(page, 1);
  await page.clock.runFor(60);
  await expect(page.locator('.tile[data-struck]')).toHaveCount(1);
  await page.clock.runFor(500);
  await expect(page.locator('.tile[data-struck]')).toHaveCount(0);
});

test('a touch behind the horn is no set either before the screen has told of the horn', async ({
  page,
}) => {
  await onTheCourt(page);
  // Time goes on and nothing has looked at it, as on a phone that is busy while the horn goes.
  await page.evaluate(() => {
    for (const clock of [performance, Date]) {
      const now = clock.now.bind(clock);
      clock.now = () => now() + 125_000;
    }
  });
  expect(await touches(page, 1)).toEqual([0]);
});
