import { Coach } from './coach.ts';
import { openPractised, playerId } from './played-practice.ts';
import { expect, type Page, test } from './test.ts';

/* The same word over the same practices, whoever looks: the coach's review and the player's own page. */

/** Two of them on the last day. */
const PRACTICES = [23, 20, 17, 14, 11, 8, 4, 1.1, 1];
const SQUAD = {
  names: ['Pip', 'Juno', 'Odile', 'Bram'],
  drills: ['half-court-rally', 'lob-and-overhead'],
  daysBefore: PRACTICES,
};

/** What stands under the heading: of each kind of work its word, and the practices that it rests on. */
const trends = (page: Page) =>
  page
    .locator('.trend')
    .evaluateAll((all) =>
      all.map((trend) =>
        [...trend.querySelectorAll('.trend-name, .graph-ends .explained')].map(
          (part) => part.textContent,
        ),
      ),
    );

async function at(page: Page, address: string): Promise<void> {
  const coach = new Coach(page);
  await coach.visit(address);
  if (address.startsWith('player')) await coach.unfold();
  await page.getByRole('heading', { name: 'Over the practices' }).waitFor();
}

test('a player’s page and the review say the same words over the same practices', async ({
  page,
}) => {
  await openPractised(page, SQUAD);
  await at(page, `review/${playerId(0)}`);
  await expect(page.locator('.trend')).toHaveCount(2, { timeout: 60_000 });
  const review = await trends(page);
  expect(review.map(([, practices]) => practices)).toEqual(['9 practices', '9 practices']);
  await at(page, `player/${playerId(0)}`);
  expect(await trends(page)).toEqual(review);
  // And the squad's list has the same words.
  await new Coach(page).visit('numbers');
  const words = page.locator('.review-players > li').first().locator('dt');
  expect(new Set(await words.allTextContents())).toEqual(
    new Set(
      review.map(
        ([name]) => /(rising|steady|falling|not clear yet|too few yet)$/.exec(name ?? '')?.[0],
      ),
    ),
  );
});

test('while practices are still being worked out no screen says a word that may change', async ({
  page,
}) => {
  // The phone has never a moment for it.
  await page.addInitScript(() => {
    window.requestIdleCallback = () => 0;
  });
  await openPractised(page, SQUAD);
  for (const address of [`review/${playerId(0)}`, `player/${playerId(0)}`]) {
    await at(page, address);
    const part = page.getByRole('region', { name: 'Over the practices' });
    await expect(part).toContainText('still being worked out');
    await expect(page.locator('.trend')).toHaveCount(0);
    await expect(page.getByText('Over all kinds of work')).toHaveCount(0);
  }
});
