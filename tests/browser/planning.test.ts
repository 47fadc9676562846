import { Coach } from './coach.ts';
import { expect, type Page, test } from './test.ts';

/*
 * What is planned before and between rounds: the block that is proposed, who plays with whom, on
 * which court, what is overdue, and the block on paper. On a faked clock.
 */

const EIGHT = ['Pip', 'Juno', 'Odile', 'Bram', 'Suki', 'Teo', 'Wren', 'Ines'];

test.beforeEach(async ({ page }) => {
  await page.clock.install({ time: new Date('2026-11-24T16:30:00') });
});

async function everyoneIsHere(coach: Coach, players: readonly string[]): Promise<void> {
  await coach.pasteSquad(players.join('\n'));
  await coach.visit('');
  await coach.button('Everyone is here').tap();
}

/** The pairs that are shown before a round, as names; those that wait are the last. */
async function shownPairs(page: Page): Promise<string[][]> {
  const shown = page.locator('.pairs > li');
  await shown.first().waitFor();
  const rows = await shown.all();
  return Promise.all(rows.map((row) => row.locator('.pair-player .pair-call').allTextContents()));
}

/** Plays the round that is set to its horn and goes on to the next; returns who was on the tiles. */
async function playOn(coach: Coach, last = false): Promise<string[][]> {
  const { page } = coach;
  await coach.start();
  const pairs = await coach.pairs();
  await page.clock.fastForward(125_000);
  await coach.button('Put counts right').tap();
  await coach.button(last ? /^Done$/ : /^Next round$/).tap();
  return pairs;
}

const keyOf = (pair: readonly string[]) => pair.toSorted().join(' ');

test('a block is proposed, one drill changed, two players swapped, one leaves, and the next round goes on', async ({
  page,
}) => {
  const coach = new Coach(page);
  await everyoneIsHere(coach, EIGHT);
  await coach.button('Propose a block').tap();
  const steps = page.locator('.propose-steps > li');
  await expect(steps.first()).toBeVisible();
  const drills = await steps.locator('b').allTextContents();
  // Nothing was practised yet: every family is in, and each drill says what it is in for.
  for (const family of ['Groundstrokes', 'Volleys', 'Overheads and lobs', 'Serves and returns']) {
    await expect(page.locator('.propose-why').filter({ hasText: family }).first()).toBeVisible();
  }
  await expect(page.locator('.propose-why')).toHaveCount(drills.length);
  await coach.button('Another').tap();
  await expect(page.getByText('Proposal 2')).toBeVisible();
  expect(await steps.allTextContents()).not.toEqual(drills);
  await coach.button('Back to the first').tap();
  await coach.button('Take this block').tap();

  // One drill changed.
  await expect(page.getByRole('heading', { name: 'Block' })).toBeVisible();
  for (const drill of drills) await expect(page.getByText(drill, { exact: true })).toBeVisible();
  await coach.button('Change').tap();
  await coach.button(`Remove ${drills[0]}`).tap();
  const other = drills.includes('Mini rally') ? 'The long rally' : 'Mini rally';
  await coach.button(`Add ${other}`).tap();
  await coach.button('Done').tap();
  await expect(page.getByText(drills[0] ?? '', { exact: true })).toBeHidden();
  await expect(page.getByText(other, { exact: true })).toBeVisible();

  // Two players swapped.
  const before = await shownPairs(page);
  const [one = '', two = ''] = [before[0]?.[0], before[1]?.[0]];
  await page.locator('.pair-player', { hasText: one }).tap();
  await page.locator('.pair-player', { hasText: two }).tap();
  const swapped = before.map((pair) =>
    pair.map((name) => (name === one ? two : name === two ? one : name)),
  );
  await expect.poll(() => shownPairs(page)).toEqual(swapped);
  await coach.button('Go to the court').tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(drills[1] ?? '');
  expect((await playOn(coach)).map(keyOf)).toEqual(swapped.map(keyOf));

  // One leaves: only a pair that has to changes, and the rest is as it was proposed.
  const stood = await shownPairs(page);
  const leaver = stood[1]?.[0] ?? '';
  await coach.button('Who is here').tap();
  await page.locator('.choice[aria-pressed=true]', { hasText: leaver }).tap();
  await coach.button('Who is here').tap();
  const left = await shownPairs(page);
  expect(left.flat().toSorted()).toEqual(EIGHT.filter((name) => name !== leaver).toSorted());
  expect(left.filter((pair) => pair.length === 3)).toHaveLength(1);
  const stays = left.filter((pair) => stood.some((was) => keyOf(was) === keyOf(pair)));
  expect(stays).toHaveLength(2);
  expect((await playOn(coach)).map(keyOf)).toEqual(left.map(keyOf));
});

