import type { Saying } from '../../core/ledger/entry.ts';
import { isPractised, isStanding } from '../../core/ledger/join.ts';
import { Pen } from '../browser/seed.ts';
import { expect, test } from './bench-page.ts';
import { sayingsBefore, squadSayings } from './court.ts';
import { recordsOn } from './records.ts';

const START = Date.parse('2026-11-24T16:00:00Z');
const NOW = START + 3_600_000;
const round = { practice: 'past', round: 'past-1' };
const mark = (pair: string, second: number): Saying => ({ kind: 'mark', ...round, pair, second });

function ledger() {
  const pen = new Pen(START);
  pen.write(
    ...squadSayings,
    ...sayingsBefore('past', '2026-11-24'),
    { kind: 'clock-started', ...round },
    mark('A', 20),
    mark('A', 40),
    mark('B', 50),
    { kind: 'practice-closed', practice: 'past' },
  );
  return {
    standing: pen.entries.filter(isStanding),
    own: pen.entries.filter(isPractised),
    late: (() => {
      pen.write({ kind: 'tally-corrected', ...round, pair: 'B', by: 2 });
      return pen.entries.slice(-1).filter(isPractised);
    })(),
  };
}

type Sets = { rounds: { tallies: { sets: number }[] }[] };
const setsOf = (summary: unknown) =>
  (summary as Sets).rounds[0]?.tallies.map((tally) => tally.sets);

test('a practice is packed into one record beside its summary, and its marks are gone', async ({
  page,
}) => {
  const { standing, own } = ledger();
  await page.evaluate(
    async ([entries, now]) => {
      const store = new workbench.Store('rally-ledger');
      await store.save(entries);
      await store.pack('past', now);
    },
    [[...standing, ...own], NOW] as const,
  );
  const records = new Map(await recordsOn(page));
  expect([...records.keys()].filter((key) => !key.startsWith('s/'))).toEqual([
    'c/past',
    'i/2026-11-24/past',
  ]);
  expect(records.get('c/past')).toEqual({ entries: own });
  expect(setsOf(records.get('i/2026-11-24/past'))).toEqual([2, 1]);
});

test('a packed practice that gets joined entries is packed anew, in one transaction', async ({
  page,
}) => {
  const { own, late } = ledger();
  const transactions = await page.evaluate(
    async ([own, late, now]) => {
      const store = new workbench.Store('rally-ledger');
      await store.save(own);
      await store.pack('past', now);
      await store.save(late);
      let begun = 0;
      const { transaction } = IDBDatabase.prototype;
      IDBDatabase.prototype.transaction = function (...given) {
        begun += 1;
        return transaction.apply(this, given);
      };
      await store.pack('past', now);
      return begun;
    },
    [own, late, NOW] as const,
  );
  expect(transactions).toBe(1);
  const records = new Map(await recordsOn(page));
  expect([...records.keys()]).toEqual(['c/past', 'i/2026-11-24/past']);
  expect(records.get('c/past')).toEqual({ entries: [...own, ...late] });
  expect(setsOf(records.get('i/2026-11-24/past'))).toEqual([2, 3]);
});

test('packing that fails at any of its writes changes nothing', async ({ page }) => {
  const { own, late } = ledger();
  await page.evaluate(
    async ([own, late, now]) => {
      const store = new workbench.Store('rally-ledger');
      await store.save(own);
      await store.pack('past', now);
      await store.save(late);
    },
    [own, late, NOW] as const,
  );
  const before = await recordsOn(page);
  const failures = await page.evaluate(async (now) => {
    const { put, delete: remove } = IDBObjectStore.prototype;
    let failed = 0;
    for (let at = 0; ; at++) {
      let writes = 0;
      const orFail =
        <Given extends unknown[], Result>(write: (...given: Given) => Result) =>
        (...given: Given): Result => {
          writes += 1;
          if (writes > at) throw new DOMException('on purpose', 'DataError');
          return write(...given);
        };
      IDBObjectStore.prototype.put = function (...given) {
        return orFail(() => put.apply(this, given))();
      };
      IDBObjectStore.prototype.delete = function (...given) {
        return orFail(() => remove.apply(this, given))();
      };
      const store = new workbench.Store('rally-ledger');
      const done = await store.pack('past', now).then(
        () => true,
        () => false,
      );
      Object.assign(IDBObjectStore.prototype, { put, delete: remove });
      if (done) return failed;
      failed += 1;
      // The first that goes through ends the loop, so everything is looked at before.
      const there = await store.open();
      if (there.practised.length !== 1 || !there.packed.has('past')) return -1;
      if (failed > 20) return -2;
    }
  }, NOW);
  expect(failures).toBeGreaterThanOrEqual(3);
  const after = new Map(await recordsOn(page));
  expect(after.size).toBe(before.length - 1);
  expect(after.get('c/past')).toEqual({ entries: [...own, ...late] });
});

