import { entriesOn, recordsOn } from '../faults/records.ts';
import { Coach } from './coach.ts';
import { OtherPhone } from './other-phone.ts';
import { expect, type Page, test } from './test.ts';

/* Two phones' ledgers that meet: what comes is seen first, nothing is added twice, what is erased stays away. */

/** Takes a file in as the coach does, up to what is shown of it. */
async function bring(page: Page, file: ReturnType<OtherPhone['file']>): Promise<Coach> {
  const coach = new Coach(page);
  await coach.visit('handover');
  await page.getByLabel('Import a file from this app').setInputFiles(file);
  return coach;
}

const pageTime = (page: Page) => page.evaluate(() => Date.now());

test('a coach sees from whom what comes, and nothing is kept before the yes', async ({ page }) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Pip\nJuno');
  const other = new OtherPhone('helperxQ7k', (await pageTime(page)) - 3_600_000);
  other.write(
    { kind: 'player-added', player: 'odile', name: 'Odile' },
    { kind: 'practice-opened', practice: 'theirs', date: '2026-03-02' },
    { kind: 'player-came', practice: 'theirs', player: 'odile' },
  );
  const before = await recordsOn(page);
  await bring(page, other.file());
  const what = page.getByRole('region', { name: 'This is what comes' });
  await expect(what).toContainText('3 new entries: 1 practice, 0 rounds, 0 marks');
  await expect(what).toContainText('phone Q7k: 0 rounds, 0 marks, 3 entries');
  await expect(what).toContainText('New players: Odile.');
  expect(await recordsOn(page)).toEqual(before);
  await coach.button('Leave it').tap();
  await expect(page.getByText('Nothing was imported.')).toBeVisible();
  expect(await recordsOn(page)).toEqual(before);

  await bring(page, other.file());
  await coach.button('Import it').tap();
  await expect(page.getByText('3 new entries imported.')).toBeVisible();
  await coach.visit('squad');
  await expect(page.locator('.squad-row b')).toContainText(['Odile', 'Pip', 'Juno']);
});

test('a child who was typed on two phones is asked about, is one after a yes, and two again when that is taken back', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Ana\nBo');
  const other = new OtherPhone('helperxQ7k', await pageTime(page));
  other.write({ kind: 'player-added', player: 'ana-too', name: ' ána' });
  await bring(page, other.file());
  await coach.button('Import it').tap();
  await expect(
    page.getByText('Are Ana (0 practices) and ána (0 practices) one child?'),
  ).toHaveCount(1);
  await coach.button('One child').tap();
  await expect(page.getByText(/one child\?/)).toHaveCount(0);
  await coach.visit('squad');
  await expect(page.locator('.squad-row b')).toHaveText(['Ana', 'Bo']);
  await coach.kept({ kind: 'players-merged' });
  await page.reload();
  await expect(page.locator('.squad-row b')).toHaveText(['Ana', 'Bo']);
  await coach.visit('handover');
  await coach.button('Two after all: Ana').tap();
  await coach.visit('squad');
  await expect(page.locator('.squad-row b')).toHaveText(['Ana', 'Bo', 'ána']);
});

test('two counts of one pair stand side by side in settle, and the one that the coach chooses holds', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.reachCourt(['Pip', 'Juno'], ['Mini rally']);
  await coach.start();
  await coach.mark('Pip');
  await coach.stop();
  await coach.saved();
  const own = await entriesOn(page);
  const set = own.find(({ kind }) => kind === 'round-set') as {
    practice: string;
    round: string;
    id: string;
  };
  const said = { practice: set.practice, round: set.round, set: set.id };
  const other = new OtherPhone('helperxQ7k', (await pageTime(page)) + 1_000);
  other.write(
    { kind: 'mark', ...said, pair: 'A', second: 0.2 },
    { kind: 'tally-corrected', ...said, pair: 'A', by: 2 },
  );
  await bring(page, other.file());
  await expect(page.getByText('phone Q7k: 1 round, 1 mark, 2 entries')).toBeVisible();
  await coach.button('Import it').tap();
  await expect(page.getByText('2 new entries imported.')).toBeVisible();
  await coach.visit(`settle/${set.round}`);
  const sets = page.locator('.settle-sets');
  await expect(sets).toHaveText('3');
  await expect(page.getByText('phone Q7k: 3 sets')).toBeVisible();
  await coach.button('This one holds: this phone: 1 set').tap();
  await expect(sets).toHaveText('1');
  await coach.kept({ kind: 'count-chosen' });
  await page.reload();
  await expect(sets).toHaveText('1');
  await expect(coach.button('This one holds: this phone: 1 set')).toHaveAttribute(
    'aria-pressed',
    'true',
  );
});

