import { en } from '../../app/words/en.ts';
import { Coach } from './coach.ts';
import { NOON } from './planted-round.ts';
import { openPractised, playerId } from './played-practice.ts';
import { expect, type Locator, type Page, test } from './test.ts';

/*
 * The narrowest phones, twice the text, and the longest names without a space: no screen is wider
 * than the phone, the way on stays in sight, and nothing is cut.
 */

/** 38 letters each without a space. The first two differ in one letter, far from their beginning. */
const NAMES = [
  'Wilhelmina-Alexandrina-Oranienburgerin',
  'Wilhelmina-Alexandrina-Oranienburgerim',
  ...Array.from({ length: 10 }, (_, index) =>
    `${'BCDEFGHIJK'[index]}artholomea-Maximiliane-Regenbogenstein`.slice(0, 38),
  ),
];

const DRILLS = ['lob-and-overhead', 'wide-past-the-markers', 'half-court-rally'];

const WAYS = [320, 360, 390].flatMap((width) =>
  ['100%', '200%'].flatMap((text) => ({ width, text })),
);

/**
 * What of the page as it stands is wider than the phone or out of sight, in words. Names that a tile
 * or a wall has no room for are cut there with a sign; nothing else may be.
 */
const faults = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const called = (element: Element) =>
      `${element.className || element.tagName} "${element.textContent?.trim().slice(0, 24)}"`;
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth > clientWidth) found.push(`the page is ${scrollWidth} of ${clientWidth} px`);
    for (const element of document.querySelectorAll('.bar, .bar a, .button-main')) {
      const { left, right, top, bottom } = element.getBoundingClientRect();
      if (left < -0.5 || right > innerWidth + 0.5) found.push(`${called(element)} is out of sight`);
      if (element.closest('.bar, .before-start') && (top < 0 || bottom > innerHeight + 0.5)) {
        found.push(`${called(element)} is above or below the screen`);
      }
    }
    for (const element of document.querySelectorAll<HTMLElement>('#app *')) {
      if (element.closest('svg, select, .unseen, [aria-hidden=true]')) continue;
      const head = element.closest('thead');
      if (head && getComputedStyle(head).clipPath !== 'none') continue;
      const style = getComputedStyle(element);
      if (style.clipPath !== 'none' || style.display === 'inline') continue;
      const { left, right, width } = element.getBoundingClientRect();
      if (width > 0 && (left < -0.5 || right > innerWidth + 0.5)) {
        found.push(`${called(element)} reaches beyond the phone`);
      }
      if (element.closest('.tile-name, .call-names, .wall-pair, .wall-title')) continue;
      const scrolls = ['auto', 'scroll'].includes(style.overflowX) || element.matches('input');
      if (element.clientWidth > 0 && element.scrollWidth > element.clientWidth + 1 && !scrolls) {
        found.push(`${called(element)} is cut`);
      }
    }
    // No row of those who call lies on another.
    const rows = [...document.querySelectorAll('.call-row')];
    for (const [at, row] of rows.entries()) {
      const { bottom } = row.getBoundingClientRect();
      const names = row.querySelector('.call-names')?.getBoundingClientRect();
      if (names && names.bottom > bottom + 1) found.push(`${called(row)} is lower than its names`);
      const next = rows[at + 1]?.getBoundingClientRect();
      if (next && next.top < bottom - 1 && next.left < 40) found.push(`${called(row)} is lain on`);
    }
    // What tells two names apart is seen however little room they have.
    for (const apart of document.querySelectorAll('[data-alike] > b')) {
      const own = apart.getBoundingClientRect();
      const name = apart.closest('.pair-name')?.getBoundingClientRect() ?? own;
      if (own.width < 3 || own.left < name.left - 1 || own.right > name.right + 1) {
        found.push(`${called(apart)}, which tells a name apart, is cut`);
      }
    }
    return [...new Set(found)].slice(0, 8);
  });

const SHOTS = process.env.SHOTS;

/** Looks at the screen at every width, with the text as it is and twice as large. */
async function look(page: Page, what: string): Promise<void> {
  for (const { width, text } of WAYS) {
    await page.setViewportSize({ width, height: width === 320 ? 568 : 780 });
    await page.evaluate((text) => {
      document.documentElement.style.fontSize = text;
    }, text);
    expect.soft(await faults(page), `${what}, ${width} px, text ${text}`).toEqual([]);
    if (SHOTS) {
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        const name = `${what.replaceAll(/\W+/g, '-')}-${width}-${text.slice(0, 3)}-${colorScheme}`;
        await page.screenshot({ path: `${SHOTS}/${name}.png` });
      }
    }
  }
}

