import { Coach } from './coach.ts';
import { putRecords } from './seed.ts';
import { expect, test } from './test.ts';

test('a name with markup is a name like any other, and is shown as it was typed', async ({
  page,
}) => {
  const coach = new Coach(page);
  const name = '<img src=x onerror=alert(1)>';
  await coach.pasteSquad(`name\n"${name}"\nPip`);
  await coach.visit('');
  await expect(coach.button(name)).toBeVisible();
  await expect(page.locator('img')).toHaveCount(0);
});

test('a name of ten thousand letters is refused where it was typed, and the squad stays', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Pip\nJuno');
  await page.getByLabel('Nickname').fill('x'.repeat(10_000));
  await page.getByLabel('Nickname').press('Enter');
  await expect(page.getByText('That is too long: a nickname has up to 40 letters.')).toBeVisible();
  await coach.kept({ kind: 'player-added' }, 2);
  await page.reload();
  await coach.visit('');
  await expect(page.getByText('0 of 2')).toBeVisible();
});

test('a list with a ragged row is refused with its row, and nothing of it is taken', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.pasteSquad('name,level,hand\nPip,5,right\nJuno,5\nOdile,5,left,more');
  await expect(page.getByRole('alert')).toContainText('Nothing was taken');
  await expect(page.getByRole('alert')).toContainText('Row 4');
  await coach.visit('');
  await expect(page.getByText('Add the players of your squad first')).toBeVisible();
});

test('a file in an encoding that cannot be read is refused with a sentence', async ({ page }) => {
  const coach = new Coach(page);
  await coach.visit('squad');
  await page.locator('input[type=file]').setInputFiles({
    name: 'squad.csv',
    mimeType: 'text/csv',
    // No byte order mark says so.
    buffer: Buffer.from('name\nRen\u00e9', 'utf16le'),
  });
  await expect(page.getByRole('alert')).toContainText('Save the file as UTF-8');
});

test('one player or a block with no drill is said, and there is no way to the court', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Pip\nJuno');
  await coach.visit('');
  await coach.comes('Pip');
  await expect(page.getByText('A pair needs two: tap a second player.')).toBeVisible();
  await expect(coach.button('Go to the court')).toHaveCount(0);
  await coach.comes('Juno');
  await expect(page.getByText('Choose the drills of the block.')).toBeVisible();
  await expect(coach.button('Go to the court')).toHaveCount(0);
});

test('a record that no longer parses is said, and everything else is there', async ({ page }) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Pip\nJuno');
  await putRecords(page, [['s/000000000-000-strangers', { kind: 'player-added', id: 7 }]]);
  await page.reload();
  await coach.visit('');
  await expect(page.getByText(/1 saved record can no longer be read/)).toBeVisible();
  await expect(page.getByText('0 of 2')).toBeVisible();
});

test('a phone that is full is said, marks are held, and saved once there is room', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.reachCourt(['Pip', 'Juno'], ['Mini rally']);
  await coach.start();
  await page.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    Object.assign(window, { free: () => Object.assign(IDBObjectStore.prototype, { put }) });
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await coach.mark('Pip');
  await expect(page.getByText(/Phone full/)).toBeVisible();
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b1 set\b/);
  await expect(page.locator('.tile-saved[data-saved=false]')).toHaveCount(1);
  await page.evaluate(() => (window as unknown as { free: () => void }).free());
  await coach.saved();
  await expect(page.getByText(/Phone full/)).toHaveCount(0);
  await page.reload();
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b1 set\b/);
});

test('a phone that refuses storage is said, and the practice can be run all the same', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  });
  const coach = new Coach(page);
  await coach.open();
  await expect(page.getByText(/does not let the app save/)).toBeVisible();
  await coach.reachCourt(['Pip', 'Juno'], ['Mini rally']);
  await coach.start();
  await coach.mark('Pip');
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b1 set\b/);
  await expect(page.getByText(/does not let the app save/)).toBeVisible();
});
