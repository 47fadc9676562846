import { IDBFactory } from 'fake-indexeddb';
import { vi } from 'vitest';
import { randomFrom } from '../../../demo-data/random.ts';
import { Channels } from './channels.ts';
import { Locks } from './locks.ts';
import { compiled, Page, type Shared } from './page.ts';
import { quiet } from './quiet.ts';

/** The phone's clock is moved in steps no longer than this, in milliseconds, for all to happen in order. */
const STEP_MS = 5_000;
/** A long time is passed in longer steps. */
const LONG_MS = 600_000;
const LONG_STEP_MS = 300_000;
/** After every deed so much time passes: what was drawn anew is seen, and its effects have begun. */
const DEED_MS = 60;
/** The database of the coach's own ledger. */
const DATABASE = 'rally-ledger';
/** What opening does not need comes a little after. */
const TIDY_MS = 1_200;

/** A time of the phone's own zone, in milliseconds since 1970: '2026-03-17 18:30'. */
export const timeOf = (text: string): number => {
  const [year, month, day, hour = 0, minute = 0] = text.split(/[- :]/).map(Number);
  return new Date(year!, month! - 1, day!, hour, minute).getTime();
};

/**
 * A phone with the app on it: one database, a clock that stands until it is moved, and as many
 * windows as were opened. Vitest's fake timers must be its own.
 */
export class Phone {
  readonly shared: Shared;
  readonly pages: Page[] = [];
  readonly #open: ReturnType<typeof compiled>;

  /**
   * @param script the app, as built.ts builds it
   * @param now '2026-03-17 18:30'
   */
  constructor(script: string, now: string, seed = 1) {
    vi.useFakeTimers({
      toFake: ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval', 'Date', 'performance'],
      now: timeOf(now),
    });
    this.#open = compiled(script);
    this.shared = {
      database: new IDBFactory(),
      prefs: storage(),
      locks: new Locks(),
      channels: new Channels(),
      random: randomFrom(seed),
    };
  }

  /** Opens the app in one more window, and waits until it has come to rest. */
  async open(hash = ''): Promise<Page> {
    const page = new Page(this.#open, this.shared, hash);
    this.pages.push(page);
    while (page.root.childNodes.length === 0) await this.pass(DEED_MS);
    await this.pass(TIDY_MS, DEED_MS);
    return page;
  }

  /** The phone ends a page; what it had written by then stays. */
  async kill(page: Page): Promise<void> {
    page.kill();
    this.pages.splice(this.pages.indexOf(page), 1);
    await quiet();
  }

  /** Ends every page and opens the app anew. */
  async restart(hash = ''): Promise<Page> {
    for (const page of [...this.pages]) await this.kill(page);
    return this.open(hash);
  }

  /** Lets so many milliseconds pass, the app being awake. */
  async pass(milliseconds: number, step = STEP_MS): Promise<void> {
    await quiet();
    for (let left = milliseconds; left > 0; left -= step) {
      vi.advanceTimersByTime(Math.min(step, left));
      await quiet();
    }
  }

  /** Lets the time pass until then, the app being awake and on the table. */
  async until(then: string): Promise<void> {
    const left = timeOf(then) - Date.now();
    if (left < 0) throw new RangeError(`${then} is over`);
    await this.pass(left, left > LONG_MS ? LONG_STEP_MS : STEP_MS);
  }

  /** Sleeps until then: no timer of a page goes, and its steady clock stands still. */
  async sleepUntil(then: string | number): Promise<void> {
    const time = typeof then === 'number' ? then : timeOf(then);
    if (time < Date.now()) throw new RangeError(`${then} is over`);
    for (const page of this.pages) page.isHidden = true;
    await quiet();
    vi.setSystemTime(time);
    for (const page of this.pages) page.isHidden = false;
    await this.pass(DEED_MS);
  }

  /** Sets the clock of the phone, of which no page is told. */
  setClock(now: number): void {
    vi.setSystemTime(now);
  }

  /** Does something on a page and waits until all has come of it. */
  async do<T>(deed: () => T): Promise<T> {
    const done = deed();
    await this.pass(DEED_MS);
    return done;
  }

  /** Lets as much time pass as a long work of a page takes. */
  async through<T>(work: Promise<T>): Promise<T> {
    let going = true;
    const stop = () => {
      going = false;
    };
    work.then(stop, stop);
    for (await quiet(); going; ) await this.pass(1);
    return work;
  }

  /** Waits until a page has worked out every estimate that it can. */
  async worked(page: Page): Promise<void> {
    let before = -1;
    for (let still = 0; still < 4; ) {
      await this.pass(500, DEED_MS);
      const left = page.app.estimates.waiting.value;
      still = left === before ? still + 1 : 0;
      before = left;
    }
  }

  /** Every record of the ledger's database, by its key. */
  async records(): Promise<Map<string, unknown>> {
    return this.#store('readonly', async (store) => {
      const [keys, values] = await Promise.all([done(store.getAllKeys()), done(store.getAll())]);
      return new Map(keys.map((key, at) => [String(key), values[at]]));
    });
  }

  /** Puts a record past the app. */
  async put(key: string, record: unknown): Promise<void> {
    await this.#store('readwrite', (store) => done(store.put(record, key)));
  }

  /** Removes a record past the app. */
  async remove(key: string): Promise<void> {
    await this.#store('readwrite', (store) => done(store.delete(key)));
  }

  async #store<T>(
    mode: IDBTransactionMode,
    deed: (store: IDBObjectStore) => Promise<T>,
  ): Promise<T> {
    const request = this.shared.database.open(DATABASE);
    request.onupgradeneeded = () => request.result.createObjectStore('records');
    const database = await done(request);
    const result = await deed(database.transaction('records', mode).objectStore('records'));
    database.close();
    return result;
  }

  /** Ends every page and gives Vitest's clock back. */
  end(): void {
    for (const page of this.pages) page.kill();
    vi.useRealTimers();
  }
}

const done = <T>(request: IDBRequest<T>) =>
  new Promise<T>((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

function storage(): Storage {
  const kept = new Map<string, string>();
  return {
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => void kept.set(name, value),
  } as Storage;
}