test.beforeEach(async ({ page }) => {
  await page.clock.install({ time: NOON });
});

test('no screen is wider than the phone, and its ways on are in sight, with twelve names of 38 letters', async ({
  page,
}) => {
  test.slow();
  const coach = new Coach(page);
  await openPractised(page, { names: NAMES, drills: DRILLS, daysBefore: [4, 1], here: 12 });
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.clock.runFor(2_000);
  await look(page, 'today');
  await page.locator('.pair-player').first().tap();
  await look(page, 'today with a player chosen');
  for (const address of [
    ...['block', 'propose', 'sheet', 'squad', 'players', 'week', 'coverage', 'review'],
    ...['numbers', 'glance', 'neglected', 'together', 'sizes', 'season'],
    ...[`player/${playerId(0)}`, `review/${playerId(0)}`, `coverage/${playerId(0)}`],
    ...[
      'practice/practice-1',
      'settings',
      'help',
      'drill',
      'drill/lob-and-overhead',
      'tempo/lob-and-overhead',
      'handover',
      'handover/club',
      'handover/show',
      `handover/give/${playerId(0)}`,
    ],
  ]) {
    await coach.visit(address);
    await page.clock.runFor(1_000);
    await look(page, address);
  }
  await coach.visit('squad');
  await coach.button(NAMES[0] ?? '').tap();
  await look(page, 'squad with a player changed');
  for (const address of ['wall', 'pair/A']) {
    await page.goto(`./#/${address}`);
    await page.locator('h1').waitFor({ state: 'attached' });
    await look(page, address);
  }
});

test('the court from its card to settle is no wider than the phone, with eleven names of 38 letters', async ({
  page,
}) => {
  test.slow();
  const coach = new Coach(page);
  await openPractised(page, { names: NAMES, drills: DRILLS, daysBefore: [1], here: 11 }, 'court');
  for (const drill of DRILLS) {
    await coach.button(/^Start/).waitFor();
    await look(page, `card of ${drill}`);
    await page.getByText('Other screens').tap();
    await coach.button('Who is here').tap();
    await look(page, `card of ${drill} with all that opens`);
    await coach.start();
    await page.clock.runFor(5_000);
    await page.locator('.tile-count').first().tap();
    await page.clock.runFor(1_000);
    await page.locator('.tile-count').first().tap();
    await look(page, `running ${drill}`);
    await coach.button('Who is here').tap();
    await look(page, `running ${drill} with who is here`);
    await coach.button(/^Done/).tap();
    await coach.button('Pause').tap();
    await coach.button('Other screens').tap();
    await look(page, `paused ${drill} with other screens`);
    await coach.button(/^Done/).tap();
    await coach.button('Go on').tap();
    await page.clock.fastForward(130_000);
    await page.locator('.tile-count').last().tap();
    await coach.button('Put counts right').tap();
    await page.getByRole('heading', { name: en.settle.title }).waitFor();
    // All that is folded away is opened.
    await page.locator('main details').evaluateAll((all: HTMLDetailsElement[]) => {
      for (const folded of all) folded.open = true;
    });
    await look(page, `settle ${drill}`);
    await coach.button(drill === DRILLS.at(-1) ? /^Done/ : 'Next round').tap();
  }
  await look(page, 'the block is done');
});

test('a round that is called at the horn is no wider than the phone, with eleven names of 38 letters', async ({
  page,
}) => {
  const coach = new Coach(page);
  await openPractised(
    page,
    { names: NAMES, drills: DRILLS.slice(0, 1), daysBefore: [1], here: 11 },
    'court',
  );
  await coach.button(en.court.ways.called).tap();
  await look(page, 'card of a called round');
  await coach.start();
  await look(page, 'running called round');
  await page.clock.fastForward(130_000);
  await page.locator('.call-row').first().waitFor();
  await look(page, 'calling in');
});

test('on a narrow phone what the coverage is of stands over the whole width', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await openPractised(
    page,
    { names: ['Pip', 'Juno'], drills: ['mini-rally'], daysBefore: [1] },
    'coverage',
  );
  const table = page.locator('table.coverage');
  const wide = async (part: Locator) => (await part.boundingBox())?.width ?? 0;
  expect(await wide(table.locator('caption'))).toBeGreaterThan(0.9 * (await wide(table)));
});
