import { gzipSync } from 'node:zlib';
import { endingLine, entryLine, headingLine } from '../../core/exchange/backup.ts';
import { Pen } from '../browser/seed.ts';
import { expect, test } from './bench-page.ts';
import { tell, times } from './counts.ts';
import { PLAYERS, sayingsBefore, squadSayings } from './court.ts';
import { Mutator } from './mutator.ts';
import { recordsOn } from './records.ts';

const FILES = times(500, 10_000);
/** Files that go over to the page at once. */
const AT_ONCE = 100;

/** A file such as the app makes: a squad and a practice with its marks. */
function backup(): Uint8Array {
  const pen = new Pen(Date.parse('2026-11-24T16:00:00Z'));
  const round = { practice: 'past', round: 'past-1' };
  pen.write(
    ...squadSayings,
    ...sayingsBefore('past', '2026-11-24'),
    { kind: 'clock-started', ...round },
    ...[12, 25, 31, 50].map((second) => ({ kind: 'mark' as const, ...round, pair: 'A', second })),
    { kind: 'round-settled', ...round },
    { kind: 'practice-closed', practice: 'past' },
  );
  const { entries } = pen;
  const text = [headingLine(), ...entries.map(entryLine), endingLine(entries.length)].join('');
  return new TextEncoder().encode(text);
}

const ROSTER = new TextEncoder().encode(
  `name,level,hand\r\n${PLAYERS.map((name, at) => `"${name}",${at + 3},right`).join('\r\n')}\r\n`,
);

const asText = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');

interface Told {
  taken: number;
  refused: number;
  /** Of those that were refused: no place was named, something was written, or an error escaped. */
  placeless: string[];
  written: string[];
  escaped: string[];
}
const nothing = (): Told => ({ taken: 0, refused: 0, placeless: [], written: [], escaped: [] });

function add(to: Told, more: Told): void {
  to.taken += more.taken;
  to.refused += more.refused;
  to.placeless.push(...more.placeless);
  to.written.push(...more.written);
  to.escaped.push(...more.escaped);
}

function report(told: Told): void {
  tell('mutated files', told.taken + told.refused);
  tell('taken, for nothing in them was wrong', told.taken);
  tell('refused', told.refused);
  tell('refused without naming the place', told.placeless.length);
  tell('refused and yet written of', told.written.length);
  tell('errors that escaped', told.escaped.length);
  expect(told.escaped.slice(0, 5)).toEqual([]);
  expect(told.placeless.slice(0, 5)).toEqual([]);
  expect(told.written.slice(0, 5)).toEqual([]);
  expect(told.refused).toBeGreaterThan(FILES / 3);
}

test('mutated backups: none escapes, each refusal names the place, and nothing is written of one that is refused', async ({
  page,
}) => {
  const mutator = new Mutator(20_261_124);
  const plain = backup();
  const packed = gzipSync(plain);
  const told = nothing();
  await page.evaluate(() => new workbench.Store('rally-ledger').save([]));
  for (let from = 0; from < FILES; from += AT_ONCE) {
    const files = Array.from({ length: AT_ONCE }, () =>
      asText(mutator.mutate(mutator.below(5) === 0 ? packed : plain)),
    );
    add(
      told,
      await page.evaluate(async (files) => {
        const told: Told = { taken: 0, refused: 0, placeless: [], written: [], escaped: [] };
        const store = new workbench.Store('rally-ledger');
        const keysThere = () =>
          workbench.durableStore('rally-ledger')('readonly', (records) => {
            const keys = records.getAllKeys();
            return new Promise<string>((resolve) => {
              keys.onsuccess = () => resolve(keys.result.join());
            });
          });
        for (const file of files) {
          const bytes = Uint8Array.from(atob(file), (letter) => letter.charCodeAt(0));
          const before = await keysThere();
          try {
            const brought = await workbench.readBackup(new Blob([bytes]));
            if ('reason' in brought) {
              told.refused += 1;
              const needsField = ['entry', 'reserved', 'deep'].includes(brought.reason);
              const named =
                brought.line >= 1 && (!needsField || ('field' in brought && brought.field));
              if (!named) told.placeless.push(file);
              if ((await keysThere()) !== before) told.written.push(file);
            } else {
              told.taken += 1;
              await workbench.take(
                store,
                brought.standing,
                brought.practices,
                () => true,
                Date.now(),
              );
              // What was taken can be opened again.
              if ((await store.open()).damaged.length > 0) told.escaped.push(`damaged: ${file}`);
              await store.clear();
            }
          } catch (error) {
            told.escaped.push(`${error}: ${file}`);
          }
        }
        return told;
      }, files),
    );
  }
  report(told);
});

test('mutated lists of names: none escapes, and each refusal names its row', async ({ page }) => {
  const mutator = new Mutator(7);
  const told = nothing();
  for (let from = 0; from < FILES; from += AT_ONCE) {
    const files = Array.from({ length: AT_ONCE }, () => asText(mutator.mutate(ROSTER)));
    add(
      told,
      await page.evaluate((files) => {
        const told: Told = { taken: 0, refused: 0, placeless: [], written: [], escaped: [] };
        for (const file of files) {
          const bytes = Uint8Array.from(atob(file), (letter) => letter.charCodeAt(0));
          try {
            const reading = workbench.readRoster(workbench.decodeText(bytes)?.text, ['Suki']);
            if ('players' in reading) {
              told.taken += 1;
              const names = reading.players.map(({ name }) => name);
              const fit = names.every((name) => name.length >= 1 && name.length <= 40);
              if (!fit || names.length > 200) told.escaped.push(`unfit: ${file}`);
            } else {
              told.refused += 1;
              const named =
                reading.faults.length > 0 && reading.faults.every(({ row }) => row >= 1);
              if (!named) told.placeless.push(file);
            }
          } catch (error) {
            told.escaped.push(`${error}: ${file}`);
          }
        }
        return told;
      }, files),
    );
  }
  report(told);
});

