import { readFileSync } from 'node:fs';
import papaparse from 'papaparse';
import { Coach } from './coach.ts';
import { DEMO_SEASON } from './demo-season.ts';
import { expect, type Locator, type Page, test } from './test.ts';

/*
 * What screens show of the invented season, held against a recount of its table, which the app
 * hands over week by week and another library reads back.
 */

type Row = Record<string, string>;
const num = (row: Row, column: string) => Number(row[column]);
const sum = (rows: readonly Row[], column: string) =>
  rows.reduce((all, row) => all + num(row, column), 0);
const distinct = (rows: readonly Row[], ...columns: string[]) =>
  new Set(rows.map((row) => columns.map((column) => row[column]).join(' '))).size;
const isOnTarget = (row: Row) => row.counting_rule === 'on-target';
/** Every set of a pair is in two rows; on target every set is in one. */
const pairSets = (rows: readonly Row[]) =>
  rows.reduce((all, row) => all + num(row, 'sets') / (isOnTarget(row) ? 1 : 2), 0);
const groupBy = (rows: readonly Row[], ...columns: string[]): Map<string, Row[]> => {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    const key = columns.map((column) => row[column]).join(' ');
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return groups;
};
/** Live clock of the rounds in minutes, each counted once; a player of a trio has two thirds of it. */
const roundMinutes = (rows: readonly Row[]) =>
  [...groupBy(rows, 'date', 'practice', 'round').values()].reduce(
    (all, [row]) => all + (num(row!, 'live_seconds') * (row!.role === 'turns' ? 1.5 : 1)) / 60,
    0,
  );
const FAMILIES: Record<string, string> = {
  groundstrokes: 'Groundstrokes',
  volleys: 'Volleys',
  'overheads-and-lobs': 'Overheads and lobs',
  'serves-and-returns': 'Serves and returns',
};
const kindOf = (row: Row) =>
  `${FAMILIES[row.family ?? '']}${isOnTarget(row) ? ' (on target)' : ''}`;

/** Numbers as people read them, with their thousands apart. */
const shown = (text: string | undefined) => Number(text?.replaceAll(',', ''));
const NUMBER = String.raw`([\d,.]+)`;

