import { NOON } from './planted-round.ts';
import { openPractised, playerId } from './played-practice.ts';
import { expect, test } from './test.ts';

/* The picture of a child's own day. */

const DRILLS = ['mini-rally', 'long-rally'];

test('a drill that a player had for the first time says so, and has no line that means nothing', async ({
  page,
}) => {
  await page.clock.install({ time: NOON });
  await openPractised(
    page,
    { names: ['Pip', 'Juno'], drills: DRILLS, daysBefore: [1] },
    `player/${playerId(0)}`,
  );
  const first = page.locator('.own-picture').getByText('the first time');
  await expect(first).toHaveCount(DRILLS.length);
  for (const each of await first.all())
    expect((await each.boundingBox())?.height).toBeGreaterThan(8);
  await expect(page.locator('.own-picture .own-line')).toHaveCount(0);
});

test('a drill that was played before has its line beside the usual and the best, and no such words in sight', async ({
  page,
}) => {
  await page.clock.install({ time: NOON });
  await openPractised(
    page,
    { names: ['Pip', 'Juno'], drills: DRILLS, daysBefore: [3, 1] },
    `player/${playerId(0)}`,
  );
  await expect(page.locator('.own-picture .own-line')).toHaveCount(DRILLS.length);
  await expect(page.locator('.own-picture').getByText('the first time')).toHaveCount(0);
});
