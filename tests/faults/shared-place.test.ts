import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, BrowserContext } from 'playwright/test';
import { Coach } from '../browser/coach.ts';
import { putRecords } from '../browser/seed.ts';
import { setWallClock, ZONE } from '../browser/wall-clock.ts';
import { Apache, hasApache, PASSWORD, USER } from './apache.ts';
import { recordAt, recordsOn } from './records.ts';
import { expect, test } from './test.ts';

/*
 * The phones of a club meet at a real WebDAV server, Debian's Apache, set up by the lines of the
 * README. Left out where it cannot be had.
 */
const skips = hasApache() ? false : 'Debian’s Apache cannot be had here';
test.skip(skips !== false, String(skips));

let apache: Apache;
test.beforeEach(async () => {
  apache = await Apache.start();
});
test.afterEach(() => apache.discard());

class Device extends Coach {
  static async of(browser: Browser): Promise<Device> {
    const context = await browser.newContext({
      baseURL: apache.address,
      viewport: { width: 390, height: 844 },
      ...{ hasTouch: true, isMobile: true, locale: 'en-GB', timezoneId: ZONE },
      serviceWorkers: 'block',
    });
    await setWallClock(context);
    const device = new Device(await context.newPage());
    await device.open();
    return device;
  }

  get context(): BrowserContext {
    return this.page.context();
  }

  async fillIn(path = 'club/', password = PASSWORD): Promise<void> {
    await this.visit('handover/club');
    await this.page.getByLabel('Folder, from this app’s address').fill(path);
    await this.page.getByLabel('Name', { exact: true }).fill(USER);
    await this.page.getByLabel('Password').fill(password);
  }

  async join(): Promise<void> {
    await this.fillIn();
    await this.button('Meet there').tap();
    await this.met();
  }

  async meet(): Promise<void> {
    await this.visit('handover/club');
    await this.button('Meet now').tap();
    await this.met();
  }

  async met(): Promise<void> {
    await expect(this.page.getByText(/^Last met on/)).toBeVisible();
    await expect(this.page.getByRole('alert')).toHaveCount(0);
  }

  /** Meets, and is told that it could not be. */
  async failsToMeet(said: string | RegExp): Promise<void> {
    await this.visit('handover/club');
    await this.button('Meet now').tap();
    await expect(this.page.getByRole('alert')).toContainText(said);
  }

  /** A practice of a squad of its own, with a round of some sets for the first pair. */
  async practises(names: readonly string[], sets: number): Promise<void> {
    await this.reachCourt(names, ['Mini rally']);
    await this.start();
    for (let set = 0; set < sets; set++) await this.mark(names[0] ?? '');
    await this.stop();
    await this.saved();
    await this.visit('');
  }

  /** The ids of all entries here, packed or not: each once, or this throws. */
  async ids(): Promise<string[]> {
    const ids = (await recordsOn(this.page)).flatMap(([key, record]) =>
      key.startsWith('c/')
        ? (record.entries as { id: string }[]).map(({ id }) => id)
        : /^[sp]\//.test(key)
          ? [record.id as string]
          : [],
    );
    expect(new Set(ids).size).toBe(ids.length);
    return ids.toSorted();
  }
}

const squadOf = (device: number) => [`Pip ${device}`, `Juno ${device}`];

test('six devices meet, some days later, the server killed in mid-PUT, and end with the same ledger: nothing lost, nothing twice', async ({
  browser,
}) => {
  const devices: Device[] = [];
  for (let at = 0; at < 6; at++) devices.push(await Device.of(browser));
  const [one, two, three, four, ...late] = devices as [Device, Device, Device, Device, Device];
  for (const device of [one, two, three, four]) await device.join();
  // Two are without a network: they count, are told, and lose nothing.
  for (const device of late) {
    await device.join();
    await device.page.route('**/club/**', (route) => route.abort('internetdisconnected'));
  }
  for (const [at, device] of devices.entries()) await device.practises(squadOf(at), at + 1);
  for (const device of late) await device.failsToMeet('The place cannot be reached now.');
  const own = await Promise.all(devices.map((device) => device.ids()));

  // The server dies in the middle of a file, and comes again.
  await three.page.route('**/club/rally-ledger-*', async (route) => {
    if (route.request().method() !== 'PUT') return route.continue();
    await apache.kill();
    await route.continue();
  });
  await three.failsToMeet('The place cannot be reached now.');
  await three.page.unroute('**/club/rally-ledger-*');
  await apache.run();

  for (const device of [one, two, three, four]) await device.meet();
  for (const device of late) {
    await device.page.unroute('**/club/**');
    await device.meet();
  }
  for (const device of devices) await device.meet();
  const ids = await Promise.all(devices.map((device) => device.ids()));
  const all = [...new Set(own.flat())].toSorted();
  for (const each of ids) expect(each).toEqual(all);
  expect(readdirSync(apache.club).filter((name) => name.endsWith('.txt'))).toHaveLength(6);
  // Who meets again with nothing new asks once and writes nothing.
  const asked: string[] = [];
  one.page.on('request', (request) => asked.push(request.method()));
  await one.meet();
  expect(asked).toEqual(['PROPFIND']);
  for (const device of devices) await device.context.close();
});