/** The table of the week that is shown, read by another library. */
async function tableOfWeek(page: Page): Promise<Row[]> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: /Share the week/ }).tap();
  const text = readFileSync(await (await download).path(), 'utf8');
  const { data, errors } = papaparse.parse<Row>(text, { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  return data;
}

/** The rows of a table of the book: each a name and its numbers by their columns. */
async function book(page: Page, label: string): Promise<Map<string, Record<string, string>>> {
  const table = page.getByRole('table', { name: label });
  const columns = await table.locator('thead th').allTextContents();
  const rows = await table.locator('tbody tr').evaluateAll((all) =>
    all.map((row) => ({
      name: row.querySelector('th')?.textContent ?? '',
      cells: [...row.querySelectorAll('td .explained')].map((cell) => cell.textContent ?? ''),
    })),
  );
  return new Map(
    rows.map(({ name, cells }) => [
      name,
      Object.fromEntries(cells.map((cell, at) => [columns[at + 1] ?? '', cell])),
    ]),
  );
}

function expectAllTouches(text: string | undefined, rows: readonly Row[], what: string): void {
  const [, about, low, high] =
    new RegExp(`^${NUMBER} \\(${NUMBER} to ${NUMBER}\\)$`).exec(text ?? '') ?? [];
  // Every row of the table is rounded to a tenth, and the sum of the screen to a whole.
  expect(Math.abs(shown(about) - sum(rows, 'touches_estimated')), what).toBeLessThanOrEqual(
    0.5 + 0.05 * rows.length + 1e-6,
  );
  expect(shown(low), what).toBeLessThanOrEqual(shown(about));
  expect(shown(high), what).toBeGreaterThanOrEqual(shown(about));
  if (rows.length > 2) {
    // Not end to end.
    expect(shown(high) - shown(low), what).toBeLessThan(
      sum(rows, 'touches_high') - sum(rows, 'touches_low'),
    );
  }
}

async function checkWeek(page: Page, rows: readonly Row[]): Promise<void> {
  const players = await book(page, 'By player');
  for (const [player, own] of groupBy(rows, 'player')) {
    const said = players.get(player);
    expect(said, player).toMatchObject({
      Days: String(distinct(own, 'date')),
      Sets: String(sum(own, 'sets')),
      Touches: String(sum(own, 'touches_counted')),
    });
    expect(shown(said?.Min), player).toBeCloseTo(sum(own, 'live_seconds') / 60, 1);
    expectAllTouches(said?.['All touches'], own, player);
  }
  expect(players.size).toBe(distinct(rows, 'player'));

  const drills = await book(page, 'By drill');
  for (const [drill, of] of groupBy(rows, 'drill')) {
    const said = drills.get(drill);
    expect(said, drill).toMatchObject({
      Rounds: String(distinct(of, 'date', 'practice', 'round')),
      Sets: String(pairSets(of)),
    });
    expect(shown(said?.Touches), drill).toBe(sum(of, 'touches_counted'));
    expect(shown(said?.Min), drill).toBeCloseTo(roundMinutes(of), 1);
  }
  expect(drills.size).toBe(distinct(rows, 'drill'));
}

/** The figures of a list of them, by their names. */
async function figures(list: Locator): Promise<Map<string, string>> {
  const rows = await list.evaluate((element) =>
    [...element.children].map(
      (row) =>
        [
          row.querySelector('dt')?.textContent ?? '',
          row.querySelector('dd')?.textContent ?? '',
        ] as const,
    ),
  );
  return new Map(rows);
}

const atLeast = (text: string | undefined) =>
  shown(new RegExp(`^at least ${NUMBER}`).exec(text ?? '')?.[1]);

/** A player's own page shows the last day, and each drill of it at one size. */
async function checkPlayer(page: Page, rows: readonly Row[]): Promise<void> {
  const last = rows
    .map((row) => row.date ?? '')
    .toSorted()
    .at(-1);
  const day = rows.filter((row) => row.date === last);
  const total = (await page.locator('.own-total').textContent()) ?? '';
  expect(atLeast(total)).toBe(sum(day, 'touches_counted'));
  for (const [, own] of groupBy(day, 'drill', 'set_size')) {
    const part = page.locator('section.part').filter({
      has: page.getByRole('heading', { name: own[0]?.drill ?? '', exact: true }),
    });
    const said = await figures(part.locator('dl.own-kinds'));
    expect(atLeast(said.get('Balls hit'))).toBe(sum(own, 'touches_counted'));
    const sets = sum(own, 'sets');
    if (sets > 0) {
      expect(shown((await part.locator('.own-counts b').textContent()) ?? '')).toBe(sets);
    } else {
      await expect(part).toContainText(isOnTarget(own[0]!) ? 'None on target' : 'No set completed');
    }
    // A single round's consistency is in the table; that of several is not their mean.
    if (own.length === 1) {
      const columns = ['consistency', 'consistency_low', 'consistency_high'] as const;
      const text = said.get(isOnTarget(own[0]!) ? 'Meets the target' : 'Comes back') ?? '';
      const percents = [...text.matchAll(/(\d+)%/g)].map(([, percent]) => Number(percent));
      expect(percents).toHaveLength(columns.length);
      // The table has rounded them to three decimals already: a half may have been less.
      for (const [at, column] of columns.entries()) {
        expect(Math.abs((percents[at] ?? 0) - 100 * num(own[0]!, column))).toBeLessThanOrEqual(
          0.551,
        );
      }
    }
  }
}

/**
 * Sets a minute stand with two decimals below ten and one above; fewer than ten sets, whose upper limit
 * is more than four times the lower (Garwood 1936), as they were counted.
 */
function expectRate(text: string | undefined, sets: number, minutes: number, what: string): void {
  if (sets < 10) {
    const [, counted, within] =
      new RegExp(`^${NUMBER} in ${NUMBER} minutes?$`).exec(text ?? '') ?? [];
    expect(shown(counted), what).toBe(sets);
    expect(Math.abs(shown(within) - minutes), what).toBeLessThanOrEqual(0.05 + 1e-9);
    return;
  }
  const [, rate, low, high] =
    new RegExp(`^${NUMBER} \\(${NUMBER} to ${NUMBER}\\)$`).exec(text ?? '') ?? [];
  const digit = sets / minutes < 10 ? 0.01 : 0.1;
  expect(Math.abs(shown(rate) - sets / minutes), what).toBeLessThanOrEqual(digit / 2 + 1e-9);
  expect(shown(low), what).toBeLessThanOrEqual(sets / minutes);
  expect(shown(high), what).toBeGreaterThanOrEqual(sets / minutes);
}

/** What stands under a heading of the review. */
const work = (page: Page, name: string): Locator =>
  page
    .locator('.review-work')
    .filter({ has: page.getByRole('heading', { name, exact: true }) })
    .locator('dl.review-figures')
    .first();

async function checkKinds(
  page: Page,
  rows: readonly Row[],
  setsOf: (rows: readonly Row[]) => number,
  minutesOf: (rows: readonly Row[]) => number,
): Promise<void> {
  const kinds = new Map<string, Row[]>();
  for (const row of rows) kinds.set(kindOf(row), [...(kinds.get(kindOf(row)) ?? []), row]);
  for (const [kind, own] of kinds) {
    const said = await figures(work(page, kind));
    expectRate(said.get('Sets a minute'), setsOf(own), minutesOf(own), kind);
    expect(atLeast(said.get('Touches')), kind).toBe(sum(own, 'touches_counted'));
  }
}

async function checkPlayerReview(page: Page, rows: readonly Row[]): Promise<void> {
  await page.getByLabel('Weeks that are looked at').selectOption({ label: '12 weeks' });
  const minutes = (own: readonly Row[]) => sum(own, 'live_seconds') / 60;
  await checkKinds(page, rows, (own) => sum(own, 'sets'), minutes);
  for (const [, own] of groupBy(rows, 'drill')) {
    const part = page
      .locator('details.review-drill')
      .filter({ has: page.locator(`h3:text-is("${own[0]?.drill}")`) });
    const said = await figures(part.locator('dl'));
    expect(atLeast(said.get('Touches'))).toBe(sum(own, 'touches_counted'));
    for (const [size, some] of groupBy(own, 'set_size')) {
      const name = {
        'in-a-row': `${size} in a row`,
        'in-total': `${size} in total`,
        sequence: `sequence of ${size}`,
        'on-target': 'on target',
      }[some[0]?.counting_rule ?? ''];
      expectRate(said.get(`Sets a minute, ${name}`), sum(some, 'sets'), minutes(some), name ?? '');
    }
  }
  // Every practice of a kind of work is a dot.
  for (const [kind, count] of await trendCounts(page)) {
    const own = rows.filter((row) => kindOf(row) === kind && row.consistency !== '');
    expect(count, kind).toBe(distinct(own, 'date', 'practice'));
  }
}

async function trendCounts(page: Page): Promise<Map<string, number>> {
  const trends = await page.locator('.trend').evaluateAll((all) =>
    all.map((trend) => ({
      name: trend.querySelector('.trend-name > span')?.textContent ?? '',
      said: trend.querySelector('.graph-ends .explained')?.textContent ?? '',
      dots: trend.querySelector('.graph-dots')?.getAttribute('d')?.match(/M/g)?.length,
    })),
  );
  for (const { name, said, dots } of trends) expect(dots, name).toBe(Number.parseInt(said, 10));
  return new Map(trends.map(({ name, said }) => [name, Number.parseInt(said, 10)]));
}

/** No screen says a number that is none. */
async function expectSound(page: Page): Promise<void> {
  await expect(page.getByRole('main')).not.toContainText(/NaN|undefined|Infinity|∞|\[object/);
}

test.use({ storageState: DEMO_SEASON });

test('no sum, mean or percent of the invented season differs from a recount of its table', async ({
  page,
}) => {
  test.setTimeout(900_000);
  await page.addInitScript(() => {
    Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined });
  });
  const coach = new Coach(page);
  await coach.visit('numbers');
  await expect(page.getByRole('heading', { name: 'Level, with an average partner' })).toBeVisible();
  await expectSound(page);

  // Back from the week of the last practice to the first.
  const rows: Row[] = [];
  await coach.visit('week');
  const toLast = coach.button('To the week of the last practice');
  if (await toLast.isVisible()) await toLast.tap();
  await coach.unfold();
  for (let empty = 0; empty < 2; ) {
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    if (await page.getByRole('table', { name: 'By player' }).isVisible()) {
      const week = await tableOfWeek(page);
      await checkWeek(page, week);
      await expectSound(page);
      rows.push(...week);
    } else empty += rows.length > 0 ? 1 : 0;
    const before = await page.getByRole('link', { name: 'The week before' }).getAttribute('href');
    await coach.visit(before?.slice(2) ?? '');
  }
  expect(rows.length).toBeGreaterThan(1_500);
  expect(distinct(rows, 'date')).toBe(36);

  // The squad over all its weeks: what a pair does in a minute.
  await coach.visit('numbers');
  await page.getByLabel('Weeks that are looked at').selectOption({ label: '12 weeks' });
  const perPair = (own: readonly Row[]) => sum(own, 'live_seconds') / 120;
  await checkKinds(page, rows, pairSets, perPair);
  const links = await page.locator('.review-players > li > a').all();
  const players = await Promise.all(
    links.map(async (link) => [
      (await link.textContent()) ?? '',
      (await link.getAttribute('href'))?.split('/').at(-1) ?? '',
    ]),
  );
  expect(players).toHaveLength(distinct(rows, 'player'));

  for (const [name = '', id = ''] of players) {
    const own = rows.filter((row) => row.player === name);
    await coach.visit(`player/${id}`);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(name);
    if (await page.locator('.fold[aria-expanded=false]').isVisible()) await coach.unfold();
    await checkPlayer(page, own);
    await expectSound(page);
    await coach.visit(`review/${id}`);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(name);
    await checkPlayerReview(page, own);
    await expectSound(page);
  }
});
