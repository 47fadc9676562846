import { readFileSync } from 'node:fs';
import papaparse from 'papaparse';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import { dateOn, sayingsBefore, squadSayings } from '../faults/court.ts';
import { Coach } from './coach.ts';
import { Pen, plantEntries } from './seed.ts';
import { expect, type Page, test } from './test.ts';

/* What goes out to another program or another phone, and what comes in from one. */

/** Without a share sheet a file is a download. */
test.beforeEach(({ page }) =>
  page.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined }),
  ),
);

const download = async (page: Page, press: () => Promise<void>): Promise<Buffer> => {
  const coming = page.waitForEvent('download');
  await press();
  return readFileSync(await (await coming).path());
};

/** A squad and a round of a minute and a half in which the first pair made one set. */
async function played(page: Page): Promise<void> {
  const coach = new Coach(page);
  await coach.open();
  const round = { practice: 'today', round: 'today-1' };
  const pen = new Pen((await page.evaluate(() => Date.now())) - 600_000);
  pen.write(...squadSayings, ...sayingsBefore('today', await dateOn(page)));
  pen.write({ kind: 'clock-started', ...round });
  pen.at += 90_000;
  pen.write(
    { kind: 'mark', ...round, pair: 'A', second: 30 },
    { kind: 'clock-stopped', ...round },
    { kind: 'round-settled', ...round },
  );
  await plantEntries(page, pen.entries);
  await coach.visit('week');
  await page.reload();
  await coach.unfold();
  // All touches are worked out once the screen stands: each row then tells their limits.
  await expect(page.getByRole('cell', { name: /\(\d+\D+\d+\)/ }).first()).toBeVisible();
}

const table = (file: Buffer, delimiter: string) =>
  papaparse.parse<Record<string, string>>(file.toString('utf8'), {
    delimiter,
    header: true,
    skipEmptyLines: true,
  }).data;

test.describe('a phone that writes decimals with a comma', () => {
  test.use({ locale: 'fr-FR' });

  test('hands the week over with decimal commas, or with points once these were chosen, and the values are the same', async ({
    page,
  }) => {
    await played(page);
    const button = page.getByRole('button', { name: /CSV/ });
    // All touches are worked out while the phone is idle.
    const workedOut = async (delimiter: string) => {
      let rows: Record<string, string>[] = [];
      await expect(async () => {
        rows = table(await download(page, () => button.tap()), delimiter);
        expect(rows[0]?.touches_estimated).not.toBe('');
      }).toPass();
      return rows;
    };
    const commas = await workedOut(';');
    await page.getByLabel(/avec un point/).tap();
    await page.reload();
    const points = await workedOut(',');
    expect(commas).toHaveLength(4);
    const rate = commas[0]?.sets_per_minute ?? '';
    expect(rate).toMatch(/^0,\d+$/);
    expect(points[0]).toMatchObject({
      sets_per_minute: rate.replace(',', '.'),
      drill_id: starterDrills[0]?.id,
    });
    expect(Object.keys(points[0] ?? {}).at(-1)).toBe('round_held');
    expect(
      commas.map((row) => Object.values(row).map((cell) => cell.replace(/^(-?\d+),/, '$1.'))),
    ).toEqual(points.map((row) => Object.values(row)));
  });
});

test('a phone that writes decimals with a point is not asked, and gets points', async ({
  page,
}) => {
  await played(page);
  await expect(page.getByText('Numbers are written')).toHaveCount(0);
  const button = page.getByRole('button', { name: /CSV/ });
  const rows = table(await download(page, () => button.tap()), ',');
  expect(rows[0]?.sets_per_minute).toMatch(/^0\.\d+$/);
});

test('initials in the table spell out nobody’s nickname', async ({ page }) => {
  const coach = new Coach(page);
  await played(page);
  await coach.pasteSquad('Jun\nPi');
  await coach.visit('week');
  await page.getByLabel('Initials').tap();
  const rows = table(
    await download(page, () => page.getByRole('button', { name: /CSV/ }).tap()),
    ',',
  );
  expect(rows.map(({ player }) => player)).toEqual(['P', 'J', 'O', 'B']);
});

test.describe('a list of names from an older spreadsheet', () => {
  // Windows-1252: Š is 8A, ž 9E, é E9, ’ 92.
  const file = {
    name: 'squad.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from([
      ...[...Buffer.from('name;level\r\n'), 0x8a, ...Buffer.from('ime;7,5\r\nRen'), 0xe9],
      ...[
        ...Buffer.from(';\r\nO'),
        0x92,
        ...Buffer.from('Ka;3\r\n'),
        0x9e,
        ...Buffer.from('o;\r\n'),
      ],
    ]),
  };

  test('is shown for a yes before it is taken', async ({ page }) => {
    const coach = new Coach(page);
    await coach.visit('squad');
    await page.locator('input[type=file]').setInputFiles(file);
    const shown = page.getByRole('status').filter({ hasText: 'Šime' }).getByRole('listitem');
    await expect(shown).toHaveText(['Šime', 'René', 'O’Ka', 'žo']);
    await expect(page.getByRole('heading', { name: 'Players' })).toHaveCount(0);
    await coach.button('Take these names as they are').tap();
    await expect(page.getByText('4 players were added.')).toBeVisible();
    await expect(page.locator('.squad-row b')).toHaveText(['Šime', 'René', 'O’Ka', 'žo']);
  });

  test('is left alone where the letters are said to be wrong', async ({ page }) => {
    const coach = new Coach(page);
    await coach.visit('squad');
    await page.locator('input[type=file]').setInputFiles(file);
    await coach.button('The letters are wrong').tap();
    await expect(page.getByRole('alert')).toContainText('Nothing was taken');
    await coach.visit('');
    await expect(page.getByText('Add the players of your squad first')).toBeVisible();
  });
});

test('an empty app takes a backup in on its first screen', async ({ page, browser, baseURL }) => {
  await played(page);
  const coach = new Coach(page);
  await coach.visit('settings');
  await coach.button('Make a backup').tap();
  const backup = await download(page, () => coach.button('Share the backup').tap());
  const context = await browser.newContext({
    baseURL: baseURL ?? '',
    hasTouch: true,
    isMobile: true,
    serviceWorkers: 'block',
  });
  const other = await context.newPage();
  const theirs = new Coach(other);
  await theirs.open();
  await theirs.button('Import a backup').tap();
  await other
    .locator('input[type=file]')
    .setInputFiles({ name: 'backup.txt', mimeType: 'text/plain', buffer: backup });
  await theirs.button('Import it').tap();
  await expect(other.getByText('of 4')).toBeVisible();
  await context.close();
});

test('a level and a hand that were given can be left open again', async ({ page }) => {
  const coach = new Coach(page);
  await coach.pasteSquad('name,level,hand\nPip,6,left');
  await coach.button('Pip').tap();
  await page.getByLabel('Level, 1 to 10').selectOption('not given');
  await page.getByLabel('Hand').selectOption('not given');
  await coach.button('Save').tap();
  await coach.kept({ kind: 'player-changed' });
  await page.reload();
  await expect(coach.button('Pip')).toHaveText('Pip');
});