test('two devices that write one file by mistake are told, go on with a file each, and lose nothing', async ({
  browser,
}) => {
  const [one, two] = [await Device.of(browser), await Device.of(browser)];
  await one.practises(squadOf(1), 2);
  const name = await recordAt(one.page, 'phone');
  // The second is a copy of the first: it goes by the same name.
  await putRecords(two.page, [['phone', name]]);
  await two.page.reload();
  await two.practises(squadOf(2), 3);
  const all = [...(await one.ids()), ...(await two.ids())].toSorted();
  await one.join();
  await two.join();
  await expect(two.page.getByText('Another device wrote the same file')).toBeVisible();
  await one.meet();
  await two.meet();
  expect(await one.ids()).toEqual(all);
  expect(await two.ids()).toEqual(all);
  expect(readdirSync(apache.club).filter((file) => file.endsWith('.txt'))).toHaveLength(2);
  for (const device of [one, two]) await device.context.close();
});

test('a place without room says so, and what was there stays whole', async ({ browser }) => {
  test.skip(!apache.smallDisk(64_000), 'no disk of a size of its own can be had here');
  const one = await Device.of(browser);
  await one.pasteSquad(squadOf(1).join('\n'));
  await one.join();
  const [file = ''] = readdirSync(apache.club).filter((name) => name.endsWith('.txt'));
  const before = readFileSync(join(apache.club, file), 'utf8');
  let filling = 64_000;
  for (let at = 0; filling > 0; ) {
    try {
      writeFileSync(join(apache.club, `filler-${at++}`), 'x'.repeat(filling));
    } catch {
      filling = Math.floor(filling / 2);
    }
  }
  await one.practises(['Odile', 'Bram'], 2);
  const ids = await one.ids();
  await one.failsToMeet('There is no room left at the place.');
  expect(readFileSync(join(apache.club, file), 'utf8')).toBe(before);
  expect(await one.ids()).toEqual(ids);
  await one.context.close();
});

test('a hostile place is refused with a sentence, nothing is lost, and no other server is asked', async ({
  browser,
}) => {
  const one = await Device.of(browser);
  await one.pasteSquad(squadOf(1).join('\n'));
  const ids = await one.ids();
  const alert = one.page.getByRole('alert');
  for (const [path, password, said] of [
    ['club/', 'wrong', 'does not let this phone in'],
    ['nowhere/', PASSWORD, 'There is no such folder.'],
    ['elsewhere/', PASSWORD, 'That leads to another server.'],
    ['assets/', PASSWORD, 'There is no such folder.'],
  ] as const) {
    await one.fillIn(path, password);
    await one.button('Meet there').tap();
    await expect(alert).toContainText(said);
    await one.button('Leave this place').tap();
  }
  await one.fillIn('https://club.example/');
  await expect(alert).toContainText('That leads to another server.');
  await expect(one.button('Meet there')).toBeDisabled();

  // Among the files lie a page of HTML, one that was cut, one of a newer version and a stranger.
  const put = (name: string, text: string) => writeFileSync(join(apache.club, name), text);
  put('rally-ledger-htmlhtmlht.txt', '<!doctype html><html>Sign in</html>');
  put('rally-ledger-cutcutcutc.txt', '{"rally-ledger":1}\n{"kind":"player-added"');
  put('rally-ledger-newernewer.txt', '{"rally-ledger":9}\n');
  put('notes.txt', 'not for the app');
  await one.join();
  for (const name of ['lht', 'utc', 'wer']) {
    await expect(one.page.getByText(`The file of phone ${name} cannot be read`)).toBeVisible();
  }
  expect(await one.ids()).toEqual(ids);
  expect(apache.askedElsewhere).toBe(0);
  await one.context.close();
});
