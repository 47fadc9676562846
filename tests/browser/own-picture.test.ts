import { NOON } from './planted-round.ts';
import { openPractised, playerId } from './played-practice.ts';
import { expect, type Page, test } from './test.ts';

/* The picture of a child's own day. */

const DRILLS = ['mini-rally', 'long-rally'];

/** Pip's page after practices so many days ago. */
async function openPip(page: Page, daysBefore: readonly number[]): Promise<void> {
  await page.clock.install({ time: NOON });
  await openPractised(
    page,
    { names: ['Pip', 'Juno'], drills: DRILLS, daysBefore },
    `player/${playerId(0)}`,
  );
}

test('a drill that a player had for the first time says so, and has no line that means nothing', async ({
  page,
}) => {
  await openPip(page, [1]);
  const first = page.locator('.own-picture').getByText('the first time');
  await expect(first).toHaveCount(DRILLS.length);
  for (const each of await first.all())
    expect((await each.boundingBox())?.height).toBeGreaterThan(8);
  await expect(page.locator('.own-picture .own-line')).toHaveCount(0);
});

test('a drill that was played before has its line beside the usual and the best, and no such words in sight', async ({
  page,
}) => {
  await openPip(page, [3, 1]);
  await expect(page.locator('.own-picture .own-line')).toHaveCount(DRILLS.length);
  await expect(page.locator('.own-picture').getByText('the first time')).toHaveCount(0);
});
