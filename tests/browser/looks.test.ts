import { entriesOn } from '../faults/records.ts';
import { Coach } from './coach.ts';
import { NOON, openPlanted } from './planted-round.ts';
import { expect, type Page, test } from './test.ts';

/*
 * Spot checks while a round runs: whoever counts is never disturbed, and no tap on a tile is an
 * answer.
 */

const SIX = ['Pip Juno', 'Odile Bram', 'Wren Teo', 'Ines Kofi', 'Lars Mila', 'Suki Noor'].map(
  (pair) => pair.split(' '),
);
const SIZES = [
  { width: 390, height: 844 },
  { width: 320, height: 568 },
  { width: 844, height: 390 },
];

const boxes = (page: Page): Promise<string[]> =>
  page
    .locator('.tile')
    .evaluateAll((tiles) =>
      tiles.map((tile) => JSON.stringify(tile.getBoundingClientRect().toJSON())),
    );

/** From here on the page's clock goes on only where it is told to, however slow the machine is. */
async function holdClock(page: Page): Promise<void> {
  await page.locator('.look').waitFor();
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 2_000);
}

/** All that a test looks at in one moment of a round: whoever is asked for, the tiles, the clock. */
const seen = (page: Page) =>
  page.evaluate(() => {
    const look = document.querySelector<HTMLElement>('.look');
    const [minutes = 0, seconds = 0] =
      document.querySelector('[role=timer]')?.textContent?.split(':').map(Number) ?? [];
    return {
      left: 60 * minutes + seconds,
      name: look?.matches('[data-asked]')
        ? (look.querySelector('p')?.textContent ?? undefined)
        : undefined,
      height: look?.clientHeight,
      boxes: [...document.querySelectorAll('.tile')].map((tile) => {
        const { x, y, width, height } = tile.getBoundingClientRect();
        return { x, y, width, height };
      }),
    };
  });

const asked = (page: Page) => page.locator('.look[data-asked]');

for (const size of SIZES) {
  test(`while tiles are tapped on ${size.width} × ${size.height} no prompt changes a tile’s box, and no tap is an answer`, async ({
    page,
  }) => {
    await page.setViewportSize(size);
    await page.clock.install({ time: NOON });
    await openPlanted(page, { pairs: SIX, focus: 'recovery', checks: 6 });
    await holdClock(page);
    const before = await seen(page);
    expect(before.boxes).toHaveLength(6);
    const names = new Set<string>();
    let taps = 0;
    for (let second = 1, left = 120; left > 1; second++) {
      await page.clock.runFor(1_000);
      // In every corner of a tile but the one that takes back, as a thumb that does not look.
      const box = before.boxes[second % 6]!;
      const corner = [
        { x: box.width - 6, y: 6 },
        { x: 6, y: 6 },
        { x: 6, y: box.height - 6 },
        { x: box.width / 2, y: 4 },
      ][second % 4]!;
      await page.touchscreen.tap(box.x + corner.x, box.y + corner.y);
      taps += 1;
      const { name, ...rest } = await seen(page);
      if (name !== undefined) names.add(name);
      expect(rest.boxes).toEqual(before.boxes);
      expect(rest.height).toBe(before.height);
      left = rest.left;
    }
    expect(names.size).toBe(6);
    await page.clock.runFor(100); // The frame behind the last touch.
    await new Coach(page).saved();
    expect(await entriesOn(page, 'look')).toEqual([]);
    expect(await entriesOn(page, 'mark')).toHaveLength(taps);
  });
}

test('one touch answers yes, no or not seen, another puts it right, and the place is empty again', async ({
  page,
}) => {
  await page.clock.install({ time: NOON });
  await openPlanted(page, { pairs: SIX, focus: 'recovery', checks: 6 });
  await holdClock(page);
  const before = await boxes(page);
  const no = page.getByRole('button', { name: 'No', exact: true });
  const coach = new Coach(page);
  for (let looks = 0; looks < 3; looks++) {
    while (!(await asked(page).isVisible())) await page.clock.runFor(500);
    await page.clock.runFor(600);
    await no.tap();
    await expect(no).toHaveAttribute('aria-pressed', 'true');
    expect(await boxes(page)).toEqual(before);
    if (looks === 1) await coach.button('Not seen').tap();
    while (await asked(page).isVisible()) await page.clock.runFor(500);
    await expect(no).toBeHidden();
  }
  await expect.poll(() => entriesOn(page, 'look')).toHaveLength(4);
  const looks = await entriesOn(page, 'look');
  expect(looks.map(({ saw, focus }) => [saw, focus])).toEqual(
    ['no', 'no', 'unseen', 'no'].map((saw) => [saw, 'recovery']),
  );
  expect(new Set(looks.map(({ player }) => player)).size).toBe(3);
  expect(await entriesOn(page, 'mark')).toEqual([]);
});

test('a finger that was on its way as the name came answers nothing', async ({ page }) => {
  await page.clock.install({ time: NOON });
  await openPlanted(page, { pairs: SIX, focus: 'recovery', checks: 6 });
  await holdClock(page);
  // By steps of the app's own look at the clock, so that the name has come a moment ago.
  while (!(await asked(page).isVisible())) await page.clock.runFor(200);
  await page.locator('.look-answers .button').first().tap();
  await page.clock.runFor(1_000);
  expect(await entriesOn(page, 'look')).toEqual([]);
});

test('a called round asks up to twelve times and shows its focus all along', async ({ page }) => {
  await page.clock.install({ time: NOON });
  await openPlanted(page, { pairs: SIX, focus: 'recovery', checks: 12, called: true });
  const look = page.locator('.look');
  await expect(look).toContainText('Back in place in time?');
  await holdClock(page);
  const names = new Set<string>();
  let prompts = 0;
  let last: string | undefined;
  for (let left = 120; left > 1; ) {
    await page.clock.runFor(1_000);
    const { name, ...rest } = await seen(page);
    if (name !== undefined && name !== last) prompts += 1;
    if (name !== undefined) names.add(name);
    last = name;
    left = rest.left;
  }
  expect(prompts).toBe(12);
  expect(names.size).toBe(12);
});

test('a focus is chosen for the block, stands on the card, and a round without one has no place for it', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.reachCourt(['Pip', 'Juno'], ['Mini rally']);
  await expect(page.getByText('Back in place in time?')).toBeHidden();
  await coach.visit('block');
  await page.getByLabel('Focus of the block').selectOption('Back in place in time?');
  await coach.visit('court');
  await expect(page.getByText('Back in place in time?')).toBeVisible();
  await expect(page.getByText('Hit, then go')).toBeVisible();
  await coach.start();
  await expect(page.locator('.look')).toContainText('Back in place in time?');
});
