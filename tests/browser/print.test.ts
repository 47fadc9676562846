import { openPractised, playerId } from './played-practice.ts';
import { expect, type Page, test } from './test.ts';

/* The week on paper: A4 with the page's own margin of 15 mm, as Chromium prints it. */

const NICKNAMES = ['Pip', 'Juno', 'Odile', 'Bram', 'Suki', 'Taro', 'Wren', 'Moss', 'Lark', 'Ines'];
const squad = (players: number) =>
  Array.from(
    { length: players },
    (_, index) => `${NICKNAMES[index % NICKNAMES.length]}${'I'.repeat(index / NICKNAMES.length)}`,
  );

/** A week of two practices. */
async function openWeek(page: Page, players: number): Promise<void> {
  await openPractised(
    page,
    {
      names: squad(players),
      drills: ['half-court-rally', 'lob-and-overhead', 'volley-to-volley', 'wide-past-the-markers'],
      daysBefore: [1, 0.02],
    },
    'week',
  );
  await expect(page.locator('.book').first().locator('tbody tr')).toHaveCount(players);
  await expect(page.locator('.week-days li')).toHaveCount(2);
  // Until all is worked out a dash stands where a number with its limits will.
  await expect(page.locator('.book-wide .explained', { hasText: '—' })).toHaveCount(0, {
    timeout: 60_000,
  });
}

const pagesOf = async (page: Page): Promise<number> =>
  (await page.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

/**
 * What lies on something else on paper, in words. A page is cut as columns are, so that columns of
 * a page's size show where each line comes to lie.
 */
async function overlaps(page: Page): Promise<string[]> {
  await page.emulateMedia({ media: 'print' });
  const found = await page.evaluate(() => {
    const { style } = document.body;
    style.cssText =
      'inline-size: 180mm; block-size: 267mm; columns: 1; column-fill: auto; column-gap: 15mm';
    const lines = [...document.querySelectorAll('main h1, main h2, main h3, main p, main tbody tr')]
      .filter((line) => !line.closest('.no-print') && line.getClientRects().length > 0)
      .flatMap((line) => [...line.getClientRects()].map((box) => ({ line, box })));
    const bad = lines.flatMap(({ line, box }, at) =>
      lines
        .slice(at + 1)
        .filter(
          ({ box: other }) =>
            Math.min(box.right, other.right) - Math.max(box.left, other.left) > 1 &&
            Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top) > 1,
        )
        .map((other) => `"${line.textContent}" lies on "${other.line.textContent}"`),
    );
    const rows = [...document.querySelectorAll('.book tbody tr')];
    const torn = rows.filter((row) => row.getClientRects().length > 1);
    style.cssText = '';
    return [...bad, ...torn.map((row) => `"${row.textContent}" is torn in two`)];
  });
  await page.emulateMedia({ media: 'screen' });
  return found;
}

for (const players of [2, 11, 12]) {
  test(`a week of ${players} players is one page`, async ({ page }) => {
    await openWeek(page, players);
    expect(await pagesOf(page)).toBe(1);
  });
}

for (const players of [11, 12, 17, 20, 23, 24]) {
  test(`on paper nothing of a week of ${players} players lies on anything else, and no row is torn`, async ({
    page,
  }) => {
    await openWeek(page, players);
    expect(await overlaps(page)).toEqual([]);
  });
}

test('every screen that looks back is ink on white paper, its pictures too, on a dark phone', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openPractised(page, {
    names: squad(4),
    drills: ['half-court-rally', 'lob-and-overhead'],
    daysBefore: [5, 1],
  });
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const own = playerId(0);
  for (const address of [
    ...['review', 'glance', 'numbers', 'neglected', 'together', 'sizes', 'season', 'coverage'],
    ...[`line/${own}`, `review/${own}`, `player/${own}`, 'quality'],
  ]) {
    await page.goto(`./#/${address}`);
    await expect(page.getByRole('main')).not.toContainText('Reading');
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    const onPaper = await page.evaluate(() => {
      const { color, backgroundColor, printColorAdjust } = getComputedStyle(
        document.documentElement,
      );
      return { color, backgroundColor, printColorAdjust };
    });
    expect(onPaper, address).toEqual({
      color: 'rgb(0, 0, 0)',
      backgroundColor: 'rgb(255, 255, 255)',
      // A bar is a ground of its own, which a browser leaves out to save ink.
      printColorAdjust: 'exact',
    });
    // What only leads elsewhere is not on paper.
    await expect(page.locator('main a:visible').filter({ hasText: 'At a glance' })).toHaveCount(0);
  }
});
