import { readFileSync } from 'node:fs';
import { Coach } from '../browser/coach.ts';
import { tell, times } from './counts.ts';
import { setsShown, startLongRound } from './court.ts';
import { Mutator } from './mutator.ts';
import { recordsOn } from './records.ts';
import { expect, type Page, test } from './test.ts';

test.use({ acceptDownloads: true });
test.beforeEach(async ({ context }) => {
  // Without a share sheet a file is a download.
  await context.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined }),
  );
});

async function goTo(page: Page, address: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `#/${address}`);
  await (address === 'court' ? page.getByRole('timer') : page.locator('h1')).waitFor();
}

/** A backup of everything, as the coach gets it. */
async function backUp(page: Page): Promise<Buffer> {
  await goTo(page, 'settings');
  const coach = new Coach(page);
  await coach.button('Make a backup').tap();
  const download = page.waitForEvent('download');
  await coach.button('Share the backup').tap();
  return readFileSync(await (await download).path());
}

const field = (page: Page) => page.getByLabel('Import a file from this app');
const takeIn = async (page: Page, buffer: Buffer) => {
  await goTo(page, 'settings');
  await field(page).setInputFiles({ name: 'backup.txt', mimeType: 'text/plain', buffer });
};

/** A round of today with three sets, stopped. */
async function someRound(page: Page): Promise<Coach> {
  await page.goto('./');
  const coach = await startLongRound(page);
  for (let mark = 0; mark < 3; mark++) await coach.mark('Pip');
  await coach.stop();
  await coach.saved();
  return coach;
}

test('a backup goes out and into another phone, which goes on where this one was; a second time nothing is new', async ({
  page,
  phone,
}) => {
  await someRound(page);
  const file = await backUp(page);
  const other = await phone.open();
  await other.getByRole('heading', { level: 1 }).waitFor();
  await takeIn(other, file);
  const entries = (await recordsOn(page)).length;
  await expect(other.getByText(`${entries} new entries`, { exact: true })).toBeVisible();
  expect(await recordsOn(other)).toEqual([]);
  await new Coach(other).button('Import it').tap();
  await expect(other.getByText(`${entries} new entries imported.`)).toBeVisible();
  expect(await recordsOn(other)).toEqual(await recordsOn(page));
  await takeIn(other, file);
  await expect(other.getByText('Everything in it was here already.')).toBeVisible();
  expect(await recordsOn(other)).toEqual(await recordsOn(page));
  await goTo(other, 'court');
  await expect.poll(() => setsShown(other, 0)).toBe(3);
});

test('two phones that counted the same practice each take in what the other has, to the same ledger', async ({
  page,
  phone,
}) => {
  const coach = await someRound(page);
  const other = await phone.open((context) =>
    context.addInitScript(() =>
      Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined }),
    ),
  );
  await other.getByRole('heading', { level: 1 }).waitFor();
  await takeIn(other, await backUp(page));
  await new Coach(other).button('Import it').tap();
  await expect(other.getByText(/new entries imported/)).toBeVisible();
  // Both go on by themselves.
  await goTo(page, 'court');
  await coach.button('Put counts right').tap();
  await page.getByLabel(/^Change the count of Pip/).tap();
  await coach.button(/^One set more for Pip/).tap();
  await goTo(other, 'court');
  await new Coach(other).takeBack('Pip');
  await new Coach(other).saved();

  const [mine, theirs] = [await backUp(page), await backUp(other)];
  await takeIn(page, theirs);
  await takeIn(other, mine);
  for (const each of [page, other]) await new Coach(each).button('Import it').tap();
  await expect(page.getByText('1 new entry imported.')).toBeVisible();
  await expect(other.getByText('1 new entry imported.')).toBeVisible();
  expect(await recordsOn(other)).toEqual(await recordsOn(page));
  for (const each of [page, other]) {
    await goTo(each, 'court');
    await expect.poll(() => setsShown(each, 0)).toBe(3);
  }
});

test('a file that was cut short, or is something else, is refused with the place, and the ledger stays', async ({
  page,
}) => {
  await someRound(page);
  const file = (await backUp(page)).toString('utf8').trimEnd().split('\n');
  const before = await recordsOn(page);
  for (const [text, said] of [
    ['Pip\nJuno', 'Line 1: this is no file from this app.'],
    [file.slice(0, 5).join('\n'), 'Line 6: the file was cut short here.'],
    [file.with(2, '{"kind":"mark"}').join('\n'), 'Line 3: the field “id” is missing or wrong.'],
    [
      file.with(2, '{"__proto__":{"admin":true}}').join('\n'),
      'Line 3: the field “__proto__” has a name that no entry may use.',
    ],
  ] as const) {
    await takeIn(page, Buffer.from(text));
    await expect(page.getByRole('alert')).toContainText('Nothing was imported.');
    await expect(page.getByRole('alert')).toContainText(said);
    expect(await recordsOn(page)).toEqual(before);
  }
});

test('mutated backups that are chosen in Settings leave the ledger as it was, or add to it', async ({
  page,
}) => {
  await someRound(page);
  const file = await backUp(page);
  const mutator = new Mutator(3);
  let before = await recordsOn(page);
  let [refused, taken] = [0, 0];
  for (let more = times(20, 300); more > 0; more--) {
    await takeIn(page, Buffer.from(mutator.mutate(file)));
    await expect(field(page)).toBeEnabled();
    const offered = new Coach(page).button('Import it');
    const outcome = page.getByText(/Nothing was imported|imported\.|here already\./);
    await expect(outcome.or(offered)).toBeVisible();
    if (await offered.isVisible()) await offered.tap();
    await expect(outcome).toBeVisible();
    const after = await recordsOn(page);
    if (/Nothing was imported/.test((await outcome.textContent()) ?? '')) {
      refused += 1;
      await expect(page.getByRole('alert')).toContainText(/Line \d/);
      expect(after).toEqual(before);
    } else {
      taken += 1;
      for (const [key, record] of before) expect(new Map(after).get(key)).toEqual(record);
      before = after;
    }
  }
  tell('files chosen', refused + taken);
  tell('refused, with the ledger as it was', refused);
  tell('taken, with all that was there before', taken);
});
