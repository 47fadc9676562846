import { randomBytes } from 'node:crypto';
import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext } from 'playwright/test';
import type { Entry, Saying, Unknown } from '../../core/ledger/entry.ts';
import { nextStamp } from '../../core/ledger/stamp.ts';
import { Coach } from '../browser/coach.ts';
import { Pen, plantEntries, putRecords } from '../browser/seed.ts';
import { phoneTime } from '../browser/wall-clock.ts';
import { tell, times } from './counts.ts';
import { dateOn, PLAYERS, sayingsBefore, squadSayings } from './court.ts';
import { type Records, recordAt, recordsOn } from './records.ts';
import { expect, type Page, test } from './test.ts';

const DAY = 86_400_000;

const played = (practice: string, date: string): Saying[] => {
  const round = { practice, round: `${practice}-1` };
  return [
    ...sayingsBefore(practice, date),
    { kind: 'clock-started', ...round },
    ...[0, 1, 2, 3].map((place) => ({
      kind: 'mark' as const,
      ...round,
      pair: place % 2 === 0 ? 'A' : 'B',
      second: 10 + place,
    })),
    { kind: 'clock-stopped', ...round },
    { kind: 'round-settled', ...round },
  ];
};

/** A squad, a practice of yesterday that the app has packed, and one of today, as records. */
async function someLedger(page: Page, more: readonly Unknown[] = []): Promise<Records> {
  await page.goto('./');
  await page.getByRole('heading', { level: 1 }).waitFor();
  const now = await page.evaluate(() => Date.now());
  const today = await dateOn(page);
  const yesterday = new Date(Date.parse(`${today}T12:00:00Z`) - DAY).toISOString().slice(0, 10);
  const pen = new Pen(now - DAY);
  pen.write(...squadSayings, ...played('before', yesterday));
  pen.at = now - 600_000;
  pen.write(...played('today', today));
  await plantEntries(page, [...pen.entries, ...(more as Entry[])]);
  await page.reload();
  await expect
    .poll(async () => (await recordsOn(page)).filter(([key]) => /^[ci]\//.test(key)).length)
    .toBe(2);
  return recordsOn(page);
}

/** A record without what is worked out of it in idle time, and at any time again. */
const counted = (record: unknown): unknown =>
  JSON.parse(JSON.stringify(record, (name, value) => (name === 'estimate' ? undefined : value)));

/** What may become of a record. */
const damages: readonly [name: string, damage: (record: Record<string, unknown>) => unknown][] = [
  ['cut short', (record) => Object.fromEntries(Object.entries(record).slice(0, -1))],
  ['emptied', () => ({})],
  ['replaced by a number', () => 7],
  ['replaced by nothing', () => null],
  ['replaced by a list', () => [1, 2, 3]],
  ['replaced by a text', () => 'x'.repeat(100_000)],
  ['replaced by another record', () => ({ ...foreign, kind: 'player-rested', player: 'Pip' })],
];
const foreign = { id: nextStamp('', 1_000_000_000_000, 'somebody-else'), at: 1_000_000_000_000 };

/** Opens the app where it tells what is damaged. */
async function reopen(page: Page): Promise<void> {
  await page.goto('./#/settings');
  await page.reload();
  await page.getByRole('heading', { name: 'Backup' }).waitFor();
}

/** With small counts one record of each sort. */
const someOf = (records: Records): Records => {
  const sorts = new Set<string>();
  return records.filter(([key, { kind }]) => {
    const sort = `${key.slice(0, 2)}${kind}`;
    const isNew = !sorts.has(sort);
    sorts.add(sort);
    return isNew || times(0, 1) === 1;
  });
};

/** Without a share sheet a file is a download. */
const withoutShareSheet = (where: Page | BrowserContext) =>
  where.addInitScript(() =>
    Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined }),
  );

const entriesOf = (records: Records, packed: string) =>
  (new Map(records).get(packed)?.entries ?? []) as Entry[];

const said = (page: Page) => page.getByText(/can no longer be read/);

/** Where the damaged record is said to be. */
function placeOf(key: string): RegExp {
  if (key.startsWith('s/')) return /in the squad or the drills/;
  return key.includes('before') ? /in the practice of/ : /in (the|a) practice/;
}

