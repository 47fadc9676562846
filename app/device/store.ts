import { clear, get, type UseStore, update } from 'idb-keyval';
import type { AnyEntry } from '../../core/ledger/entry.ts';
import { foldErased, isErased } from '../../core/ledger/erased.ts';
import { isPractised } from '../../core/ledger/join.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { durableStore } from './durable-store.ts';
import {
  type Damaged,
  entriesOf,
  key,
  practiceAt,
  putRecord,
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
  /** Whether something lies here that was erased: the page was closed in between. */
  erased: boolean;
}

/** A portion of what the history holds. */
export interface Portion {
  summaries: Summary[];
  damaged: Damaged[];
}

/** What concerns the whole ledger may take a slow phone its time. */
const WHOLE_MS = 180_000;

/** What deals with packed practices comes once the screen stands: the court does without. */
const packing = () => import('./packs.ts');

/** The ledger's records on this phone. Every call rejects as durable-store.ts says. */
export class Store {
  readonly use: UseStore;
  /** For what concerns the whole ledger (see take.ts). */
  readonly useLong: UseStore;

  constructor(database: string) {
    this.use = durableStore(database);
    this.useLong = durableStore(database, WHOLE_MS);
  }

  /** What the app opens with: the standing entries and the practices that are not packed. */
  async open(practices: Iterable<string> = []): Promise<Opened> {
    return this.use('readonly', async (store) => {
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
      const gone = foldErased(opened.standing);
      for (const practice of gone.practices) {
        if (await isPacked(store, practice)) packed.add(practice);
      }
      const lies = [...opened.standing, ...opened.practised].some((each) => isErased(each, gone));
      const erased = lies || [...gone.practices].some((practice) => packed.has(practice));
      return { ...opened, damaged, packed, erased };
    });
  }

  /** The name of this phone: the one that is kept, or the one that was drawn where there is none. */
  async phone(drawn: string): Promise<string> {
    const known = await get<unknown>(key.phone, this.use);
    if (isName(known)) return known;
    let kept = drawn;
    await update<unknown>(
      key.phone,
      (there) => {
        kept = isName(there) ? there : drawn;
        return kept;
      },
      this.use,
    );
    return kept;
  }

  /** Saves entries; resolves once they are on the disk. The same entry twice is one record. */
  async save(entries: readonly AnyEntry[]): Promise<void> {
    await this.use('readwrite', (store) => {
      for (const entry of entries) putRecord(store, key.entry(entry), entry);
    });
  }

  /**
   * Packs a practice, or packs it anew with what came since: all or nothing. Undefined where none
   * of its entries opened it.
   */
  async pack(practice: string, now: number): Promise<Summary | undefined> {
    return (await packing()).pack(this, practice, now);
  }

  /** All entries of a practice, packed or not, as far as they can be read, sorted by id. */
  async practice(practice: string): Promise<AnyEntry[]> {
    return (await packing()).practiceIn(this, practice);
  }

  /** Summaries of the packed practices, in portions and in no order; damaged ones are made anew. */
  async *history(now: number): AsyncGenerator<Portion> {
    yield* (await packing()).history(this, now);
  }

  /** Holds summaries against their packs, a few at a time, given the summaries' keys. */
  async *look(
    practices: ReadonlyMap<string, readonly string[]>,
    now: number,
  ): AsyncGenerator<Portion> {
    yield* (await packing()).look(this, practices, now);
  }

  /** Puts a summary that says more in the place of one that still stands as it was read. */
  async keepSummary(before: Summary, after: Summary): Promise<void> {
    await (await packing()).keepSummary(this, before, after);
  }

  /** The keys of each practice's summaries, and the practices that are packed. */
  async index(): Promise<{ keys: Map<string, string[]>; packed: ReadonlySet<string> }> {
    const [summaries, packs] = await this.use('readonly', (store) =>
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
    yield* (await packing()).packs(this);
  }

  /** Removes everything, drafts of drills too (see `replace` in take.ts). */
  async clear(): Promise<void> {
    await clear(this.use);
  }
}

/** Ten letters, as the stamps of entries have them. */
const isName = (value: unknown): value is string =>
  typeof value === 'string' && /^[\w-]{10}$/.test(value);

const isPacked = async (store: IDBObjectStore, practice: string): Promise<boolean> =>
  (await resultOf(store.getKey(key.packed(practice)))) !== undefined;

export type { Damaged };
