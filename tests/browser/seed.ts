import type { Page } from 'playwright/test';
import { type Entry, makeEntry, type Saying } from '../../core/ledger/entry.ts';
import { isPractised } from '../../core/ledger/join.ts';
import { nextStamp } from '../../core/ledger/stamp.ts';

/** Writes a ledger for the app to open, one entry a second, as another window of it would have. */
export class Pen {
  readonly entries: Entry[] = [];
  #last = '';

  /**
   * @param at milliseconds since 1970 of the first entry
   * @param writer who stamps them
   */
  constructor(
    public at: number,
    readonly writer = 'test-pen',
  ) {}

  write(...sayings: Saying[]): void {
    for (const saying of sayings) {
      this.#last = nextStamp(this.#last, this.at, this.writer);
      this.entries.push(makeEntry(saying, this.#last, this.at));
      this.at += 1_000;
    }
  }
}

/** Puts records into the database, or removes those that are undefined, past the app. */
export const putRecords = (page: Page, records: readonly (readonly [string, unknown])[]) =>
  page.evaluate(
    (all) =>
      new Promise<void>((resolve, reject) => {
        const open = indexedDB.open('rally-ledger');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const transaction = open.result.transaction('records', 'readwrite');
          const store = transaction.objectStore('records');
          for (const [key, record] of all) {
            if (record === undefined) store.delete(key);
            else store.put(record, key);
          }
          transaction.onabort = () => reject(transaction.error);
          transaction.oncomplete = () => {
            open.result.close();
            resolve();
          };
        };
      }),
    records,
  );

/** Puts entries into the app's database; the page must have opened the app once. */
export const plantEntries = (page: Page, entries: readonly Entry[]): Promise<void> =>
  putRecords(
    page,
    entries.map((entry) => [
      isPractised(entry) ? `p/${entry.practice}/${entry.id}` : `s/${entry.id}`,
      entry,
    ]),
  );
