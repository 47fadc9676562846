import { promisifyRequest, type UseStore } from 'idb-keyval';
import { type Entry, readEntry, type Unknown } from '../../core/entry.ts';
import { byId, isPractised } from '../../core/ledger.ts';
import type { Summary } from '../../core/summary.ts';
import { durableStore } from './durable-store.ts';

/**
 * What lies where. One record an entry until its practice is packed:
 *
 *   s/<entry>              an entry that stands beyond one practice
 *   p/<practice>/<entry>   an entry of a practice that is not packed yet
 *   c/<practice>           a packed practice: all its entries
 *   i/<date>/<practice>    its summary, which figures read
 */
const key = {
  entry: (entry: Entry | Unknown) =>
    isPractised(entry) ? `p/${entry.practice}/${entry.id}` : `s/${entry.id}`,
  packed: (practice: string) => `c/${practice}`,
  summary: (date: string, practice: string) => `i/${date}/${practice}`,
};

/** All keys that start with a prefix. */
const under = (prefix: string) => IDBKeyRange.bound(prefix, `${prefix}\uffff`);

/** A stored record that does not parse, kept as it lies. */
export interface Hurt {
  key: string;
  /** The field that is wrong. */
  path: string;
  record: unknown;
}

export interface Opened {
  /** Sorted by id. */
  standing: (Entry | Unknown)[];
  practised: (Entry | Unknown)[];
  hurt: Hurt[];
}

/** The ledger's records on this phone. Every call rejects as durable-store.ts says. */
export class Store {
  #use: UseStore;

  constructor(database: string) {
    this.#use = durableStore(database);
  }

  /** What the app opens with: the standing entries and the practices that are not packed. */
  async open(): Promise<Opened> {
    const [standing, practised] = await this.#use('readonly', (store) =>
      Promise.all([rows(store, under('s/')), rows(store, under('p/'))]),
    );
    const hurt: Hurt[] = [];
    return { standing: read(standing, hurt), practised: read(practised, hurt), hurt };
  }

  /** Saves entries; resolves once they are on the disk. The same entry twice is one record. */
  async save(entries: readonly (Entry | Unknown)[]): Promise<void> {
    await this.#use('readwrite', (store) => {
      for (const entry of entries) store.put(entry, key.entry(entry));
    });
  }

  /** Packs a practice: all or nothing. */
  async pack(summary: Summary, entries: readonly (Entry | Unknown)[]): Promise<void> {
    await this.#use('readwrite', (store) => {
      store.put({ entries }, key.packed(summary.practice));
      store.put(summary, key.summary(summary.date, summary.practice));
      store.delete(under(`p/${summary.practice}/`));
    });
  }

  /** Puts a whole ledger in the place of whatever was there: all or nothing. */
  async replace(
    standing: readonly Entry[],
    practices: readonly { summary: Summary; entries: readonly Entry[] }[],
  ): Promise<void> {
    await this.#use('readwrite', (store) => {
      store.clear();
      for (const entry of standing) store.put(entry, key.entry(entry));
      for (const { summary, entries } of practices) {
        store.put({ entries }, key.packed(summary.practice));
        store.put(summary, key.summary(summary.date, summary.practice));
      }
    });
  }

  /** Summaries of the packed practices from one date to another, both included, oldest first. */
  async summaries(from: string, to: string): Promise<Summary[]> {
    const found = await this.#use('readonly', (store) =>
      promisifyRequest<Summary[]>(
        store.getAll(IDBKeyRange.bound(`i/${from}`, `i/${to}\uffff`)) as IDBRequest<Summary[]>,
      ),
    );
    return found;
  }

  /** Removes everything. */
  async clear(): Promise<void> {
    await this.#use('readwrite', (store) => {
      store.clear();
    });
  }
}

interface Row {
  key: string;
  record: unknown;
}

async function rows(store: IDBObjectStore, range: IDBKeyRange): Promise<Row[]> {
  const [keys, records] = await Promise.all([
    promisifyRequest(store.getAllKeys(range)),
    promisifyRequest(store.getAll(range) as IDBRequest<unknown[]>),
  ]);
  return keys.map((key, index) => ({ key: String(key), record: records[index] }));
}

function read(rows: readonly Row[], hurt: Hurt[]): (Entry | Unknown)[] {
  const entries: (Entry | Unknown)[] = [];
  for (const { key, record } of rows) {
    const reading = readEntry(record);
    if (reading.as === 'hurt') hurt.push({ key, path: reading.path, record });
    else entries.push(reading.entry);
  }
  return entries.sort(byId);
}
