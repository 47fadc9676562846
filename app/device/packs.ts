import { type AnyEntry, isKnown, readEntry } from '../../core/ledger/entry.ts';
import { byId, isPractised, join } from '../../core/ledger/join.ts';
import { foldPractice } from '../../core/ledger/practice.ts';
import { isSummary, saysAll } from '../../core/ledger/stored-summary.ts';
import {
  SUMMARY_VERSION,
  type Summary,
  summarise,
  withEstimatesOf,
} from '../../core/ledger/summary.ts';
import {
  type Damaged,
  entriesOf,
  key,
  practiceAt,
  putRecord,
  type Row,
  recordAt,
  resultOf,
  rowsOf,
  under,
} from './records.ts';
import type { Portion, Store } from './store.ts';

/*
 * Packed practices: one record with all entries beside a small summary. What takes an object store
 * runs inside a transaction that its caller opened.
 */

/** Summaries, or packs, that are read in one go: a phone's screen stays alive in between. */
const PORTION = 50;
const FEW = 3;

/** A packed practice, as far as it can be read. */
export interface Pack {
  /** Sorted by id. */
  entries: AnyEntry[];
  /** The record as it lies. */
  record: unknown;
  /** The first place in it that is wrong; left out where the whole was read. */
  path?: string;
}

/** The pack of a practice; undefined where there is none. */
export async function packOf(store: IDBObjectStore, practice: string): Promise<Pack | undefined> {
  const at = key.packed(practice);
  if ((await resultOf(store.getKey(at))) === undefined) return undefined;
  return readPack(await recordAt(store, at), practice);
}

/** Reads the record of a packed practice. */
export function readPack(record: unknown, practice: string): Pack {
  const list = (record as { entries?: unknown } | null | undefined)?.entries;
  if (!Array.isArray(list)) return { entries: [], record, path: 'entries' };
  const pack: Pack = { entries: [], record };
  for (const [place, item] of list.entries()) {
    const reading = readEntry(item);
    if (reading.as !== 'damaged' && reading.entry.practice === practice) {
      pack.entries.push(reading.entry);
    } else {
      pack.path ??= `entries.${place}.${reading.as === 'damaged' ? reading.path : 'practice'}`;
    }
  }
  pack.entries.sort(byId);
  return pack;
}

/**
 * Packs a practice, or packs it anew with what came since and with `more`. A record that is damaged
 * stays as it lies, or is put aside where it must make way. Undefined, and nothing written, where
 * none of the entries opened the practice.
 *
 * @param now milliseconds since 1970
 */
export async function packIn(
  store: IDBObjectStore,
  practice: string,
  now: number,
  more: readonly AnyEntry[] = [],
): Promise<Summary | undefined> {
  const loose = entriesOf(await rowsOf(store, under(`p/${practice}/`)), []);
  const before = await packOf(store, practice);
  const entries = join(join(before?.entries ?? [], loose), more);
  const keys = before ? await summaryKeys(store, practice) : [];
  const stored = await storedAt(store, keys);
  const made = summaryOf(entries, now);
  if (!made) return undefined;
  const summary = withEstimatesOf(made, stored);
  if (before?.path !== undefined) await putAside(store, key.packed(practice), before.record);
  putRecord(store, key.packed(practice), { entries });
  // Its date may have been another one, until the entry came that opened it first.
  for (const at of keys) store.delete(at);
  putRecord(store, key.summary(summary.date, practice), summary);
  for (const entry of loose) store.delete(key.entry(entry));
  return summary;
}

function summaryOf(entries: readonly AnyEntry[], now: number): Summary | undefined {
  const practice = foldPractice(entries.filter(isKnown).filter(isPractised));
  return practice && summarise(practice, now);
}

const summaryKeys = async (store: IDBObjectStore, practice: string): Promise<string[]> =>
  (await resultOf(store.getAllKeys(under('i/'))))
    .map(String)
    .filter((at) => at.endsWith(`/${practice}`));

/** The summary that lies at one of these keys, where one can be read. */
async function storedAt(
  store: IDBObjectStore,
  keys: readonly string[],
): Promise<Summary | undefined> {
  const rows = await Promise.all(
    keys.map(async (at) => ({ key: at, record: await recordAt(store, at) })),
  );
  return rows.find(liesRight)?.record as Summary | undefined;
}

async function putAside(store: IDBObjectStore, at: string, record: unknown): Promise<void> {
  if (record === undefined) return; // Nothing of it is left.
  const aside = await resultOf(store.count(under(`h/${at}/`)));
  store.put(record, `h/${at}/${aside}`);
}

/** A packed practice that was looked at. */
export interface Looked {
  summary?: Summary;
  damaged: Damaged[];
}

/**
 * Holds a practice's summary against its pack. A summary that is missing, damaged or says less is made
 * anew from its pack; but a summary that can be read stands for a pack that cannot.
 *
 * @param keys of its summaries, as they lie: one, where nothing is wrong
 * @param now milliseconds since 1970
 */
