import { deflateRawSync } from 'node:zlib';
import { encode } from 'uqr';
import { toFrames } from '../../core/exchange/frames.ts';
import { recordsOn } from '../faults/records.ts';
import { Coach } from './coach.ts';
import { film, see, withCamera } from './film.ts';
import { expect, type Page, test } from './test.ts';
import { setWallClock, ZONE } from './wall-clock.ts';

/* A practice from phone to phone by codes alone: one's screen is what the other's camera sees. */

test.beforeEach(({ context }) => withCamera(context));

const handOver = async (from: Page, to: Page, share: RegExp): Promise<number> => {
  await new Coach(from).visit('handover/show');
  await from.getByLabel(share).check();
  await new Coach(to).visit('handover/read');
  const pictures = await film(from, to);
  await new Coach(to).button('Import it').tap();
  await expect(to.getByText(/imported\./)).toBeVisible();
  return pictures;
};

test('two phones share out the courts of a practice by codes, a third of the frames lost, and end with equal ledgers', async ({
  page,
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({
    baseURL: baseURL ?? '',
    hasTouch: true,
    isMobile: true,
    viewport: { width: 390, height: 844 },
    serviceWorkers: 'block',
    locale: 'en-GB',
    timezoneId: ZONE,
  });
  await withCamera(context);
  await setWallClock(context);
  const coach = new Coach(page);
  const names = ['Pip', 'Juno', 'Odile', 'Bram', 'Suki', 'Tariq', 'Ines', 'Otto', 'Lale', 'Nils'];
  await coach.reachCourt(names, ['Mini rally', 'Lob and overhead']);
  const helper = new Coach(await context.newPage());
  await helper.open();
  const pictures = await handOver(page, helper.page, /^This practice/);
  console.log(`handed over in ${pictures} pictures, a third of them lost`);

  await helper.visit('court');
  await coach.visit('court');
  await Promise.all([coach.start(), helper.start()]);
  const [mine = [], theirs = []] = await coach.pairs();
  await coach.mark(mine[0] ?? '');
  await helper.mark(theirs[0] ?? '');
  await helper.mark(theirs[0] ?? '');
  for (const each of [coach, helper]) {
    await each.stop();
    await each.saved();
  }

  await handOver(helper.page, page, /^Only what this phone wrote/);
  await handOver(page, helper.page, /^Only what this phone wrote/);
  expect(await recordsOn(helper.page)).toEqual(await recordsOn(page));
  for (const each of [coach, helper]) {
    await each.visit('');
    const rounds = each.page.getByRole('region', { name: 'Rounds of today' }).getByRole('listitem');
    await expect(rounds).toHaveCount(1);
    await rounds.getByRole('link').tap();
    const row = (names: readonly string[]) =>
      each.page.locator('.settle-pairs > li').filter({ hasText: names[0] ?? '' });
    await expect(row(mine).locator('.settle-sets')).toHaveText('1');
    await expect(row(theirs).locator('.settle-sets')).toHaveText('2');
    await expect(each.page.getByText('Two phones counted this pair')).toHaveCount(0);
  }
  await context.close();
});

/** A text as the picture of a code, for the camera alone. */
async function showTo(page: Page, text: string): Promise<void> {
  const { data } = encode(text, { ecc: 'M', boostEcc: false, border: 4 });
  const png = await page.evaluate(async (rows) => {
    const canvas = document.createElement('canvas');
    canvas.width = canvas.height = 6 * rows.length;
    const context = canvas.getContext('2d')!;
    context.fillStyle = '#fff';
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.fillStyle = '#000';
    for (const [y, row] of rows.entries()) {
      for (const [x, dark] of row.entries()) if (dark) context.fillRect(6 * x, 6 * y, 6, 6);
    }
    return canvas.toDataURL().split(',')[1]!;
  }, data);
  await see(page, Buffer.from(png, 'base64'));
}

const entriesPacked = (text: string | Buffer) =>
  toFrames(new Uint8Array(deflateRawSync(text, { level: 9 }))) ?? [];

test('a hostile code is refused with a sentence, and nothing is kept of it', async ({ page }) => {
  const coach = new Coach(page);
  await coach.pasteSquad('Pip\nJuno');
  const before = await recordsOn(page);
  await coach.visit('handover/read');
  await showTo(page, 'HTTPS://CLUB.EXAMPLE/WIN');
  await expect(page.getByText('This is no code of this app.')).toBeVisible();
  for (const [frames, said] of [
    [entriesPacked('no entries'), 'this is no file from this app.'],
    [entriesPacked('{"rally-ledger":7}\n'), 'a newer version of the app made this file.'],
    [entriesPacked('{"rally-ledger":1}\n'), 'the file was cut short here.'],
    [entriesPacked(Buffer.alloc(2_000_000)), 'would grow beyond any practice'],
    [toFrames(Uint8Array.of(255, 1, 2)) ?? [], 'does not unpack'],
  ] as const) {
    const shown = page.getByRole('alert');
    for (let at = 0; !(await shown.isVisible()); at = (at + 1) % frames.length) {
      await showTo(page, frames[at] ?? '');
    }
    await expect(shown).toContainText(said);
    await coach.button('Read another code').tap();
  }
  expect(await recordsOn(page)).toEqual(before);
});

test.describe('a phone that gives no camera', () => {
  test('says what else can be done', async ({ page }) => {
    await page.addInitScript(() =>
      Object.defineProperty(navigator, 'mediaDevices', {
        value: {
          getUserMedia: () => Promise.reject(new DOMException('no', 'NotAllowedError')),
        },
      }),
    );
    await new Coach(page).visit('handover/read');
    await expect(page.getByRole('alert')).toContainText('The camera was not allowed.');
  });
});