test('every stored record in turn is cut, emptied and replaced: the app opens, says which practice is damaged, keeps the rest and the damaged bytes', async ({
  page,
}) => {
  const whole = await someLedger(page);
  let [tried, saidSo, rebuilt] = [0, 0, 0];
  for (const [at, [key, record]] of someOf(whole).entries()) {
    const some = times(1, damages.length);
    for (let each = 0; each < some; each++) {
      const [name, damage] = damages[(at + each) % damages.length]!;
      const damaged = damage(record);
      await putRecords(page, [[key, damaged]]);
      await reopen(page);
      tried += 1;
      const place = `${key} ${name}`;
      if (key.startsWith('i/')) {
        // A summary is made from its practice: it is whole again, and there is nothing to say.
        await expect
          .poll(async () => counted(new Map(await recordsOn(page)).get(key)), { message: place })
          .toEqual(counted(record));
        await expect(said(page), place).toHaveCount(0);
        rebuilt += 1;
      } else {
        await expect(said(page).first(), place).toBeVisible();
        await expect(said(page).first(), place).toContainText(placeOf(key));
        saidSo += 1;
        expect(new Map(await recordsOn(page)).get(key), place).toEqual(damaged);
      }
      const after = new Map(await recordsOn(page));
      for (const [other, before] of whole) {
        if (other === key) continue;
        expect(counted(after.get(other)), `${place}: ${other}`).toEqual(counted(before));
      }
      const opened = [...after.keys()].filter((other) => !whole.some(([known]) => known === other));
      await putRecords(page, [
        [key, record],
        ...opened.map((other) => [other, undefined] as const),
      ]);
    }
  }
  await reopen(page);
  await expect(said(page)).toHaveCount(0);
  tell('records damaged', tried);
  tell('said, with the place, and kept as they lie', saidSo);
  tell('summaries made anew', rebuilt);
});

test('every stored record in turn is gone: the app opens and keeps the rest', async ({ page }) => {
  const whole = await someLedger(page);
  let tried = 0;
  for (const [key, record] of someOf(whole)) {
    await putRecords(page, [[key, undefined]]);
    await reopen(page);
    tried += 1;
    if (key.startsWith('c/')) {
      await expect(said(page).first()).toContainText(/in the practice of/);
    }
    const after = new Map(await recordsOn(page));
    for (const [other, before] of whole) {
      if (other === key) continue;
      expect(counted(after.get(other)), `without ${key}: ${other}`).toEqual(counted(before));
    }
    const opened = [...after.keys()].filter((other) => !whole.some(([known]) => known === other));
    await putRecords(page, [[key, record], ...opened.map((other) => [other, undefined] as const)]);
  }
  tell('records removed', tried);
});

test('a practice whose opening is damaged is opened again, with all that was counted in it', async ({
  page,
}) => {
  const whole = await someLedger(page);
  const [key = ''] = whole.find(
    ([, { kind, practice }]) => kind === 'practice-opened' && practice === 'today',
  )!;
  await putRecords(page, [[key, { kind: 'practice-opened' }]]);
  await reopen(page);
  await page.goto('./#/');
  await expect(page.getByText('Round 1')).toBeVisible();
  await expect(said(page)).toContainText('in the practice of');
});

test('damaged records are handed over as they lie, and exactly those are removed when asked to', async ({
  page,
}) => {
  await withoutShareSheet(page);
  const whole = await someLedger(page);
  const [packed = ''] = whole.find(([key]) => key.startsWith('c/'))!;
  const [player = ''] = whole.find(([key]) => key.startsWith('s/'))!;
  const other = 's/nobody-knows-what';
  const damaged = [
    [player, { name: 'half a' }],
    [packed, { entries: [1, ...entriesOf(whole, packed)] }],
  ] as const;
  await putRecords(page, damaged);
  await reopen(page);
  // What is packed is found a little after the rest.
  await expect(said(page).first()).toContainText('2 saved records');
  const coach = new Coach(page);
  const download = page.waitForEvent('download');
  await coach.button('Share the damaged records').tap();
  const lines = readFileSync(await (await download).path(), 'utf8')
    .trimEnd()
    .split('\n');
  const out = new Map(
    lines.map((line) => JSON.parse(line)).map(({ key, record }) => [key, record]),
  );
  for (const [key, record] of damaged) expect(out.get(key)).toEqual(record);
  // One more is found before anything is removed.
  await putRecords(page, [[other, { name: 'found since' }]]);
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect(page.getByText('1 record was found since, or changed')).toBeVisible();
  await coach.button('Remove 2 records that were shared').tap();
  await coach.button('Remove them now?').tap();
  await expect(page.getByText('2 records removed.')).toBeVisible();
  await expect(said(page).first()).toContainText('1 saved record');
  const after = new Map(await recordsOn(page));
  expect(after.has(player)).toBe(false);
  expect(after.get(packed)).toEqual(new Map(whole).get(packed));
  expect(after.get(other)).toEqual({ name: 'found since' });
  // Without a hand-over it is said that there was none.
  await reopen(page);
  await coach.button('Remove them from this phone').tap();
  await expect(page.getByText('Nothing was shared: 1 record is gone for good then.')).toBeVisible();
  await coach.button('Remove them now?').tap();
  await expect(said(page)).toHaveCount(0);
  expect(new Map(await recordsOn(page)).has(other)).toBe(false);
});

