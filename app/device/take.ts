import type { AnyEntry, Entry } from '../../core/ledger/entry.ts';
import { type Erased, foldErased, isErased } from '../../core/ledger/erased.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { damagedLine } from './damaged-line.ts';
import { packIn, packOf, readPack } from './packs.ts';
import {
  type Damaged,
  entriesOf,
  key,
  practiceAt,
  putRecord,
  recordAt,
  resultOf,
  rowsOf,
  under,
} from './records.ts';
import type { Store } from './store.ts';

/*
 * What is seldom done to the records as a whole: none of it is needed on the court, so it is loaded
 * when it is asked for.
 */

const standingIn = async (store: IDBObjectStore) => entriesOf(await rowsOf(store, under('s/')), []);

const isNew = (there: readonly AnyEntry[]) => {
  const ids = new Set(there.map((entry) => entry.id));
  return (entry: AnyEntry) => !ids.has(entry.id);
};

/**
 * Joins another ledger's entries with this one's, in one transaction; what either erased goes.
 *
 * @param practices those of each practice, sorted by id
 * @param staysOpen whether a practice that is new here is one to go on with, and not packed
 * @returns how many entries were new
 */
export const take = (
  { useLong }: Store,
  standing: readonly AnyEntry[],
  practices: ReadonlyMap<string, readonly AnyEntry[]>,
  staysOpen: (entries: readonly AnyEntry[]) => boolean,
  now: number,
): Promise<number> =>
  useLong('readwrite', async (store) => {
    const put = (entries: readonly AnyEntry[]) => {
      for (const entry of entries) putRecord(store, key.entry(entry), entry);
    };
    const before = await standingIn(store);
    const fresh = standing.filter(isNew(before));
    const erased = foldErased([...before, ...fresh]);
    const more = fresh.filter((entry) => !isErased(entry, erased));
    put(more);
    let taken = more.length;
    for (const [practice, entries] of practices) {
      if (erased.practices.has(practice)) continue;
      const pack = await packOf(store, practice);
      const loose = entriesOf(await rowsOf(store, under(`p/${practice}/`)), []);
      const more = entries
        .filter(isNew([...(pack?.entries ?? []), ...loose]))
        .filter((entry) => !isErased(entry, erased));
      if (more.length === 0) continue;
      taken += more.length;
      const isPast = pack || (loose.length === 0 && !staysOpen(entries));
      if (!isPast || !(await packIn(store, practice, now, more))) put(more);
    }
    if (more.some(({ kind }) => kind.endsWith('-erased'))) await forgetIn(store);
    return taken;
  });

/** Of a file's entries those that are not here yet, and were not erased here; nothing is written. */
export async function news(
  store: Store,
  standing: readonly AnyEntry[],
  practices: ReadonlyMap<string, readonly AnyEntry[]>,
): Promise<AnyEntry[]> {
  const before = await store.use('readonly', standingIn);
  const erased = foldErased(before);
  const fresh = standing.filter(isNew(before));
  for (const [practice, entries] of practices) {
    fresh.push(...entries.filter(isNew(await store.practice(practice))));
  }
  return fresh.filter((entry) => !isErased(entry, erased));
}

/** Removes whatever the ledger says is erased. */
export const forget = ({ useLong }: Store): Promise<void> => useLong('readwrite', forgetIn);

async function forgetIn(store: IDBObjectStore): Promise<void> {
  const standing = await standingIn(store);
  const erased = foldErased(standing);
  const loose = entriesOf(await rowsOf(store, under('p/')), []);
  for (const entry of [...standing, ...loose]) {
    if (isErased(entry, erased)) store.delete(key.entry(entry));
  }
  for (const at of (await resultOf(store.getAllKeys())).map(String)) {
    const practice = practiceAt(at) ?? '';
    if (erased.practices.has(practice)) store.delete(at);
    else if (at.startsWith('c/') && erased.players.size > 0) {
      await forgetInPack(store, practice, erased);
    }
  }
}

/** Of a packed practice only what is said of an erased player alone goes; its summary is made anew. */
async function forgetInPack(
  store: IDBObjectStore,
  practice: string,
  erased: Erased,
): Promise<void> {
  const pack = await packOf(store, practice);
  const left = pack?.entries.filter((entry) => !isErased(entry, erased));
  // A damaged pack stays as it lies: it is handed over, or removed, by a person.
  if (!pack || !left || pack.path !== undefined || left.length === pack.entries.length) return;
  putRecord(store, key.packed(practice), { entries: left });
  for (const at of await resultOf(store.getAllKeys(under('i/')))) {
    if (String(at).endsWith(`/${practice}`)) store.delete(at);
  }
}

/** Keeps another name for this phone. */
export const rename = ({ use }: Store, name: string): Promise<void> =>
  use('readwrite', (store) => {
    store.put(name, key.phone);
  });

/**
 * Puts a whole ledger in the place of whatever was there: all or nothing. Drafts of drills go too:
 * they were written beside the ledger that goes, and only the invented one is ever replaced; the
 * coach's own drafts lie in another database.
 */
export const replace = (
  { useLong }: Store,
  standing: readonly Entry[],
  practices: readonly { summary: Summary; entries: readonly Entry[] }[],
): Promise<void> =>
  useLong('readwrite', (store) => {
    store.clear();
    for (const entry of standing) store.put(entry, key.entry(entry));
    for (const { summary, entries } of practices) {
      store.put({ entries }, key.packed(summary.practice));
      store.put(summary, key.summary(summary.date, summary.practice));
    }
  });

/**
 * Removes damaged records that still lie as they are given; what can be read of a damaged pack
 * stays.
 *
 * @returns those that lie otherwise by now, as they do; they are left alone
 */
export const removeDamaged = ({ use }: Store, damaged: readonly Damaged[]): Promise<Damaged[]> =>
  use('readwrite', async (store) => {
    const others: Damaged[] = [];
    for (const given of damaged) {
      const { key: at } = given;
      if ((await resultOf(store.getKey(at))) === undefined) continue;
      const record = await recordAt(store, at);
      if (damagedLine({ ...given, record }) !== damagedLine(given)) {
        others.push({ ...given, record });
      } else if (at.startsWith('c/')) {
        putRecord(store, at, { entries: readPack(record, practiceAt(at) ?? '').entries });
      } else store.delete(at);
    }
    return others;
  });
