import { readFileSync } from 'node:fs';
import papaparse from 'papaparse';
import { Coach } from './coach.ts';
import { expect, type Page, test } from './test.ts';

/*
 * A new coach's first evening, on the screens as they come, without a reload: twelve children in,
 * a practice, its close, a second practice with a slip and a change of mind; then every number of
 * the week is made again from the table that the week hands over.
 */

/** 38 letters each without a space; the first two differ in one letter, far from their beginning. */
const NAMES = [
  'Wilhelmina-Alexandrina-Oranienburgerin',
  'Wilhelmina-Alexandrina-Oranienburgerim',
  ...Array.from(
    { length: 10 },
    (_, index) => `${'BCDEFGHIJK'[index]}artholomea-Maximiliane-Regenbogenste`,
  ),
];

const SHOTS = process.env.SHOTS;

/** A coach who looks at the screen at each step and taps only what is there. */
class NewCoach extends Coach {
  touches = 0;
  #looks = 0;

  constructor(
    page: Page,
    readonly called: string,
  ) {
    super(page);
  }

  async tap(name: string | RegExp): Promise<void> {
    this.touches += 1;
    const named = { name, exact: typeof name === 'string' };
    const { page } = this;
    await page.getByRole('button', named).or(page.getByRole('link', named)).first().tap();
  }

  /** Ticks who is here, or takes the tick away again. */
  async tapsHere(name: string): Promise<void> {
    this.touches += 1;
    await this.page.getByRole('region', { name: 'Who is here' }).getByText(name).tap();
  }

  async look(what: string): Promise<void> {
    const { scrollWidth, clientWidth } = await this.page.evaluate(() => ({
      scrollWidth: document.documentElement.scrollWidth,
      clientWidth: document.documentElement.clientWidth,
    }));
    expect.soft(scrollWidth, `${what}: the page is as wide as the phone`).toBe(clientWidth);
    if (!SHOTS) return;
    const name = `${this.called}-${String(++this.#looks).padStart(2, '0')}-${what}`;
    await this.page.screenshot({ path: `${SHOTS}/${name}.png`, fullPage: true });
  }

  /** A round whose pairs are tapped by their places, so many sets each, ten seconds apart. */
  async playsTapped(sets: readonly number[]): Promise<void> {
    await this.look('card');
    await this.tap(/^Start/);
    await this.page.getByRole('timer').waitFor();
    const tiles = this.page.locator('.tile-count');
    for (let turn = 0; turn < Math.max(...sets); turn++) {
      await this.page.clock.fastForward(10_000);
      for (const [place, count] of sets.entries()) {
        if (turn >= count) continue;
        this.touches += 1;
        await tiles.nth(place).tap();
      }
    }
    await this.look('court');
    await this.page.clock.fastForward(125_000);
    await this.tap('Put counts right');
    await this.page.getByRole('heading', { name: 'Put counts right' }).waitFor();
    await this.look('settle');
  }
}

interface Row {
  date: string;
  practice: string;
  round: string;
  drill: string;
  player: string;
  sets: string;
  touches_counted: string;
  live_seconds: string;
}

/** A table of the week as it is shown: the numbers in each row's cells, by the row's name. */
async function weekTable(page: Page, label: string): Promise<Record<string, number[]>> {
  const rows = await page.locator(`[aria-labelledby=${label}] tbody tr`).all();
  const read = rows.map(async (row): Promise<[string, number[]]> => {
    const cells = (await row.locator('td').allTextContents()).map(Number.parseFloat);
    return [(await row.locator('th').textContent()) ?? '', cells.slice(0, 4)];
  });
  return Object.fromEntries(await Promise.all(read));
}

