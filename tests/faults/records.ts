import type { Page } from 'playwright/test';

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

/** The marks among the records. */
export const marksIn = (records: Records) =>
  records.map(([, record]) => record).filter(({ kind }) => kind === 'mark') as {
    id: string;
    pair: string;
    second: number;
    at: number;
  }[];
