import { recordsOn } from '../faults/records.ts';
import { Coach } from './coach.ts';
import { OtherPhone } from './other-phone.ts';
import { expect, type Page, test } from './test.ts';

/* A folder that some service syncs: here one of the browser's own, which is like any other to a page. */

test.beforeEach(({ page }) =>
  page.addInitScript(() => {
    Object.assign(window, {
      showDirectoryPicker: async () =>
        (await navigator.storage.getDirectory()).getDirectoryHandle('club', { create: true }),
    });
  }),
);

/** Puts another device's file into the folder, as the service would. */
const put = (page: Page, name: string, text: string) =>
  page.evaluate(
    async ([name, text]) => {
      const root = await navigator.storage.getDirectory();
      const folder = await root.getDirectoryHandle('club', { create: true });
      const file = await folder.getFileHandle(name, { create: true });
      const writing = await file.createWritable();
      await writing.write(text);
      await writing.close();
    },
    [name, text] as const,
  );

const filesIn = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    const folder = await root.getDirectoryHandle('club', { create: true });
    const files: Record<string, string> = {};
    for await (const each of folder.values()) {
      if (each.kind === 'file') files[each.name] = await (await each.getFile()).text();
    }
    return files;
  });

const theirs = async (page: Page, players: readonly string[]) => {
  const other = new OtherPhone('helperxQ7k', await page.evaluate(() => Date.now()));
  for (const name of players) {
    other.write({ kind: 'player-added', player: name.toLowerCase(), name });
  }
  return other.file().buffer.toString('utf8');
};

async function joinFolder(page: Page): Promise<Coach> {
  const coach = new Coach(page);
  await coach.pasteSquad('Pip\nJuno');
  await coach.visit('handover/club');
  await coach.button('Choose the folder').tap();
  await expect(page.getByText(/^Last met on/)).toBeVisible();
  return coach;
}

test('a phone writes one file of its own into the folder and takes in what the others wrote', async ({
  page,
}) => {
  const coach = await joinFolder(page);
  const [[name = '', text = ''] = []] = Object.entries(await filesIn(page));
  expect(name).toMatch(/^rally-ledger-[\w-]{10}\.txt$/);
  expect(text).toContain('"name":"Pip"');
  await put(page, 'rally-ledger-helperxQ7k.txt', await theirs(page, ['Odile']));
  await coach.button('Meet now').tap();
  await expect.poll(async () => JSON.stringify(await recordsOn(page))).toContain('"name":"Odile"');
  // What another wrote stays in its own file.
  expect((await filesIn(page))[name]).toBe(text);
});

test('nothing is read or written at the place while a clock runs, and it is met after the round', async ({
  page,
}) => {
  const coach = await joinFolder(page);
  await coach.visit('');
  await coach.button('Everyone is here').tap();
  await coach.planBlock([{ name: 'Mini rally' }]);
  await coach.button('Go to the court').tap();
  await coach.start();
  const before = await filesIn(page);
  await put(page, 'rally-ledger-helperxQ7k.txt', await theirs(page, ['Odile']));
  await coach.mark('Pip');
  // A network comes: at any other time the others would be met at once.
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
  await coach.saved();
  await coach.mark('Pip');
  await coach.saved();
  const [[name = '', text = ''] = []] = Object.entries(before);
  expect((await filesIn(page))[name]).toBe(text);
  expect(JSON.stringify(await recordsOn(page))).not.toContain('Odile');
  await coach.stop();
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
  await expect.poll(async () => JSON.stringify(await recordsOn(page))).toContain('"name":"Odile"');
  await expect.poll(async () => (await filesIn(page))[name]).toContain('"kind":"mark"');
});

test('what another phone erased stays here until the coach answers, and is asked about once', async ({
  page,
}) => {
  const coach = await joinFolder(page);
  const pip = (await recordsOn(page)).find(([, record]) => record.name === 'Pip')?.[1].player;
  const other = new OtherPhone('helperxQ7k', (await page.evaluate(() => Date.now())) + 5_000);
  other.write({ kind: 'player-erased', player: pip as string });
  await put(page, 'rally-ledger-helperxQ7k.txt', other.file().buffer.toString('utf8'));
  await coach.button('Meet now').tap();
  await expect(coach.button('Erase here too: Pip')).toBeVisible();
  expect(JSON.stringify(await recordsOn(page))).toContain('"name":"Pip"');
  await page.reload();
  await coach.button('Erase here too: Pip').tap();
  await expect
    .poll(async () => JSON.stringify(await recordsOn(page)))
    .not.toContain('"name":"Pip"');
  await expect(coach.button('Erase here too: Pip')).toHaveCount(0);
});