export async function lookAt(
  store: IDBObjectStore,
  practice: string,
  keys: readonly string[],
  now: number,
): Promise<Looked> {
  const pack = await packOf(store, practice);
  const rows = await Promise.all(
    keys.map(async (at) => ({ key: at, record: await recordAt(store, at) })),
  );
  const stored = rows.find(liesRight)?.record as Summary | undefined;
  const afresh = pack && summaryOf(pack.entries, now);
  const made = afresh && withEstimatesOf(afresh, stored);
  const path = pack ? pack.path : 'record';
  const stands = stored && (path !== undefined || !afresh || saysAll(stored, afresh));
  const summary = stands ? stored : made;
  if (summary && !(stands && keys.length === 1)) {
    for (const at of keys) store.delete(at);
    putRecord(store, key.summary(summary.date, practice), summary);
  }
  const damaged: Damaged[] = [];
  if (path !== undefined) damaged.push({ key: key.packed(practice), path, record: pack?.record });
  if (!summary) damaged.push(...rows.map((row) => ({ ...row, path: 'record' })));
  return { ...(summary && { summary }), damaged };
}

/** Whether a record is the summary that its key says. */
const liesRight = ({ key: at, record }: Row): boolean =>
  isSummary(record) && key.summary(record.date, record.practice) === at;

/** Whether a record of the history that was damaged is damaged still. */
export const isStillDamaged = (row: Damaged): boolean =>
  row.key.startsWith('c/')
    ? readPack(row.record, practiceAt(row.key) ?? '').path !== undefined
    : !liesRight(row);

/* What the store does with packs: see its methods of the same names. */

export const pack = ({ use }: Store, practice: string, now: number): Promise<Summary | undefined> =>
  use('readwrite', (store) => packIn(store, practice, now));

export const practiceIn = ({ use }: Store, practice: string): Promise<AnyEntry[]> =>
  use('readonly', async (store) => {
    const pack = await packOf(store, practice);
    const loose = entriesOf(await rowsOf(store, under(`p/${practice}/`)), []);
    return join(pack?.entries ?? [], loose);
  });

export async function* history(store: Store, now: number): AsyncGenerator<Portion> {
  const { keys, packed } = await store.index();
  const single = [...keys.values()].flatMap((own) => (own.length === 1 ? own : [])).sort();
  const wanting = new Map(keys);
  for (let from = 0; from < single.length; from += PORTION) {
    const portion = single.slice(from, from + PORTION);
    const rows = await store.use('readonly', (records) =>
      rowsOf(records, IDBKeyRange.bound(portion[0], portion.at(-1))),
    );
    // A summary that an earlier version made is made anew from its pack.
    const summaries = rows
      .filter(liesRight)
      .map(({ record }) => record as Summary)
      .filter(({ version }) => version === SUMMARY_VERSION);
    for (const { practice } of summaries) wanting.delete(practice);
    const alone = summaries.filter(({ practice }) => !packed.has(practice));
    yield {
      summaries,
      damaged: alone.map(({ practice }) => ({
        key: key.packed(practice),
        path: 'record',
        record: undefined,
      })),
    };
  }
  yield* look(store, wanting, now);
}

export async function* look(
  store: Store,
  practices: ReadonlyMap<string, readonly string[]>,
  now: number,
): AsyncGenerator<Portion> {
  const all = [...practices];
  for (let from = 0; from < all.length; from += FEW) {
    yield await store.use('readwrite', async (records) => {
      const portion: Portion = { summaries: [], damaged: [] };
      for (const [practice, keys] of all.slice(from, from + FEW)) {
        const { summary, damaged } = await lookAt(records, practice, keys, now);
        if (summary) portion.summaries.push(summary);
        portion.damaged.push(...damaged);
      }
      return portion;
    });
  }
}

export const keepSummary = ({ use }: Store, before: Summary, after: Summary): Promise<void> =>
  use('readwrite', async (store) => {
    const at = key.summary(before.date, before.practice);
    if (saysAll(await recordAt(store, at), before)) store.put(after, at);
  });

export async function* packs(
  store: Store,
): AsyncGenerator<{ entries: AnyEntry[]; damaged: Damaged[] }[]> {
  const practices = [...(await store.index()).packed];
  for (let from = 0; from < practices.length; from += FEW) {
    const few = practices.slice(from, from + FEW);
    yield await store.use('readonly', async (records) => {
      const read: { entries: AnyEntry[]; damaged: Damaged[] }[] = [];
      for (const practice of few) {
        const pack = await packOf(records, practice);
        const damaged =
          pack?.path === undefined
            ? []
            : [{ key: key.packed(practice), path: pack.path, record: pack.record }];
        if (pack) read.push({ entries: pack.entries, damaged });
      }
      return read;
    });
  }
}