test('where partners turn, nobody meets anybody twice before everybody was met', async ({
  page,
}) => {
  const six = EIGHT.slice(0, 6);
  const coach = new Coach(page);
  await everyoneIsHere(coach, six);
  await coach.planBlock([{ name: 'Mini rally', rounds: 6 }]);
  await coach.visit('block');
  await coach.button('Partners at Mini rally: same').tap();
  await coach.button('Done').tap();
  await coach.button('Go to the court').tap();
  const met = new Set<string>();
  for (let round = 0; round < 5; round++) {
    for (const pair of await playOn(coach)) met.add(keyOf(pair));
  }
  expect(met.size).toBe(15);
});

test('partners who stay have both roles as often, whoever began', async ({ page }) => {
  const coach = new Coach(page);
  await everyoneIsHere(coach, EIGHT.slice(0, 4));
  await coach.planBlock([{ name: 'Lob and overhead', rounds: 3 }]);
  await coach.button('Go to the court').tap();
  // Within a round they keep their roles; from round to round they turn.
  await coach.button('Roles turn at half-time').tap();
  const first = await playOn(coach);
  await coach.button('Roles turn at half-time').tap();
  const second = await playOn(coach);
  expect(second).toEqual(first.map((pair) => pair.toReversed()));
});

test('a wish to keep two apart or together comes before everything else', async ({ page }) => {
  const coach = new Coach(page);
  await coach.pasteSquad('name,level\nPip,5\nJuno,5\nOdile,9\nBram,9\n');
  await coach.visit('');
  await coach.button('Everyone is here').tap();
  await expect
    .poll(async () => (await shownPairs(page)).map(keyOf).toSorted())
    .toEqual(['Bram Odile', 'Juno Pip']);
  await coach.visit('squad');
  await page.getByLabel('One player').selectOption('Pip');
  await page.getByLabel('The other player').selectOption('Juno');
  await coach.button('Keep apart').tap();
  await page.getByLabel('One player').selectOption('Pip');
  await page.getByLabel('The other player').selectOption('Bram');
  await coach.button('Keep together').tap();
  await coach.visit('');
  await expect
    .poll(async () => (await shownPairs(page)).map(keyOf).toSorted())
    .toEqual(['Bram Pip', 'Juno Odile']);
  await expect(page.getByText('Couldn’t keep')).toHaveCount(0);
  // One more than can be kept is said.
  await coach.visit('squad');
  await page.getByLabel('One player').selectOption('Bram');
  await page.getByLabel('The other player').selectOption('Odile');
  await coach.button('Keep together').tap();
  await coach.visit('');
  await expect(page.getByText(/^Couldn’t keep .* together\.$/)).toHaveCount(1);
  await coach.visit('squad');
  await coach.button('Take back the wish for Bram and Odile').tap();
  await coach.button('Take back the wish for Pip and Bram').tap();
  await coach.button('Take back the wish for Pip and Juno').tap();
  await coach.visit('');
  await expect
    .poll(async () => (await shownPairs(page)).map(keyOf).toSorted())
    .toEqual(['Bram Odile', 'Juno Pip']);
});