test('an erased player is gone from the phone, and no older file brings the name back', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Ana\nBo');
  const ana = (await entriesOn(page)).find(({ name }) => name === 'Ana')?.player as string;
  const past = new OtherPhone('helperxQ7k', (await pageTime(page)) + 1_000);
  past.write(
    { kind: 'practice-opened', practice: 'past-one', date: '2026-03-02' },
    { kind: 'player-came', practice: 'past-one', player: ana },
    { kind: 'effort-told', practice: 'past-one', player: ana, effort: 7 },
    { kind: 'practice-closed', practice: 'past-one' },
  );
  await bring(page, past.file());
  await coach.button('Import it').tap();
  await expect(page.getByText('4 new entries imported.')).toBeVisible();
  expect(JSON.stringify(await recordsOn(page))).toContain('effort-told');
  const older = [...((await entriesOn(page)) as never[]), ...past.entries];
  await coach.visit('handover');
  await page.getByLabel('A player').selectOption('Ana');
  await coach.button('Erase Ana').tap();
  await expect(page.getByText('Erase Ana now? It cannot be taken back.')).toBeVisible();
  await coach.button('Erase Ana').tap();
  await expect(page.getByText('Ana: erased from this phone.')).toBeVisible();
  // How hard it was for Ana goes with the name, also where the practice was packed.
  await expect
    .poll(async () => JSON.stringify(await recordsOn(page)))
    .not.toMatch(/Ana|effort-told/);
  const other = new OtherPhone('another-Q7', (await pageTime(page)) + 10_000);
  other.write({ kind: 'player-added', player: 'cy', name: 'Cy' });
  await bring(page, other.file(...older));
  await coach.button('Import it').tap();
  await expect(page.getByText('1 new entry imported.')).toBeVisible();
  expect(JSON.stringify(await recordsOn(page))).not.toMatch(/Ana|effort-told/);
  await coach.visit('squad');
  await expect(page.locator('.squad-row b')).toHaveText(['Bo', 'Cy']);
});

test('an erased practice is out of the week and off the phone', async ({ page }) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Ana\nBo');
  const other = new OtherPhone('helperxQ7k', await pageTime(page));
  other.write(
    { kind: 'practice-opened', practice: 'past-one', date: '2026-03-02' },
    { kind: 'practice-closed', practice: 'past-one' },
  );
  await bring(page, other.file());
  await coach.button('Import it').tap();
  await expect(page.getByText('2 new entries imported.')).toBeVisible();
  await page.getByLabel('A practice').selectOption({ index: 1 });
  await coach.button(/^Erase practice of/).tap();
  await coach.button(/^Erase practice of/).tap();
  await expect(page.getByText(/erased from this phone/)).toBeVisible();
  await expect
    .poll(async () => (await recordsOn(page)).filter(([key]) => key.includes('past-one')))
    .toEqual([]);
  await bring(page, other.file());
  await expect(page.getByText('Everything in it was here already.')).toBeVisible();
});

test('what another person erased stays here until the coach says that it goes', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Ana\nBo');
  const ana = (await entriesOn(page)).find(({ name }) => name === 'Ana')?.player as string;
  const other = new OtherPhone('helperxQ7k', (await pageTime(page)) + 1_000);
  other.write(
    { kind: 'player-added', player: 'cy', name: 'Cy' },
    { kind: 'player-erased', player: ana },
  );
  await bring(page, other.file());
  await expect(page.getByText('Another phone has erased what is still here.')).toBeVisible();
  await coach.button('Import it').tap();
  await expect(page.getByText('1 new entry imported.')).toBeVisible();
  await coach.visit('squad');
  await expect(page.locator('.squad-row b')).toHaveText(['Ana', 'Bo', 'Cy']);
  await bring(page, other.file());
  await page.getByLabel('Erase here too: Ana').check();
  await coach.button('Import it').tap();
  await expect(page.getByText('1 new entry imported.')).toBeVisible();
  await coach.visit('squad');
  await expect(page.locator('.squad-row b')).toHaveText(['Bo', 'Cy']);
  expect(JSON.stringify(await recordsOn(page))).not.toContain('Ana');
});

test('everything is erased only by a button that is held, and the app begins anew', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Ana\nBo');
  await coach.visit('handover');
  const button = coach.button('Erase everything');
  await button.focus();
  await page.keyboard.down('Enter');
  await expect(page.getByText('Add the players of your squad first')).toBeVisible();
  await page.keyboard.up('Enter');
  expect(await recordsOn(page)).toEqual([]);
});
