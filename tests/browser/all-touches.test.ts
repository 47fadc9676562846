import { termsOf } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import { Coach } from './coach.ts';
import { Pen, plantEntries } from './seed.ts';
import { expect, type Page, test } from './test.ts';

/* All touches and what follows from them, in a practice that is going on, on a faked clock. */

test.beforeEach(async ({ page }) => {
  await page.clock.install({ time: new Date('2026-11-24T16:30:00') });
});

/** No screen says a number that is none. */
const expectSound = (page: Page) =>
  expect(page.getByRole('main')).not.toContainText(/NaN|undefined|Infinity|∞|\[object/);

/** From an empty app to a waiting round of the first of so many rounds in a row. */
async function reachRally(coach: Coach, players: readonly string[], rounds: number) {
  await coach.pasteSquad(players.join('\n'));
  await coach.visit('');
  await coach.button('Everyone is here').tap();
  await coach.planBlock([{ name: 'Mini rally', rounds }]);
  await coach.button('Go to the court').tap();
}

/** Plays a round with so many sets of the first tile, and comes to settle. */
async function play(coach: Coach, page: Page, name: string, sets: number) {
  await coach.start();
  for (let set = 0; set < sets; set++) {
    await page.clock.fastForward(11_000);
    await coach.mark(name);
  }
  await page.clock.fastForward(125_000 - 11_000 * sets);
  await coach.button('Put counts right').tap();
}

test('a round counts in full once its horn has gone, though nothing was said since', async ({
  page,
}) => {
  const coach = new Coach(page);
  await reachRally(coach, ['Pip', 'Juno'], 1);
  await coach.start();
  await page.clock.fastForward(20_000);
  await coach.mark('Pip');
  await page.clock.fastForward(101_000);
  await expect(coach.button('Put counts right')).toBeVisible();
  await coach.visit('week');
  await coach.unfold();
  const row = page.getByRole('table', { name: 'By player' }).getByRole('row', { name: /Pip/ });
  await expect(row.locator('td .explained').nth(3)).toHaveText('2');
});

test('a settled round says on the player’s page how many balls were struck, and how sure that is', async ({
  page,
}) => {
  const coach = new Coach(page);
  await reachRally(coach, ['Pip', 'Juno'], 1);
  await play(coach, page, 'Pip', 4);
  await coach.visit('players');
  await page.getByRole('link', { name: 'Pip' }).tap();
  const touches = page.locator('.own-total');
  await expect(page.getByText('You hit at least 20 balls.')).toBeVisible();
  await coach.unfold();
  await expect(touches).toHaveText('at least 20');
  await expect(
    page.getByText('Your total appears once the coach has checked the round.'),
  ).toBeVisible();
  await expectSound(page);

  await page.goBack();
  await page.goBack();
  await coach.button('Done').tap();
  await expect(page.getByRole('heading', { name: 'The block in figures' })).toBeVisible();
  await expect(page.locator('.block-touches')).toHaveText(
    /^at least 40, about \d\d \(\d\d to \d\d\) touches of everyone$/,
  );
  await expectSound(page);
  await coach.button('Players and their counts').tap();
  await page.getByRole('link', { name: 'Pip' }).tap();
  await expect(page.getByText(/^You hit about \d\d balls\.$/)).toBeVisible();
  await expect(touches).toHaveText(/^at least 20, about \d\d \(\d\d to \d\d\)$/);
  await expect(page.getByText(/^9\d% \(\d\d% to \d\d%\)$/)).toBeVisible();
  await expect(page.getByText('too few yet')).toBeVisible();
  await expectSound(page);
});

test('every figure of a player’s page says in three sentences what it is', async ({ page }) => {
  const coach = new Coach(page);
  await reachRally(coach, ['Pip', 'Juno'], 1);
  await play(coach, page, 'Pip', 3);
  await coach.button('Done').tap();
  await coach.button('Players and their counts').tap();
  await page.getByRole('link', { name: 'Pip' }).tap();
  await coach.unfold();
  await expect(page.locator('.own-total')).toContainText('about');
  const buttons = await page.locator('.explained').all();
  expect(buttons.length).toBeGreaterThanOrEqual(6);
  for (const button of buttons) {
    expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    await button.tap();
    const dialog = page.getByRole('dialog');
    await expect(dialog.locator('p')).toHaveCount(3);
    for (const sentence of await dialog.locator('p').allTextContents()) {
      expect(sentence).toMatch(/^[A-Z].*\.$/);
    }
    await dialog.getByRole('button', { name: 'Close' }).tap();
    await expect(dialog).toHaveCount(0);
    await expect(button).toBeFocused();
  }
});

test('the handed page has own figures only, and no way to the review', async ({ page }) => {
  const coach = new Coach(page);
  await reachRally(coach, ['Pip', 'Juno'], 1);
  await play(coach, page, 'Pip', 3);
  await coach.button('Done').tap();
  await coach.visit('players');
  await page.getByRole('link', { name: 'Pip' }).tap();
  await expect(page.getByRole('link', { name: 'Review of Pip' })).toBeVisible();
  await coach.button('Hand the phone to Pip').tap();
  await expect(page.locator('.own-balls')).toContainText('about');
  // A child reads one picture and three sentences: no method has a name, and no word judges.
  await expect(page.locator('.own-sentences > p')).toHaveCount(2);
  await expect(page.locator('.explained, .trend')).toHaveCount(0);
  // What can be touched is how hard it was, which each child says itself.
  await expect(page.locator('main button:not(.effort-pads .button)')).toHaveCount(0);
  await expect(page.getByRole('main').getByRole('link')).toHaveCount(0);
  await coach.visit('numbers');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Pip');
  await expect(page.getByRole('main')).not.toContainText('Juno');
});

test('a pair without a set is offered a size, and one tap takes it from the next round on', async ({
  page,
}) => {
  const coach = new Coach(page);
  await reachRally(coach, ['Pip', 'Juno'], 2);
  await expect(page.getByText('A set is 10 in a row')).toBeVisible();
  await play(coach, page, 'Pip', 0);
  const offer = coach.button(/^Take \d from the next round on/);
  await expect(offer).toBeVisible();
  await expect(
    page.getByText(/: No set in this round\. \d in a row would give about/),
  ).toBeVisible();
  const size = /Take (\d)/.exec((await offer.textContent()) ?? '')?.[1];
  await offer.tap();
  await expect(page.getByText(`From the next round on it is ${size}.`)).toBeVisible();
  await coach.button('Next round').tap();
  await expect(page.getByText(`A set is ${size} in a row`)).toBeVisible();

  // Planning says the same, with what one shot more or fewer would give, and the way back.
  await coach.visit('block');
  await expect(page.getByText(`Now ${size} in a row.`)).toBeVisible();
  await coach.button('Back to 10, the drill’s own').tap();
  await expect(page.getByText('Now 10 in a row.')).toBeVisible();
  await page.getByText('Sizes that suit these pairs').tap();
  await expect(
    page.getByText(
      /(Pip · Juno|Juno · Pip): \d in a row would give about [\d.]+ sets \(\d+: [\d.]+, \d+: [\d.]+\)/,
    ),
  ).toBeVisible();
  await coach.button(/^Make it \d/).tap();
  await expect(page.getByText(/^Now \d in a row\./)).toBeVisible();
});

test('a coach taps a tempo, again where a hit was missed, and every later round has it', async ({
  page,
}) => {
  const coach = new Coach(page);
  await reachRally(coach, ['Pip', 'Juno'], 1);
  await coach.start();
  await page.clock.fastForward(20_000);
  await coach.button('Pause').tap();
  await coach.button('Other screens').tap();
  await coach.button('Tempo check').tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tempo at Mini rally');
  const check = page.getByRole('region', { name: 'From hit to hit' });
  const pad = check.getByRole('button', { name: 'Tap at every hit' });
  await expect(check).toContainText('Not measured yet');
  const tap = async (gap: number) => {
    await page.clock.fastForward(gap);
    await pad.tap();
  };
  for (let hit = 0; hit < 9; hit++) await tap(1_500);
  await tap(9_000);
  await expect(check).toContainText('more than twice as long');
  await check.getByRole('button', { name: 'Again' }).tap();
  for (let hit = 0; hit < 10; hit++) await tap(1_500);
  // The page's own time passes between the jumps of its clock.
  await expect(check.locator('.tempo-found')).toHaveText(/^[1-3]\.\d\d s$/);
  const found = await check.locator('.tempo-found').textContent();
  await check.getByRole('button', { name: 'Keep it' }).tap();
  await expect(check).toContainText('Kept.');
  await expect(check).toContainText(`Known: ${found}`);

  const second = page.getByRole('region', { name: 'From a miss to the next hit' });
  for (let miss = 0; miss < 5; miss++) {
    await page.clock.fastForward(8_000);
    await second.getByRole('button', { name: 'Tap at the miss' }).tap();
    await page.clock.fastForward(5_000);
    await second.getByRole('button', { name: 'Now tap at the next hit' }).tap();
  }
  await expect(second.locator('.tempo-found')).toHaveText(/^[5-7]\.\d\d s$/);
  await second.getByRole('button', { name: 'Keep it' }).tap();

  // What was kept is in the ledger: it is there after the page was gone.
  await coach.kept({ kind: 'refeed-checked' });
  await page.reload();
  await expect(check).toContainText(`Known: ${found}`);
  await coach.button('Back').tap();
  await expect(coach.button('Go on')).toBeVisible();
});

test('before a round the card leads to the tempo check, and back', async ({ page }) => {
  const coach = new Coach(page);
  await reachRally(coach, ['Pip', 'Juno'], 1);
  await page.getByText('Other screens').tap();
  await coach.button('Tempo check').tap();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tempo at Mini rally');
  await coach.button('Back').tap();
  await expect(coach.button(/^Start/)).toBeVisible();
});

test('a review of next to nothing says so in words', async ({ page }) => {
  const coach = new Coach(page);
  await coach.visit('numbers');
  await expect(page.getByText('No round has been played yet.')).toBeVisible();
  await reachRally(coach, ['Pip', 'Juno', 'Odile', 'Bram'], 1);
  await play(coach, page, 'Pip', 2);
  await coach.button('Done').tap();
  await coach.visit('numbers');
  await expect(page.getByText('too few yet')).toHaveCount(4);
  await expect(page.getByText(/have never been parted/)).toHaveCount(2);
  await expect(page.getByText('These have never met')).toBeVisible();
  // A kind of work that nobody did is not there, with nothing said of it.
  await expect(page.locator('section[aria-labelledby=levels] h3')).toHaveCount(1);
  await expectSound(page);
  await page.getByRole('link', { name: 'Odile' }).tap();
  await expect(page.getByText('Nothing to compare')).toBeVisible();
  await expectSound(page);
  await coach.visit('review/nobody');
  await expect(page.getByText('This player is not on this phone.')).toBeVisible();
});

/** What the app keeps of the one packed practice, as it lies in its database. */
const keptEstimate = (page: Page, change?: { model: number; shots: number }) =>
  page.evaluate(
    (put) =>
      new Promise<{ model: number; shots: number } | undefined>((resolve, reject) => {
        const open = indexedDB.open('rally-ledger');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const key = 'i/2026-11-20/practice-1';
          const store = open.result.transaction('records', 'readwrite').objectStore('records');
          const request = store.get(key);
          request.onsuccess = () => {
            const summary = request.result;
            const tally = summary?.rounds[0]?.tallies[0];
            if (put && tally) {
              Object.assign(tally.estimate, put);
              store.put(summary, key);
            }
            resolve(tally?.estimate);
          };
          store.transaction.oncomplete = () => open.result.close();
        };
      }),
    change,
  );