test('a record that changed after it was handed over is not removed, and that is said', async ({
  page,
}) => {
  await withoutShareSheet(page);
  const whole = await someLedger(page);
  const [packed = ''] = whole.find(([key]) => key.startsWith('c/'))!;
  await putRecords(page, [[packed, { entries: [1, ...entriesOf(whole, packed)] }]]);
  await reopen(page);
  await expect(said(page).first()).toContainText('1 saved record');
  const coach = new Coach(page);
  const download = page.waitForEvent('download');
  await coach.button('Share the damaged records').tap();
  await download;
  const changed = { entries: [1, 2, ...entriesOf(whole, packed)] };
  await putRecords(page, [[packed, changed]]);
  await coach.button('Remove 1 record that was shared').tap();
  await coach.button('Remove them now?').tap();
  await expect(page.getByText('1 record has changed since and stayed')).toBeVisible();
  expect(new Map(await recordsOn(page)).get(packed)).toEqual(changed);
  await expect(coach.button('Remove them from this phone')).toBeVisible();
});

test('a packed practice whose bytes are gone from the disk leaves its summary and all else, and a backup brings it back', async ({
  phone,
}) => {
  const page = await phone.open(withoutShareSheet);
  // So long, and so hard to press, that the browser keeps the pack in a file of its own.
  const long = Array.from({ length: 12 }, (_, place) => ({
    kind: 'spot-look',
    id: nextStamp('', phoneTime() - DAY + 40_000 + place, 'later-one0'),
    at: 5,
    practice: 'before',
    text: randomBytes(10_000).toString('base64'),
  }));
  const whole = await someLedger(page, long);
  await page.goto('./#/settings');
  await new Coach(page).button('Make a backup').tap();
  const download = page.waitForEvent('download');
  await new Coach(page).button('Share the backup').tap();
  const buffer = readFileSync(await (await download).path());
  await phone.close();
  const folder = join(phone.profile, 'Default', 'IndexedDB');
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8', withFileTypes: true })
    .filter((file) => file.isFile() && file.parentPath.includes('.blob'))
    .map((file) => join(file.parentPath, file.name));
  expect(files.length).toBeGreaterThan(0);
  for (const file of files) rmSync(file);

  const again = await phone.open(withoutShareSheet);
  await reopen(again);
  await expect(said(again).first()).toContainText('in the practice of');
  await again.goto('./#/');
  await expect(again.getByText('Round 1')).toBeVisible();
  const [at = '', summary] = whole.find(([key]) => key.startsWith('i/'))!;
  expect(counted(await recordAt(again, at))).toEqual(counted(summary));

  await again.goto('./#/settings');
  const field = again.getByLabel('Import a file from this app');
  await field.setInputFiles({ name: 'backup.txt', mimeType: 'text/plain', buffer });
  await new Coach(again).button('Import it').tap();
  await expect(again.getByText(/new entries imported/)).toBeVisible();
  await reopen(again);
  await expect(said(again)).toHaveCount(0);
  expect(counted(await recordsOn(again))).toEqual(counted(whole));
  tell('files removed from the profile', files.length);
});

test('entries that a later version wrote are kept, packed and handed on untouched', async ({
  page,
}) => {
  await withoutShareSheet(page);
  const whole = await someLedger(page);
  const stamp = (writer: string) => nextStamp('', phoneTime() - DAY + 30_000, writer);
  const later = [
    { kind: 'spot-look', id: stamp('later-one0'), at: 5, held: [true, { why: 'é' }] },
    { kind: 'spot-look', id: stamp('later-two0'), at: 6, practice: 'before', held: false },
  ];
  await putRecords(
    page,
    later.map((entry) => [
      'practice' in entry ? `p/${entry.practice}/${entry.id}` : `s/${entry.id}`,
      entry,
    ]),
  );
  await reopen(page);
  // The late one has joined its practice's pack, and the summary stands.
  await expect
    .poll(async () => (await recordsOn(page)).filter(([key]) => key.startsWith('p/before/')).length)
    .toBe(0);
  const after = new Map(await recordsOn(page));
  expect(after.get('c/before')?.entries).toContainEqual(later[1]);
  const summary = whole.find(([key]) => key.startsWith('i/'))!;
  expect(counted(after.get(summary[0]))).toEqual(counted(summary[1]));
  await expect(said(page)).toHaveCount(0);

  const coach = new Coach(page);
  await coach.button('Make a backup').tap();
  const download = page.waitForEvent('download');
  await coach.button('Share the backup').tap();
  const lines = readFileSync(await (await download).path(), 'utf8')
    .trimEnd()
    .split('\n');
  const handed = lines.map((line) => JSON.parse(line));
  for (const entry of later) expect(handed).toContainEqual(entry);
  expect(PLAYERS.every((name) => handed.some((entry) => entry.name === name))).toBe(true);
});