test('another ledger is joined as a union: in any order, any number of times, to the same records', async ({
  page,
}) => {
  const { standing, own, late } = ledger();
  const counts = await page.evaluate(
    async ([standing, own, late, now]) => {
      const never = () => false;
      const take = (database: string, standers: typeof standing, entries: typeof own) =>
        workbench.take(
          new workbench.Store(database),
          standers,
          new Map([['past', entries]]),
          never,
          now,
        );
      return [
        await take('rally-ledger', standing, own),
        await take('rally-ledger', standing, own),
        await take('rally-ledger', [], late),
        await take('rally-ledger', standing, [...own, ...late]),
        await take('other', standing.slice(2), own),
        await take('other', standing, [...own, ...late]),
      ];
    },
    [standing, own, late, NOW] as const,
  );
  const all = standing.length + own.length;
  expect(counts).toEqual([all, 0, 1, 0, all - 2, 3]);
  expect(await recordsOn(page, 'other')).toEqual(await recordsOn(page));
});

test('taking a ledger in that fails at any of its writes changes nothing', async ({ page }) => {
  const { standing, own, late } = ledger();
  await page.evaluate(
    async ([own, now]) => {
      const store = new workbench.Store('rally-ledger');
      await store.save(own);
      await store.pack('past', now);
    },
    [own, NOW] as const,
  );
  const before = await recordsOn(page);
  const writes = standing.length + 2;
  for (let failing = 1; failing <= writes; failing++) {
    const error = await page.evaluate(
      async ([standing, late, failing, now]) => {
        const { put } = IDBObjectStore.prototype;
        let left = failing;
        IDBObjectStore.prototype.put = function (...given) {
          left -= 1;
          if (left === 0) throw new DOMException('on purpose', 'QuotaExceededError');
          return put.apply(this, given);
        };
        const store = new workbench.Store('rally-ledger');
        const told = await workbench
          .take(store, standing, new Map([['past', late]]), () => false, now)
          .catch((error) => error.name);
        IDBObjectStore.prototype.put = put;
        return told;
      },
      [standing, late, failing, NOW] as const,
    );
    expect(error, `write ${failing}`).toBe('QuotaExceededError');
    expect(await recordsOn(page), `write ${failing}`).toEqual(before);
  }
});

test('a pack that is damaged is put aside as it lies when its practice is packed anew', async ({
  page,
}) => {
  const { own, late } = ledger();
  const damaged = { entries: [...own.slice(0, -1), { kind: 'practice-closed' }] };
  await page.evaluate(
    async ([own, damaged, late, now]) => {
      const store = new workbench.Store('rally-ledger');
      await store.save(own);
      await store.pack('past', now);
      await workbench.durableStore('rally-ledger')('readwrite', (records) => {
        records.put(damaged, 'c/past');
      });
      await store.save(late);
      await store.pack('past', now);
    },
    [own, damaged, late, NOW] as const,
  );
  const records = new Map(await recordsOn(page));
  expect(records.get('h/c/past/0')).toEqual(damaged);
  expect(records.get('c/past')).toEqual({ entries: [...own.slice(0, -1), ...late] });
  const opened = await page.evaluate(() => new workbench.Store('rally-ledger').open());
  expect(opened.damaged.map(({ key }) => key)).toEqual(['h/c/past/0']);
});

test('removing takes the damaged records that lie as they were handed over, and no other', async ({
  page,
}) => {
  const told = await page.evaluate(async () => {
    const store = new workbench.Store('rally-ledger');
    const use = workbench.durableStore('rally-ledger');
    const put = (key: string, record: unknown) => workbench.set(key, record, use);
    await put('s/same', { half: 'a record' });
    await put('s/changed', { half: 'a record' });
    await put('s/gone', 7);
    await put('c/pack', { entries: [1, 2] });
    await put('c/repacked', { entries: [1, 2] });
    const handed = [
      ...(await store.open()).damaged,
      { key: 'c/pack', path: 'entries.0', record: { entries: [1, 2] } },
      { key: 'c/repacked', path: 'entries.0', record: { entries: [1, 2] } },
    ];
    await put('s/changed', { half: 'another record' });
    await workbench.del('s/gone', use);
    await put('c/repacked', { entries: [1, 2, 3] });
    await put('s/found-since', null);
    return {
      others: await workbench.removeDamaged(store, handed),
      handed: handed.map(({ key }) => key),
    };
  });
  expect(told.handed).toEqual(['s/changed', 's/gone', 's/same', 'c/pack', 'c/repacked']);
  expect(told.others.map(({ key, record }) => [key, record])).toEqual([
    ['s/changed', { half: 'another record' }],
    ['c/repacked', { entries: [1, 2, 3] }],
  ]);
  expect(new Map<string, unknown>(await recordsOn(page))).toEqual(
    new Map<string, unknown>([
      ['c/pack', { entries: [] }],
      ['c/repacked', { entries: [1, 2, 3] }],
      ['s/changed', { half: 'another record' }],
      ['s/found-since', null],
    ]),
  );
});
