import type { UseStore } from 'idb-keyval';

/** The one object store of the database; its keys say what a record is (see records.ts). */
export const OBJECT_STORE = 'records';

/** How long the phone may take to open the database, or to carry out one transaction. */
const LIMIT_MS = 8_000;
/** A lost connection is reopened and the same work tried again, so many times in all. */
const TRIES = 3;

/**
 * A store for idb-keyval that survives what phones do to databases.
 *
 * idb-keyval's own createStore leaves durability to the browser, whose default on phones is to say
 * "done" before the record is on the disk, and goes on using a connection that was lost. This one
 * asks for strict durability, gives opening and every transaction a time limit, says that something
 * is written only once its transaction has completed, and reopens a lost connection. The callback may
 * therefore run more than once: it must be idempotent, as puts and deletes by key are.
 *
 * Rejects with the last error: QuotaExceededError where the phone is full, TimeoutError where it
 * did not answer, whatever the browser gave otherwise. The next call begins with a new connection.
 */
export function durableStore(database: string, limit = LIMIT_MS): UseStore {
  let connection: Promise<IDBDatabase> | undefined;

  const lose = (lost: Promise<IDBDatabase>) => {
    if (connection === lost) connection = undefined;
    // One that opens after all, once nobody waits for it, must not stand in another's way.
    lost.then((db) => db.close()).catch(() => {});
  };

  return async (mode, callback) => {
    for (let attempt = 1; ; attempt++) {
      connection ??= open(database);
      const current = connection;
      try {
        const db = await within(limit, current);
        // The browser closed it, or another window removes the database: open anew at the next use.
        db.onclose = db.onversionchange = () => lose(current);
        return await transact(db, mode, callback, limit);
      } catch (error) {
        lose(current);
        if (attempt === TRIES || !isLost(error)) throw error;
      }
    }
  };
}

function open(database: string, version?: number): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(database, version);
    request.onupgradeneeded = () => request.result.createObjectStore(OBJECT_STORE);
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const db = request.result;
      if (db.objectStoreNames.contains(OBJECT_STORE)) {
        resolve(db);
        return;
      }
      // Somebody else made a database of this name, and nothing in it.
      db.close();
      resolve(open(database, db.version + 1));
    };
  });
}

async function transact<T>(
  db: IDBDatabase,
  mode: IDBTransactionMode,
  callback: (store: IDBObjectStore) => T | PromiseLike<T>,
  limit: number,
): Promise<T> {
  const transaction = db.transaction(OBJECT_STORE, mode, { durability: 'strict' });
  const completed = new Promise<void>((resolve, reject) => {
    // Not as `oncomplete`: the library puts its own there.
    transaction.addEventListener('complete', () => resolve());
    transaction.addEventListener('abort', () =>
      reject(transaction.error ?? lost('the transaction was aborted')),
    );
  });
  // Whichever fails first is thrown; the other must not be reported as unhandled.
  completed.catch(() => {});
  try {
    const result = callback(transaction.objectStore(OBJECT_STORE));
    if (mode === 'readonly') return await within(limit, Promise.resolve(result));
    const [value] = await within(limit, Promise.all([result, completed]));
    return value;
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It had ended already, by itself.
    }
    // What ended the transaction says more than a request that fell with it.
    throw transaction.error ?? error;
  }
}

function within<T>(limit: number, work: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(
      () => reject(new DOMException('the phone did not answer', 'TimeoutError')),
      limit,
    );
    work.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}

const lost = (message: string) => new DOMException(message, 'UnknownError');

/** Errors after which a fresh connection may succeed. A full phone is not among them. */
const isLost = (error: unknown): boolean =>
  error === null ||
  (error instanceof DOMException &&
    [
      'InvalidStateError',
      'UnknownError',
      'AbortError',
      'TimeoutError',
      'TransactionInactiveError',
    ].includes(error.name));