test('an estimate is kept with its practice, and one of an older model is made anew', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.open();
  const pen = new Pen(Date.parse('2026-11-20T16:00:00Z'));
  const here = { practice: 'practice-1', round: 'round-1' };
  pen.write(
    { kind: 'player-added', player: 'pip', name: 'Pip' },
    { kind: 'player-added', player: 'juno', name: 'Juno' },
    { kind: 'practice-opened', practice: 'practice-1', date: '2026-11-20' },
    {
      kind: 'round-set',
      ...here,
      ordinal: 0,
      terms: termsOf(starterDrills[0]!),
      seconds: 120,
      pairs: [{ letter: 'A', players: ['pip', 'juno'] }],
    },
    { kind: 'clock-started', ...here },
    { kind: 'mark', ...here, pair: 'A', second: 24 },
    { kind: 'mark', ...here, pair: 'A', second: 58 },
    { kind: 'round-settled', ...here },
    { kind: 'practice-closed', practice: 'practice-1' },
  );
  await plantEntries(page, pen.entries);
  await page.reload();
  await expect.poll(() => keptEstimate(page), { timeout: 30_000 }).toBeTruthy();
  const first = await keptEstimate(page);

  await keptEstimate(page, { model: 0, shots: 1 });
  expect(await keptEstimate(page)).toMatchObject({ model: 0, shots: 1 });
  await page.reload();
  await expect.poll(() => keptEstimate(page), { timeout: 30_000 }).toEqual(first);
});