test('a file that unpacks past the limit is stopped while it unpacks', async ({ page }) => {
  const told = await page.evaluate(
    async (MB) => {
      let decoded = 0;
      const { decode } = TextDecoder.prototype;
      TextDecoder.prototype.decode = function (...given) {
        decoded += (given[0] as Uint8Array | undefined)?.length ?? 0;
        return decode.apply(this, given);
      };
      const bomb = async (piece: string, pieces: number) => {
        let left = pieces;
        const bytes = new TextEncoder().encode(piece);
        const source = new ReadableStream<BufferSource>({
          pull: (controller) => {
            left -= 1;
            if (left < 0) controller.close();
            else controller.enqueue(bytes);
          },
        });
        return new Response(source.pipeThrough(new CompressionStream('gzip'))).blob();
      };
      const limits = { file: 1_000_000, text: 2_000_000, time: 60_000 };
      const entry = `{"kind":"spot-look","id":"000000000-000-somebody","at":1}\n`.repeat(1_000);
      const heading = `{"rally-ledger":1}\n`;
      const results: unknown[] = [];
      for (const file of [
        await bomb(' '.repeat(1_000_000), MB), // one line without an end
        await bomb(heading + entry, 1).then(async (first) => {
          // A second member of the archive goes on where the first one ended.
          return new Blob([first, await bomb(entry, MB * 16)]);
        }),
        await bomb(`${heading}${entry}`, MB * 16),
        await bomb('\n'.repeat(1_000_000), MB),
      ]) {
        decoded = 0;
        const brought = await workbench.readBackup(file, limits);
        results.push({
          reason: 'reason' in brought ? brought.reason : 'taken',
          packed: file.size < limits.file,
          stopped: decoded <= limits.text + 1_000_000,
        });
      }
      return results;
    },
    times(30, 300),
  );
  const stopped = (reason: string) => ({ reason, packed: true, stopped: true });
  const [line, members, entries, lines] = told as { reason: string }[];
  expect(line).toEqual(stopped('long'));
  expect(entries).toEqual(stopped('entry'));
  expect(lines).toEqual(stopped('heading'));
  // Some browsers read on into a second member, others take it for damage.
  expect(['large', 'packing']).toContain(members?.reason);
  tell('files of so many MB', times(30, 300));
  tell('of them stopped at 2 MB', told.length);
});

test('a file larger than any ledger, or one that takes too long, is refused as such', async ({
  page,
}) => {
  const reasons = await page.evaluate(async (text) => {
    const limits = { file: 1_000_000, text: 2_000_000, time: 60_000 };
    const reasonOf = async (file: Blob, over: Partial<typeof limits>) => {
      const brought = await workbench.readBackup(file, { ...limits, ...over });
      return 'reason' in brought ? brought.reason : 'taken';
    };
    const file = new Blob([text]);
    return [
      await reasonOf(file, {}),
      await reasonOf(file, { file: 100 }),
      await reasonOf(file, { text: 100 }),
      await reasonOf(file, { time: -1 }),
      await reasonOf(new Blob([text.slice(0, -5), Uint8Array.of(0xff, 0xfe)]), {}),
      await reasonOf(new Blob([]), {}),
    ];
  }, new TextDecoder().decode(backup()));
  expect(reasons).toEqual(['taken', 'large', 'large', 'slow', 'letters', 'heading']);
});

test('a ledger goes out and in again as it was, plain and packed', async ({ page }) => {
  const counts = await page.evaluate(async (text) => {
    const brought = await workbench.readBackup(new Blob([text]));
    if ('reason' in brought) return brought;
    const store = new workbench.Store('rally-ledger');
    await workbench.take(store, brought.standing, brought.practices, () => false, Date.now());
    async function* portions() {
      const opened = await store.open();
      yield [...opened.standing, ...opened.practised];
      for await (const packs of store.packs()) for (const { entries } of packs) yield entries;
    }
    const { file, entries } = await workbench.makeBackup(portions(), 'whole');
    const zipped = await new Response(
      file.stream().pipeThrough(new CompressionStream('gzip')),
    ).blob();
    const other = new workbench.Store('other');
    const taken: number[] = [];
    for (const each of [zipped, file]) {
      const again = await workbench.readBackup(each);
      if ('reason' in again) return again;
      taken.push(
        await workbench.take(other, again.standing, again.practices, () => false, Date.now()),
      );
    }
    return { entries, taken };
  }, new TextDecoder().decode(backup()));
  const entries = new TextDecoder().decode(backup()).trimEnd().split('\n').length - 2;
  expect(counts).toEqual({ entries, taken: [entries, 0] });
  expect(await recordsOn(page, 'other')).toEqual(await recordsOn(page));
});
