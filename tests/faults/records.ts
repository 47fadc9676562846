import type { Page } from 'playwright/test';
import type { Entry } from '../../core/ledger/entry.ts';

/** What lies in the app's database: every key with its record. */
export type Records = [key: string, record: Record<string, unknown>][];

/** Every record of the ledger, read past the app: all but the name of the phone. */
export const recordsOn = (page: Page, database = 'rally-ledger'): Promise<Records> =>
  page.evaluate(
    (name) =>
      new Promise<Records>((resolve, reject) => {
        const open = indexedDB.open(name);
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const store = open.result.transaction('records').objectStore('records');
          const keys = store.getAllKeys();
          const records = store.getAll();
          records.onerror = () => reject(records.error);
          records.onsuccess = () => {
            const rows: Records = keys.result.map((key, at) => [String(key), records.result[at]]);
            resolve(rows.filter(([key]) => key !== 'phone'));
            open.result.close();
          };
        };
      }),
    database,
  );

/** One record by its key; all at once cannot be read where one of them is lost. */
export const recordAt = (page: Page, at: string): Promise<unknown> =>
  page.evaluate(
    (key) =>
      new Promise((resolve, reject) => {
        const open = indexedDB.open('rally-ledger');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const got = open.result.transaction('records').objectStore('records').get(key);
          got.onerror = () => reject(got.error);
          got.onsuccess = () => {
            resolve(got.result);
            open.result.close();
          };
        };
      }),
    at,
  );

/** The entries that lie on the disk one by one, of one kind or of all. */
export async function entriesOn<Kind extends Entry['kind']>(
  page: Page,
  kind?: Kind,
): Promise<Extract<Entry, { kind: Kind }>[]> {
  const all = (await recordsOn(page)).map(([, record]) => record);
  const those = all.filter((record) =>
    kind === undefined ? record.kind !== undefined : record.kind === kind,
  );
  return those as Extract<Entry, { kind: Kind }>[];
}

/** The marks among the records. */
export const marksIn = (records: Records) =>
  records.map(([, record]) => record).filter(({ kind }) => kind === 'mark') as {
    id: string;
    pair: string;
    second: number;
    at: number;
  }[];
