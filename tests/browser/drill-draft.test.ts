import { recordsOn } from '../faults/records.ts';
import { Coach } from './coach.ts';
import { putRecords } from './seed.ts';
import { expect, type Page, test } from './test.ts';

/* A drill that is being written: it is lost only where somebody means it. */

const NAME = 'Two short, one deep';

const drafts = async (page: Page): Promise<unknown[]> =>
  (await recordsOn(page)).filter(([key]) => key.startsWith('d/')).map(([, { name }]) => name);

/** Writes a name into the form of a new drill, until it is on the disk. */
async function write(page: Page, name = NAME): Promise<void> {
  await page.getByLabel('Name', { exact: true }).fill(name);
  await expect.poll(() => drafts(page)).toEqual([name]);
}

const name = (page: Page) => page.getByLabel('Name', { exact: true });
const left = (page: Page) => page.getByText('What you wrote last time is still here');

test('a drill that is being written survives a reload, and a way out by the back gesture', async ({
  page,
}) => {
  await new Coach(page).visit('drill');
  await write(page);
  await page.reload();
  await expect(name(page)).toHaveValue(NAME);
  await expect(left(page)).toBeVisible();
  await page.goto('./#/block');
  await page.goto('./#/drill');
  await expect(name(page)).toHaveValue(NAME);
});

test('a change of a drill that came with the app survives a reload, beside a new drill', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.visit('drill');
  await write(page);
  await coach.visit('drill/mini-rally');
  await coach.button('Change').tap();
  await name(page).fill('Our mini rally');
  await expect.poll(() => drafts(page)).toEqual([NAME, 'Our mini rally']);
  await page.reload();
  await coach.button('Change').tap();
  await expect(name(page)).toHaveValue('Our mini rally');
});

test('a draft that was saved as a drill, left by Cancel or begun again is gone', async ({
  page,
}) => {
  const coach = new Coach(page);
  for (const end of ['Save', 'Cancel', 'Start again']) {
    await coach.visit('drill');
    await write(page);
    await page.reload();
    await expect(left(page)).toBeVisible();
    await coach.button(end).tap();
    await expect.poll(() => drafts(page), end).toEqual([]);
    await coach.visit('drill');
    await page.reload();
    await expect(name(page)).toHaveValue('');
    await expect(left(page)).toHaveCount(0);
  }
});

test('of two windows that write the same draft the last one wins, and nothing breaks', async ({
  page,
  context,
}) => {
  const wrong: string[] = [];
  const other = await context.newPage();
  for (const each of [page, other]) each.on('pageerror', (error) => wrong.push(error.message));
  await new Coach(page).visit('drill');
  await new Coach(other).visit('drill');
  await write(page, 'First');
  await write(other, 'Second');
  await page.reload();
  await expect(name(page)).toHaveValue('Second');
  await new Coach(page).button('Cancel').tap();
  await expect.poll(() => drafts(page)).toEqual([]);
  await write(other, 'Third');
  expect(wrong).toEqual([]);
});

test('a draft that cannot be read is passed over, and the ledger opens as it is', async ({
  page,
}) => {
  const coach = new Coach(page);
  await coach.visit('drill');
  for (const record of [7, null, { name: 'half' }, { name: 5, rally: [{}] }]) {
    await putRecords(page, [['d/', record]]);
    await page.reload();
    await expect(name(page)).toHaveValue('');
    await expect(left(page)).toHaveCount(0);
  }
  await coach.visit('settings');
  await expect(page.getByText('can no longer be read')).toHaveCount(0);
});
