import { clear, get, type UseStore, update } from 'idb-keyval';
import type { AnyEntry, Entry } from '../../core/ledger/entry.ts';
import { isPractised, join } from '../../core/ledger/join.ts';
import { saysAll } from '../../core/ledger/stored-summary.ts';
import { SUMMARY_VERSION, type Summary } from '../../core/ledger/summary.ts';
import { damagedLine } from './damaged-line.ts';
import { durableStore } from './durable-store.ts';
import { liesRight, lookAt, packIn, packOf, readPack } from './packs.ts';
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

export interface Opened {
  /** Sorted by id. */
  standing: AnyEntry[];
  practised: AnyEntry[];
  damaged: Damaged[];
  /** Practices, of those with entries here and those asked about, that are packed. */
  packed: ReadonlySet<string>;
}

/** A portion of what the history holds. */
export interface Portion {
  summaries: Summary[];
  damaged: Damaged[];
}

/** Summaries, or packs, that are read in one go: a phone's screen stays alive in between. */
const PORTION = 50;
const FEW = 3;
/** What concerns the whole ledger may take a slow phone its time. */
const WHOLE_MS = 180_000;

/** The ledger's records on this phone. Every call rejects as durable-store.ts says. */
export class Store {
  #use: UseStore;
  #useLong: UseStore;

  constructor(database: string) {
    this.#use = durableStore(database);
    this.#useLong = durableStore(database, WHOLE_MS);
  }