test('pairs for whom no court is free have no tile, turn in next, and everyone is told the place', async ({
  page,
}) => {
  const coach = new Coach(page);
  await everyoneIsHere(coach, EIGHT);
  await coach.visit('settings');
  await page.getByLabel('How many').selectOption('1');
  await coach.planBlock([{ name: 'Half-court rally', rounds: 4 }]);
  await coach.button('Go to the court').tap();
  await expect(page.getByText('Court 1, right half')).toBeVisible();
  await expect(page.getByText('Court 1, left half')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Next on court' })).toBeVisible();
  const all = await shownPairs(page);
  expect(all).toHaveLength(4);
  const rounds: string[][] = [];
  for (const last of [false, false, false, true]) {
    rounds.push((await playOn(coach, last)).map(keyOf));
  }
  expect(rounds.map((pairs) => pairs.length)).toEqual([2, 2, 2, 2]);
  for (const pair of all) {
    expect(rounds.filter((pairs) => pairs.includes(keyOf(pair)))).toHaveLength(2);
  }
  // Never two rounds of waiting in a row.
  for (const [at, pairs] of rounds.entries()) {
    const next = rounds[at + 1];
    if (next) expect(new Set([...pairs, ...next]).size).toBe(4);
  }
});

test('the court and its lengths are those of the squad', async ({ page }) => {
  const coach = new Coach(page);
  await coach.visit('drill/soft-volleys');
  await expect(page.getByRole('main')).toContainText('2.4 m from the net');
  await coach.visit('settings');
  await page.getByRole('radio', { name: 'feet' }).tap();
  await coach.visit('drill/soft-volleys');
  await expect(page.getByRole('main')).toContainText('7.9 ft from the net');
  await coach.visit('settings');
  await page.getByRole('radio', { name: /small/ }).tap();
  await coach.visit('drill/soft-volleys');
  // 2.4 m of the 6.4 m to the service line are 1.5 of 4 m: 4.9 ft.
  await expect(page.getByRole('main')).toContainText('4.9 ft from the net');
});

test('coverage shows what is overdue, and the rounds behind a number add up to it', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.open();
  await coach.loadDemo('Look around with an invented squad');
  await expect(page.getByRole('heading', { name: 'Who is here' })).toBeVisible({ timeout: 30_000 });
  await page.getByRole('link', { name: 'What is overdue' }).tap();
  await expect(page.getByRole('table')).toBeVisible();
  await expect(page.getByRole('rowheader')).toHaveCount(8);
  for (const row of await page
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader') })
    .all()) {
    const since = row.locator('.coverage-since');
    const days = Number((await since.textContent())?.match(/\d+/)?.[0]);
    const due = days > 14 ? 'long-overdue' : days > 8 ? 'overdue' : 'no';
    await expect(since).toHaveAttribute('data-due', due);
    expect(await since.locator('.coverage-flag').textContent()).toBe(
      { no: '', overdue: '▲', 'long-overdue': '▲▲' }[due],
    );
  }
  const numberIn = (text: string | null) => Number((text ?? '').replace(/\D/g, ''));
  const cells = page.locator('.coverage-amount');
  for (const at of [0, 5, 9]) {
    const cell = cells.nth(at);
    await cell.tap();
    await expect(cell).toHaveAttribute('aria-pressed', 'true');
    const behind = await page.locator('section:has(#behind) li b').allTextContents();
    const sum = behind.reduce((total, text) => total + numberIn(text), 0);
    expect(sum).toBe(numberIn(await cell.locator('span').textContent()));
  }
  await page.getByLabel('Whose').selectOption('Pip');
  await expect(page.getByRole('caption')).toContainText('Pip');
});

test.describe('without a network', () => {
  test.use({ serviceWorkers: 'allow' });

  test('a drill that is switched off is not proposed', async ({ page, context }) => {
    const coach = new Coach(page);
    await coach.open();
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await context.setOffline(true);
    await page.reload();
    await everyoneIsHere(coach, EIGHT);
    await coach.button('Propose a block').tap();
    const drills = page.locator('.propose-steps b');
    await expect(drills.first()).toBeVisible();
    const [first = ''] = await drills.allTextContents();
    await page.getByText('Drills to choose from').tap();
    await coach.button(first).tap();
    await expect(drills.filter({ hasText: first })).toHaveCount(0);
    await coach.button(first).tap();
    await expect(drills.first()).toHaveText(first);
  });
});

test('the printed sheet holds all drills of the block with the cautions on one page, and boxes to tally in on another', async ({
  page,
}) => {
  const block = [
    'Mini rally',
    'Soft volleys',
    'Lob and overhead',
    'Serve, return, next shot',
    'Wide past the markers',
    'Cross-court, deuce side',
  ];
  const coach = new Coach(page);
  await everyoneIsHere(coach, EIGHT);
  await coach.planBlock(block.map((name) => ({ name })));
  // The page of the week has a print of its own, which must not reach into this one.
  await coach.visit('week');
  await coach.visit('sheet');
  await page.emulateMedia({ media: 'print' });
  for (const [at, name] of block.entries()) {
    const drill = page.getByRole('region', { name });
    await expect(drill).toBeVisible();
    await expect(drill.getByRole('heading')).toHaveText(`${at + 1}. ${name}`);
    await expect(drill.getByRole('img')).toBeVisible();
    await expect(drill).toContainText('▲');
  }
  for (const name of EIGHT) await expect(page.getByText(name, { exact: true })).toBeVisible();
  for (const caution of [/Loose balls/, /water and shade/, /licensed clinician/, /federation/]) {
    await expect(page.getByText(caution)).toBeVisible();
  }
  await expect(page.getByText(/^Overheads:/)).toHaveCount(1);
  await expect(page.getByText(/^Serves:/)).toHaveCount(1);
  await expect(coach.button('Print this sheet')).toBeHidden();
  const pdf = await page.pdf({ preferCSSPageSize: true });
  expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
  expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
  // A row a round and a box a pair; on target a part of it for each player.
  const boxes = page.getByRole('table', { name: 'To tally on' });
  await expect(boxes.getByRole('columnheader')).toHaveText(['A', 'B', 'C', 'D']);
  await expect(boxes.getByRole('rowheader')).toHaveText(
    block.map((name, at) => `${at + 1}. ${name}`),
  );
  const onTarget = boxes.getByRole('row').filter({ hasText: 'Wide past the markers' });
  await expect(onTarget.locator('small')).toHaveText(['1', '2', '1', '2', '1', '2', '1', '2']);
});
