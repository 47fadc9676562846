import { type AnyEntry, readEntry } from '../../core/ledger/entry.ts';
import { byId, isPractised } from '../../core/ledger/join.ts';

/**
 * What lies where in the database, and how it is read whatever became of it. One record an entry
 * until its practice is packed:
 *
 *   s/<entry>              an entry that stands beyond one practice
 *   p/<practice>/<entry>   an entry of a practice that is not packed yet, or came after it was
 *   c/<practice>           a packed practice: all its entries
 *   i/<date>/<practice>    its summary, which figures read
 *   phone                  what this phone calls itself
 *   h/<key>/<n>            a damaged record that had to make way, as it lay at that key
 *   d/<drill>              a drill that is being written, d/ a new one: no part of the ledger
 */
export const key = {
  phone: 'phone',
  entry: (entry: AnyEntry) =>
    isPractised(entry) ? `p/${entry.practice}/${entry.id}` : `s/${entry.id}`,
  packed: (practice: string) => `c/${practice}`,
  summary: (date: string, practice: string) => `i/${date}/${practice}`,
  draft: (drill = '') => `d/${drill}`,
};

/** A stored record that cannot be read, kept as it lies. */
export interface Damaged {
  key: string;
  /** The field that is wrong. */
  path: string;
  record: unknown;
}

/** All keys that start with a prefix. */
export const under = (prefix: string) => IDBKeyRange.bound(prefix, `${prefix}\uffff`);

/** The practice whose record lies at a key; undefined for what stands beyond one practice. */
export function practiceAt(key: string): string | undefined {
  const [kind, first, second] = key.split('/');
  if (kind === 'p' || kind === 'c') return first;
  if (kind === 'i') return second;
  return kind === 'h' ? practiceAt(key.slice(2)) : undefined;
}

/** The value of a reading request; one that fails leaves its transaction standing. */
export function resultOf<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = (event) => {
      event.preventDefault();
      reject(request.error);
    };
  });
}

export interface Row {
  key: string;
  record: unknown;
}

/**
 * Keys of records that the browser itself cannot read. A browser may abort whatever transaction
 * asks for one: the next try must not, so that what is written with it can be written.
 */
const unreadable = new Set<string>();

/** All records of a range. Where the browser itself cannot read one, it is undefined. */
export async function rowsOf(store: IDBObjectStore, range: IDBKeyRange): Promise<Row[]> {
  const keys = (await resultOf(store.getAllKeys(range))).map(String);
  const oneByOne = () => Promise.all(keys.map((key) => recordAt(store, key)));
  const records = keys.some((key) => unreadable.has(key))
    ? await oneByOne()
    : await resultOf(store.getAll(range) as IDBRequest<unknown[]>).catch(oneByOne);
  return keys.map((key, index) => ({ key, record: records[index] }));
}

/** One record; undefined where there is none, or the browser itself cannot read it. */
export async function recordAt(store: IDBObjectStore, key: string): Promise<unknown> {
  if (unreadable.has(key)) return undefined;
  try {
    return await resultOf(store.get(key) as IDBRequest<unknown>);
  } catch (error) {
    // Only the record is beyond reading, not the connection.
    if (!(error instanceof DOMException && READ_ERRORS.includes(error.name))) throw error;
    unreadable.add(key);
    return undefined;
  }
}

/** Puts a record, also in the place of one that could not be read. */
export function putRecord(store: IDBObjectStore, key: string, record: unknown): void {
  store.put(record, key);
  unreadable.delete(key);
}

/** What browsers give where a record's own bytes are gone or no longer make sense. */
const READ_ERRORS = ['DataError', 'NotReadableError', 'NotFoundError', 'DataCloneError'];

/** The entries of rows that hold one each, sorted by id; what cannot be read is added to `damaged`. */
export function entriesOf(rows: readonly Row[], damaged: Damaged[]): AnyEntry[] {
  const entries: AnyEntry[] = [];
  for (const row of rows) {
    const reading = readEntry(row.record);
    const wrong = reading.as === 'damaged' ? reading.path : misplaced(reading.entry, row.key);
    if (wrong !== undefined) damaged.push({ key: row.key, path: wrong, record: row.record });
    else if (reading.as !== 'damaged') entries.push(reading.entry);
  }
  return entries.sort(byId);
}

/** A record that lies at another's key was put there by something else than this app. */
const misplaced = (entry: AnyEntry, at: string) => (key.entry(entry) === at ? undefined : 'id');
