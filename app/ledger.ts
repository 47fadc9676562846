import { batch, computed, signal } from '@preact/signals';
import { nanoid } from 'nanoid';
import { type Entry, isKnown, makeEntry, type Saying, type Unknown } from '../core/entry.ts';
import { byId, isPractised, isStanding, join } from '../core/ledger.ts';
import { foldLibrary } from '../core/library.ts';
import { foldPractice } from '../core/practice.ts';
import { foldSquad } from '../core/squad.ts';
import { nextStamp } from '../core/stamp.ts';
import { type Summary, summarise } from '../core/summary.ts';
import { now, today } from './device/clock.ts';
import { type Hurt, Store } from './device/store.ts';

/**
 * The one writer: append, save, tell. A touch becomes an entry, the entry is shown at once and
 * saved behind it; everything a screen shows is folded from the same entries.
 */

type Kept = Entry | Unknown;

/** Every window draws a name of its own, so that no two ever make the same stamp. */
const writer = nanoid(10);
let last = '';

let store: Store;

const standing = signal<readonly Kept[]>([]);
const practised = signal<readonly Kept[]>([]);

/** Ids of entries that are shown but not on the disk yet, in the order of their making. */
export const unsaved = signal<ReadonlySet<string>>(new Set());

/** Why the phone cannot save at present. */
export type Trouble = 'full' | 'refused';
export const trouble = signal<Trouble | undefined>(undefined);

/** Stored records that do not parse. */
export const hurt = signal<readonly Hurt[]>([]);

/** Summaries of packed practices, oldest first; undefined until they were read. */
export const history = signal<readonly Summary[] | undefined>(undefined);

export const squad = computed(() => foldSquad(standing.value.filter(isKnown)));
export const library = computed(() => foldLibrary(standing.value.filter(isKnown)));

/** The practice that is open today, or was opened last and is not packed. */
export const practice = computed(() => {
  const entries = practised.value.filter(isKnown).filter(isPractised);
  const id = entries.findLast((entry) => entry.kind === 'practice-opened')?.practice;
  return foldPractice(entries.filter((entry) => entry.practice === id));
});

/** The practice of today that is under way. */
export const openPractice = computed(() => {
  const latest = practice.value;
  return latest && !latest.closed && latest.date === today() ? latest : undefined;
});

/** Reads the ledger of a database; what an earlier day left open is packed afterwards. */
export async function openLedger(database: string): Promise<void> {
  store = new Store(database);
  try {
    const opened = await store.open();
    batch(() => {
      standing.value = opened.standing;
      practised.value = opened.practised;
      hurt.value = opened.hurt;
      for (const entry of [...opened.standing, ...opened.practised]) seen(entry.id);
    });
  } catch (error) {
    trouble.value = troubleOf(error);
  }
}

const seen = (id: string) => {
  if (id > last) last = id;
};

/**
 * Appends what a person did to the ledger, shows it, and saves it. The screen must not wait: read
 * `unsaved` and `trouble` for what became of it.
 */
export function append(...sayings: Saying[]): Entry[] {
  const at = now();
  const entries = sayings.map((saying) => {
    last = nextStamp(last, at, writer);
    return makeEntry(saying, last, at);
  });
  take(entries);
  void save();
  return entries;
}

/** Takes entries into what is shown, and into the queue of those to be saved. */
function take(entries: readonly Kept[]): void {
  batch(() => {
    const more = entries.filter(isPractised);
    if (more.length > 0) practised.value = inOrder(practised.value, more);
    const standers = entries.filter(isStanding);
    if (standers.length > 0) standing.value = inOrder(standing.value, standers);
    unsaved.value = new Set([...unsaved.value, ...entries.map((entry) => entry.id)]);
    queue.push(...entries);
  });
}

/** New entries nearly always come last, where no sorting is needed. */
function inOrder(before: readonly Kept[], more: readonly Kept[]): readonly Kept[] {
  const end = before.at(-1);
  const first = more[0];
  return !end || (first && byId(end, first) < 0) ? [...before, ...more] : join(before, more);
}

const queue: Kept[] = [];
let saving: Promise<void> | undefined;

/** Writes what waits, in order; one write at a time, and everything that came meanwhile next. */
function save(): Promise<void> {
  saving ??= (async () => {
    while (queue.length > 0) {
      const entries = [...queue];
      try {
        await store.save(entries);
      } catch (error) {
        trouble.value = troubleOf(error);
        setTimeout(() => void save(), RETRY_MS);
        return;
      }
      queue.splice(0, entries.length);
      batch(() => {
        const left = new Set(unsaved.value);
        for (const entry of entries) left.delete(entry.id);
        unsaved.value = left;
        trouble.value = undefined;
      });
    }
  })().finally(() => {
    saving = undefined;
  });
  return saving;
}

/** While the phone refuses to save, it is asked again so often. */
const RETRY_MS = 3_000;

const troubleOf = (error: unknown): Trouble =>
  error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'refused';

/** Packs every practice that is closed or of an earlier day, so that opening stays quick. */
export async function packClosed(): Promise<void> {
  const entries = practised.value.filter(isPractised);
  const open = practice.value;
  for (const id of new Set(entries.map((entry) => entry.practice))) {
    const own = entries.filter((entry) => entry.practice === id);
    const folded = foldPractice(own.filter(isKnown));
    const isOld = folded && (folded.date < today() || (folded.closed && id !== open?.id));
    if (!folded || !isOld || own.some((entry) => unsaved.value.has(entry.id))) continue;
    await store.pack(summarise(folded, now()), own);
    practised.value = practised.value.filter((entry) => entry.practice !== id);
    history.value = undefined;
  }
}

/** Reads the summaries of all packed practices, once; figures need them, counting does not. */
export async function readHistory(): Promise<void> {
  history.value ??= await store.summaries('0000', '9999');
}

/** Packed practices and those of today, as figures read them, oldest first. */
export const summaries = computed<readonly Summary[]>(() => {
  const current = practice.value;
  const past = history.value ?? [];
  return current ? [...past, summarise(current, now())] : past;
});