  /** What the app opens with: the standing entries and the practices that are not packed. */
  async open(practices: Iterable<string> = []): Promise<Opened> {
    return this.#use('readonly', async (store) => {
      const [standing, practised, aside] = await Promise.all([
        rowsOf(store, under('s/')),
        rowsOf(store, under('p/')),
        rowsOf(store, under('h/')),
      ]);
      const damaged: Damaged[] = aside.map((row) => ({ ...row, path: 'record' }));
      const opened = {
        standing: entriesOf(standing, damaged),
        practised: entriesOf(practised, damaged),
      };
      const packed = new Set<string>();
      const own = opened.practised.filter(isPractised).map((entry) => entry.practice);
      for (const practice of new Set([...own, ...practices])) {
        if (await isPacked(store, practice)) packed.add(practice);
      }
      return { ...opened, damaged, packed };
    });
  }

  /** The name of this phone: the one that is kept, or the one that was drawn where there is none. */
  async phone(drawn: string): Promise<string> {
    const known = await get<unknown>(key.phone, this.#use);
    if (isName(known)) return known;
    let kept = drawn;
    await update<unknown>(
      key.phone,
      (there) => {
        kept = isName(there) ? there : drawn;
        return kept;
      },
      this.#use,
    );
    return kept;
  }

  /** Saves entries; resolves once they are on the disk. The same entry twice is one record. */
  async save(entries: readonly AnyEntry[]): Promise<void> {
    await this.#use('readwrite', (store) => {
      for (const entry of entries) putRecord(store, key.entry(entry), entry);
    });
  }

  /**
   * Packs a practice, or packs it anew with what came since: all or nothing. Undefined where none
   * of its entries opened it.
   */
  async pack(practice: string, now: number): Promise<Summary | undefined> {
    return this.#use('readwrite', (store) => packIn(store, practice, now));
  }

  /**
   * Joins another ledger's entries with this one's, in one transaction.
   *
   * @param practices those of each practice, sorted by id
   * @param staysOpen whether a practice that is new here is one to go on with, and not packed
   * @returns how many entries were new
   */
  async take(
    standing: readonly AnyEntry[],
    practices: ReadonlyMap<string, readonly AnyEntry[]>,
    staysOpen: (entries: readonly AnyEntry[]) => boolean,
    now: number,
  ): Promise<number> {
    return this.#useLong('readwrite', async (store) => {
      const isNew = (there: readonly AnyEntry[]) => {
        const ids = new Set(there.map((entry) => entry.id));
        return (entry: AnyEntry) => !ids.has(entry.id);
      };
      const put = (entries: readonly AnyEntry[]) => {
        for (const entry of entries) putRecord(store, key.entry(entry), entry);
      };
      const before = entriesOf(await rowsOf(store, under('s/')), []);
      const more = standing.filter(isNew(before));
      put(more);
      let taken = more.length;
      for (const [practice, entries] of practices) {
        const pack = await packOf(store, practice);
        const loose = entriesOf(await rowsOf(store, under(`p/${practice}/`)), []);
        const more = entries.filter(isNew([...(pack?.entries ?? []), ...loose]));
        if (more.length === 0) continue;
        taken += more.length;
        const isPast = pack || (loose.length === 0 && !staysOpen(entries));
        if (!isPast || !(await packIn(store, practice, now, more))) put(more);
      }
      return taken;
    });
  }

  /** All entries of a practice, packed or not, as far as they can be read, sorted by id. */
  async practice(practice: string): Promise<AnyEntry[]> {
    return this.#use('readonly', async (store) => {
      const pack = await packOf(store, practice);
      const loose = entriesOf(await rowsOf(store, under(`p/${practice}/`)), []);
      return join(pack?.entries ?? [], loose);
    });
  }

  /**
   * Puts a whole ledger in the place of whatever was there: all or nothing. Drafts of drills go too:
   * they were written beside the ledger that goes, and only the invented one is ever replaced or
   * cleared; the coach's own drafts lie in another database.
   */
  async replace(
    standing: readonly Entry[],
    practices: readonly { summary: Summary; entries: readonly Entry[] }[],
  ): Promise<void> {
    await this.#useLong('readwrite', (store) => {
      store.clear();
      for (const entry of standing) store.put(entry, key.entry(entry));
      for (const { summary, entries } of practices) {
        store.put({ entries }, key.packed(summary.practice));
        store.put(summary, key.summary(summary.date, summary.practice));
      }
    });
  }

  /** Summaries of the packed practices, in portions and in no order; damaged ones are made anew. */
  async *history(now: number): AsyncGenerator<Portion> {
    const { keys, packed } = await this.index();
    const single = [...keys.values()].flatMap((own) => (own.length === 1 ? own : [])).sort();
    const wanting = new Map(keys);
    for (let from = 0; from < single.length; from += PORTION) {
      const portion = single.slice(from, from + PORTION);
      const rows = await this.#use('readonly', (store) =>
        rowsOf(store, IDBKeyRange.bound(portion[0], portion.at(-1))),
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
    yield* this.look(wanting, now);
  }

  /** Holds summaries against their packs, a few at a time, given the summaries' keys. */
  async *look(
    practices: ReadonlyMap<string, readonly string[]>,
    now: number,
  ): AsyncGenerator<Portion> {
    const all = [...practices];
    for (let from = 0; from < all.length; from += FEW) {
      yield await this.#use('readwrite', async (store) => {
        const portion: Portion = { summaries: [], damaged: [] };
        for (const [practice, keys] of all.slice(from, from + FEW)) {
          const { summary, damaged } = await lookAt(store, practice, keys, now);
          if (summary) portion.summaries.push(summary);
          portion.damaged.push(...damaged);
        }
        return portion;
      });
    }
  }

  /** Puts a summary that says more in the place of one that still stands as it was read. */
  async keepSummary(before: Summary, after: Summary): Promise<void> {
    await this.#use('readwrite', async (store) => {
      const at = key.summary(before.date, before.practice);
      if (saysAll(await recordAt(store, at), before)) store.put(after, at);
    });
  }

  /** The keys of each practice's summaries, and the practices that are packed. */
  async index(): Promise<{ keys: Map<string, string[]>; packed: ReadonlySet<string> }> {
    const [summaries, packs] = await this.#use('readonly', (store) =>
      Promise.all([
        resultOf(store.getAllKeys(under('i/'))),
        resultOf(store.getAllKeys(under('c/'))),
      ]),
    );
    const packed = new Set(packs.map((at) => practiceAt(String(at)) ?? ''));
    const keys = new Map([...packed].map((practice) => [practice, [] as string[]]));
    for (const at of summaries.map(String)) {
      const practice = practiceAt(at) ?? '';
      keys.set(practice, [...(keys.get(practice) ?? []), at]);
    }
    return { keys, packed };
  }

  /** The entries of all packed practices, a few practices at a time, as far as they can be read. */
  async *packs(): AsyncGenerator<{ entries: AnyEntry[]; damaged: Damaged[] }[]> {
    const practices = [...(await this.index()).packed];
    for (let from = 0; from < practices.length; from += FEW) {
      const few = practices.slice(from, from + FEW);
      const packs = await this.#use('readonly', async (store) => {
        const read: { entries: AnyEntry[]; damaged: Damaged[] }[] = [];
        for (const practice of few) {
          const pack = await packOf(store, practice);
          const damaged =
            pack?.path === undefined
              ? []
              : [{ key: key.packed(practice), path: pack.path, record: pack.record }];
          if (pack) read.push({ entries: pack.entries, damaged });
        }
        return read;
      });
      yield packs;
    }
  }

  /**
   * Removes damaged records that still lie as they are given; what can be read of a damaged pack
   * stays.
   *
   * @returns those that lie otherwise by now, as they do; they are left alone
   */
  async removeDamaged(damaged: readonly Damaged[]): Promise<Damaged[]> {
    return this.#use('readwrite', async (store) => {
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
  }

  /** Removes everything, drafts of drills too (see `replace`). */
  async clear(): Promise<void> {
    await clear(this.#use);
  }
}

/** Ten letters, as the stamps of entries have them. */
const isName = (value: unknown): value is string =>
  typeof value === 'string' && /^[\w-]{10}$/.test(value);

const isPacked = async (store: IDBObjectStore, practice: string): Promise<boolean> =>
  (await resultOf(store.getKey(key.packed(practice)))) !== undefined;

export type { Damaged };