/** The rows of the table by one of its columns, added up. */
function addUp(rows: readonly Row[], by: 'player' | 'drill', first: (own: Row[]) => number) {
  const names = [...new Set(rows.map((row) => row[by]))];
  const total = (own: Row[], of: 'sets' | 'touches_counted' | 'live_seconds') =>
    own.reduce((sum, row) => sum + Number(row[of]), 0);
  // Each set of these drills is two players' own, also in a trio; so is each second of a pair.
  const shared = by === 'drill' ? 2 : 1;
  return Object.fromEntries(
    names.map((name) => {
      const own = rows.filter((row) => row[by] === name);
      const pairs = new Set(own.map(({ date, practice, round }) => `${date} ${practice}.${round}`));
      const minutes =
        by === 'drill' ? pairs.size * 2 : Number((total(own, 'live_seconds') / 60).toFixed(1));
      return [
        name,
        [first(own), total(own, 'sets') / shared, total(own, 'touches_counted'), minutes],
      ];
    }),
  );
}

test.beforeEach(async ({ page }) => {
  await page.clock.install({ time: new Date('2026-11-24T16:30:00') });
  await page.addInitScript(() => {
    Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined });
  });
});

for (const { width, height, text } of [
  { width: 320, height: 568, text: '100%' },
  { width: 390, height: 844, text: '200%' },
]) {
  test(`a first evening of two practices comes to the week that its table comes to, at ${width} px with the text at ${text}`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    const coach = new NewCoach(page, `${width}-${text.slice(0, 3)}`);
    await coach.open();
    await page.evaluate((text) => {
      document.documentElement.style.fontSize = text;
    }, text);
    await coach.look('first');

    await coach.tap('Add players');
    await coach.look('squad');
    await page.getByLabel('Paste the list here').fill(NAMES.join('\n'));
    await coach.tap('Take these names');
    await coach.look('names');
    await coach.tap('On to today’s practice');
    await coach.look('today');

    // One is not here after all: a slip that leaves no trace.
    await coach.tap('Everyone is here');
    await coach.look('everyone');
    const [first = '', second = ''] = NAMES;
    await coach.tapsHere(second);
    await coach.tap('Choose drills');
    await coach.look('block');
    await coach.tap('Add Mini rally');
    await coach.tap('Add Soft volleys');
    await coach.tap('Done');
    await coach.look('planned');
    await coach.tap('Go to the court');
    await coach.playsTapped([3, 1, 4, 1, 5]);
    await coach.tap('Next round');
    await coach.playsTapped([2, 0, 2, 1, 0]);
    await coach.tap('Done');
    await coach.look('done');
    await coach.tap('Close this practice');
    await coach.look('closed');

    // The second practice of the evening, of whoever stayed; one mark too many is taken back.
    await page.clock.fastForward(3_600_000);
    await coach.tap(/another practice/);
    for (const name of [first, second, NAMES[4] ?? '', NAMES[7] ?? '']) await coach.tapsHere(name);
    await coach.tap('Choose drills');
    await coach.tap('Add Mini rally');
    await coach.tap('Done');
    await coach.tap('Go to the court');
    await coach.playsTapped([2, 6]);
    await coach.tap('Done');
    await coach.tap('Close this practice');
    if (SHOTS) console.log(`${coach.called}: ${coach.touches} touches`);

    await coach.tap('Week');
    await coach.look('week');
    const download = page.waitForEvent('download');
    await coach.tap(/Share the week/);
    const file = readFileSync(await (await download).path(), 'utf8');
    const { data, errors } = papaparse.parse<Row>(file, { header: true, skipEmptyLines: true });
    expect(errors).toEqual([]);
    expect(data.map(({ practice, round }) => `${practice}.${round}`)).toEqual([
      ...Array(11).fill('1.1'),
      ...Array(11).fill('1.2'),
      ...Array(4).fill('2.1'),
    ]);

    // Each number of the week, from the table alone.
    const days = (own: Row[]) => new Set(own.map(({ date }) => date)).size;
    const rounds = (own: Row[]) => new Set(own.map(({ practice, round }) => practice + round)).size;
    expect(await weekTable(page, 'by-player')).toEqual(addUp(data, 'player', days));
    expect(await weekTable(page, 'by-drill')).toEqual(addUp(data, 'drill', rounds));
  });
}
