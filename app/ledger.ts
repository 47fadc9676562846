import { batch, computed, effect, signal } from '@preact/signals';
import { nanoid } from 'nanoid';
import {
  type AnyEntry,
  type Entry,
  isKnown,
  makeEntry,
  readEntry,
  type Saying,
} from '../core/ledger/entry.ts';
import { byId, isPractised, isStanding, join } from '../core/ledger/join.ts';
import { foldLibrary } from '../core/ledger/library.ts';
import { foldPractice } from '../core/ledger/practice.ts';
import { foldSquad } from '../core/ledger/squad.ts';
import { foldSettings } from '../core/ledger/squad-settings.ts';
import { nextStamp } from '../core/ledger/stamp.ts';
import { saysAll } from '../core/ledger/stored-summary.ts';
import { type Summary, summarise } from '../core/ledger/summary.ts';
import { foldWishes } from '../core/ledger/wishes.ts';
import { hornAt, isOver } from '../core/round/clock.ts';
import { checkClock, dateOf, now, today } from './device/clock.ts';
import { key, practiceAt } from './device/records.ts';
import { type Damaged, Store } from './device/store.ts';
import { joinWindows, leads, tellWindows } from './device/windows.ts';

/**
 * The one writer: append, save, tell. A touch becomes an entry, the entry is shown at once and
 * saved behind it; everything a screen shows is folded from the same entries. Other windows of the
 * app hear of an entry once it is on the disk.
 */

/** Every window draws a name of its own, so that no two ever make the same stamp. */
const writer = nanoid(10);
let last = '';

let store: Store;

const standing = signal<readonly AnyEntry[]>([]);
const practised = signal<readonly AnyEntry[]>([]);

/** Whether what is on the disk is shown; until then a phone has not answered, or refuses. */
export const isRead = signal(false);

/** Ids of entries that are shown but not on the disk yet, in the order of their making. */
export const unsaved = signal<ReadonlySet<string>>(new Set());

/** Why the phone cannot save at present: it is full, it refuses, or it does not answer. */
export type Trouble = 'full' | 'refused' | 'slow';
export const trouble = signal<Trouble | undefined>(undefined);

const looseDamaged = signal<readonly Damaged[]>([]);
const packDamaged = signal<readonly Damaged[]>([]);
/** Stored records that cannot be read. */
export const damaged = computed(() => [...looseDamaged.value, ...packDamaged.value]);

/** Summaries of packed practices, oldest first; undefined until they were read. */
export const history = signal<readonly Summary[] | undefined>(undefined);

export const squad = computed(() => foldSquad(standing.value.filter(isKnown)));
export const library = computed(() => foldLibrary(standing.value.filter(isKnown)));
export const wishes = computed(() => foldWishes(standing.value.filter(isKnown)));
export const squadSettings = computed(() => foldSettings(standing.value.filter(isKnown)));

/** The entries of the practice that began last, of those that are not packed. */
const latest = computed(() => {
  const entries = practised.value.filter(isKnown).filter(isPractised);
  const opened = new Set(
    entries.filter(({ kind }) => kind === 'practice-opened').map(({ practice }) => practice),
  );
  const begun = [...new Set(entries.map(({ practice }) => practice))];
  const id = begun.findLast((each) => opened.has(each));
  return entries.filter((entry) => entry.practice === id);
});

/** The practice that is open today, or was opened last and is not packed. */
export const practice = computed(() => foldPractice(latest.value));

/** Milliseconds since 1970 of the last thing that was said in that practice. */
export const lastSaid = (): number | undefined => latest.value.at(-1)?.at;

/** So long after the last thing said, a practice of another date goes on: it is past midnight. */
const GOES_ON_MS = 4 * 3_600_000;

/** The practice of today that is under way. */
export const openPractice = computed(() => {
  const held = practice.value;
  if (!held || held.closed) return undefined;
  const goesOn = Math.abs(now() - (lastSaid() ?? 0)) < GOES_ON_MS;
  return held.date === today() || goesOn ? held : undefined;
});

/** How long the app waits for what is on the disk before it opens without. */
const PATIENCE_MS = 3_000;

/** Reads the ledger of a database; one that does not answer in time is joined in once it does. */
export async function openLedger(database: string): Promise<void> {
  store = new Store(database);
  joinWindows(database, hear);
  const inSight = () => {
    if (document.visibilityState === 'visible') readAgain();
  };
  document.addEventListener('visibilitychange', inSight);
  addEventListener('pageshow', (event) => event.persisted && inSight());
  await Promise.race([save(), new Promise((resolve) => setTimeout(resolve, PATIENCE_MS))]);
  if (!isRead.value) trouble.value ??= 'slow';
}

/**
 * Appends what a person did to the ledger, shows it, and saves it. The screen must not wait: read
 * `unsaved` and `trouble` for what became of it.
 */
export function append(...sayings: Saying[]): Entry[] {
  checkClock();
  const at = now();
  const entries = sayings.map((saying) => {
    last = nextStamp(last, at, writer);
    return makeEntry(saying, last, at);
  });
  batch(() => {
    show(entries);
    keep(entries);
  });
  return entries;
}

/** Takes entries into what is shown. */
function show(entries: readonly AnyEntry[]): void {
  for (const { id } of entries) if (id > last) last = id;
  batch(() => {
    const more = entries.filter(isPractised);
    if (more.length > 0) practised.value = inOrder(practised.value, more);
    const standers = entries.filter(isStanding);
    if (standers.length > 0) standing.value = inOrder(standing.value, standers);
  });
}

/** New entries nearly always come last, where no sorting is needed. */
function inOrder(before: readonly AnyEntry[], more: readonly AnyEntry[]): readonly AnyEntry[] {
  const end = before.at(-1);
  const first = more[0];
  return !end || (first && byId(end, first) < 0) ? [...before, ...more] : join(before, more);
}

/** Entries to be written, in the order of their making. */
const queue: AnyEntry[] = [];
let wantsReading = true;
let saving: Promise<void> | undefined;
let retry: ReturnType<typeof setTimeout> | undefined;

/** Puts entries into the queue of those to be saved. */
function keep(entries: readonly AnyEntry[]): void {
  unsaved.value = new Set([...unsaved.value, ...entries.map(({ id }) => id)]);
  queue.push(...entries);
  void save();
}

/** Reads the disk again: a window that was out of sight may have missed what others wrote. */
function readAgain(): void {
  wantsReading = true;
  void save();
}

/** While the phone refuses to save, it is asked again so often. */
const RETRY_MS = 3_000;

/** Reads what is to be read and writes what waits, in order, one after the other. */
function save(): Promise<void> {
  clearTimeout(retry);
  if (!saving && (wantsReading || queue.length > 0)) saving = work();
  return saving ?? Promise.resolve();
}

async function work(): Promise<void> {
  try {
    while (wantsReading || queue.length > 0) {
      if (wantsReading) await read();
      else await writeQueue();
    }
    trouble.value = undefined;
  } catch (error) {
    trouble.value = troubleOf(error);
    retry = setTimeout(() => void save(), RETRY_MS);
  }
  // At once after the last look at the queue, so that nothing can slip in unseen.
  saving = undefined;
}

async function writeQueue(): Promise<void> {
  const entries = [...queue];
  await store.save(entries);
  queue.splice(0, entries.length);
  batch(() => {
    const left = new Set(unsaved.value);
    for (const { id } of entries) left.delete(id);
    unsaved.value = left;
    trouble.value = undefined;
  });
  tellWindows({ entries });
}

/**
 * Joins what is on the disk with what is shown. Entries that were saved and lie there no more were
 * packed by another window, or lost: those are written again.
 */
async function read(): Promise<void> {
  const saved = [...standing.value, ...practised.value].filter(({ id }) => !unsaved.value.has(id));
  const opened = await store.open(practicesOf(saved));
  wantsReading = false;
  const there = new Set([...opened.standing, ...opened.practised].map(({ id }) => id));
  const gone = saved.filter(({ id }) => !there.has(id));
  const isPacked = (entry: AnyEntry) => isPractised(entry) && opened.packed.has(entry.practice);
  const away = new Set(gone.filter(isPacked).map(({ id }) => id));
  const lost = gone.filter((entry) => !isPacked(entry));
  const mended = new Set(lost.map(key.entry));
  batch(() => {
    standing.value = join(opened.standing, standing.value);
    practised.value = join(
      opened.practised,
      practised.value.filter(({ id }) => !away.has(id)),
    );
    looseDamaged.value = opened.damaged.filter((each) => !mended.has(each.key));
    for (const id of there) if (id > last) last = id;
    isRead.value = true;
    if (lost.length > 0) keep(lost);
    openAnew(opened.packed);
  });
}

const practicesOf = (entries: readonly AnyEntry[]): Set<string> =>
  new Set(entries.filter(isPractised).map((entry) => entry.practice));

/** A practice whose opening was damaged or lost is opened again, or nothing of it could be shown. */
function openAnew(packed: ReadonlySet<string>): void {
  for (const id of practicesOf(practised.value)) {
    const own = practised.value.filter((entry) => entry.practice === id);
    if (packed.has(id) || own.some(({ kind }) => kind === 'practice-opened')) continue;
    append({ kind: 'practice-opened', practice: id, date: dateOf(own[0]?.at ?? now()) });
  }
}

const troubleOf = (error: unknown): Trouble => {
  const name = error instanceof DOMException ? error.name : '';
  return name === 'QuotaExceededError' ? 'full' : name === 'TimeoutError' ? 'slow' : 'refused';
};

/** Takes in what another window tells; it is checked like anything from outside. */
function hear(told: unknown): void {
  const { entries, again } = (told ?? {}) as { entries?: unknown; again?: unknown };
  if (again) {
    readAgain();
    if (history.value) {
      history.value = undefined;
      void readHistory();
    }
  }
  if (!Array.isArray(entries)) return;
  const shown = new Set([...standing.value, ...practised.value].map(({ id }) => id));
  const fresh = entries.flatMap((entry) => {
    const reading = readEntry(entry);
    return reading.as !== 'damaged' && !shown.has(reading.entry.id) ? [reading.entry] : [];
  });
  // Whoever found that the phone's clock was set counts by the new one from here on.
  if (fresh.some(({ kind }) => kind === 'clock-doubted')) checkClock();
  show(fresh);
  if (fresh.some((entry) => isPractised(entry) && entry.practice !== practice.value?.id)) {
    void packClosed();
  }
}

let packing: Promise<void> | undefined;
let readingHistory: Promise<void> | undefined;

/** Between two portions of a long work the phone serves whoever touches it. */
const breathe = () => new Promise((resolve) => setTimeout(resolve));

/**
 * Packs every practice that is closed or of an earlier day, so that opening stays quick. Only the
 * window that leads does so. A phone that cannot write now leaves it for another time.
 */
export async function packClosed(): Promise<void> {
  await readingHistory;
  packing ??= packPast()
    .catch(() => {})
    .finally(() => {
      packing = undefined;
    });
  await packing;
}

async function packPast(): Promise<void> {
  if (!leads.value || !isRead.value) return;
  let packed = false;
  for (const id of practicesOf(practised.value)) {
    const own = practised.value.filter((entry) => entry.practice === id);
    const folded = foldPractice(own.filter(isKnown).filter(isPractised));
    const isPast = !folded || folded.date < today() || (folded.closed && id !== practice.value?.id);
    const waits = own.some((entry) => unsaved.value.has(entry.id));
    if (!isPast || waits || id === openPractice.value?.id) continue;
    const summary = await store.pack(id, now());
    if (!summary) continue;
    packed = true;
    batch(() => {
      practised.value = practised.value.filter((entry) => entry.practice !== id);
      if (history.value) history.value = withSummary(history.value, summary);
    });
  }
  if (packed) tellWindows({ again: true });
}

const withSummary = (all: readonly Summary[], summary: Summary): Summary[] =>
  inDateOrder([...all.filter(({ practice }) => practice !== summary.practice), summary]);

const inDateOrder = (summaries: Summary[]): Summary[] =>
  summaries.sort((a, b) =>
    key.summary(a.date, a.practice) < key.summary(b.date, b.practice) ? -1 : 1,
  );

/** Reads the summaries of all packed practices, once; figures need them, counting does not. */
export async function readHistory(): Promise<void> {
  await packing;
  if (history.value) return;
  readingHistory ??= readSummaries().finally(() => {
    readingHistory = undefined;
  });
  await readingHistory;
}

async function readSummaries(): Promise<void> {
  const summaries: Summary[] = [];
  const found: Damaged[] = [];
  for await (const portion of store.history(now())) {
    summaries.push(...portion.summaries);
    found.push(...portion.damaged);
    await breathe();
  }
  batch(() => {
    history.value = inDateOrder(summaries);
    packDamaged.value = found;
  });
}

/** So many packs are looked at each time the app is opened: nearly all of a season. */
const LOOKS = 30;

/**
 * Looks at some of the packs, wherever the chance falls, so that damage is found while a backup may
 * still be at hand. Summaries that say less than their packs are made anew.
 */
export async function lookOver(): Promise<void> {
  if (!leads.value) return;
  const { keys, packed } = await store.index();
  const all = [...packed];
  const from = Math.floor(Math.random() * all.length);
  const some = [...all.slice(from), ...all.slice(0, from)].slice(0, LOOKS);
  const looked = new Map(some.map((practice) => [practice, keys.get(practice) ?? []]));
  for await (const portion of store.look(looked, now())) {
    batch(() => {
      const known = new Set(packDamaged.value.map((each) => each.key));
      const more = portion.damaged.filter((each) => !known.has(each.key));
      if (more.length > 0) packDamaged.value = [...packDamaged.value, ...more];
      for (const summary of portion.summaries) {
        const shown = history.value?.find(({ practice }) => practice === summary.practice);
        if (history.value && !saysAll(shown, summary)) {
          history.value = withSummary(history.value, summary);
        }
      }
    });
    await breathe();
  }
}

/**
 * Keeps what was worked out of a packed practice with its summary. Where the phone does not save it
 * now, or the practice was packed anew, it is worked out again another time.
 *
 * @param summary as `history` has it
 * @param whole the same with what was worked out
 */
export async function keepEstimates(summary: Summary, whole: Summary): Promise<void> {
  if (!history.value?.includes(summary)) return;
  history.value = history.value.map((each) => (each === summary ? whole : each));
  await store.keepSummary(summary, whole).catch(() => {});
}

/** Goes up with every horn: nobody says that a clock has run out, and its round is longer by then. */
const horns = signal(0);
effect(() => {
  void horns.value;
  const clock = practice.value?.rounds.at(-1)?.clock;
  const at = clock && !isOver(clock, now()) ? hornAt(clock, now()) : undefined;
  if (at === undefined) return;
  const timer = setTimeout(() => {
    horns.value += 1;
  }, at - now());
  return () => clearTimeout(timer);
});

/** Packed practices and those of today, as figures read them, oldest first. */
export const summaries = computed<readonly Summary[]>(() => {
  void horns.value;
  const current = practice.value;
  const past = (history.value ?? []).filter((summary) => summary.practice !== current?.id);
  return current ? [...past, summarise(current, now())] : past;
});

/** What the damaged records belong to: a practice with its date where that is known, or the squad. */
export interface DamagedPlace {
  practice?: string;
  date?: string;
  records: number;
}

export const damagedPlaces = computed<DamagedPlace[]>(() => {
  const places = new Map<string | undefined, DamagedPlace>();
  for (const each of damaged.value) {
    const practice = practiceAt(each.key);
    const place = places.get(practice) ?? { records: 0 };
    const date = place.date ?? (practice && dateOfPractice(practice));
    places.set(practice, {
      records: place.records + 1,
      ...(practice !== undefined && { practice }),
      ...(date !== undefined && { date }),
    });
  }
  return [...places.values()];
});

function dateOfPractice(id: string): string | undefined {
  for (const entry of practised.value.filter(isKnown)) {
    if (entry.kind === 'practice-opened' && entry.practice === id) return entry.date;
  }
  return history.value?.find(({ practice }) => practice === id)?.date;
}

/** Removes damaged records from this phone, once they were handed over or are not missed. */
export async function removeDamaged(): Promise<void> {
  await store.forget(damaged.value);
  packDamaged.value = [];
  readAgain();
  await saving;
}

/** The practice of now with all that its names and drills need, as far as it is shown. */
export const practiceEntries = (): readonly AnyEntry[] => [
  ...standing.value,
  ...practised.value.filter((entry) => entry.practice === practice.value?.id),
];

/** Every entry there is, in portions, those that are not saved yet too. */
export async function* allEntries(): AsyncGenerator<readonly AnyEntry[]> {
  yield [...standing.value, ...practised.value];
  for await (const packs of store.packs()) {
    for (const { entries } of packs) yield entries;
    await breathe();
  }
}

/**
 * Joins entries from a file with the ledger: all of them or none. A practice of today that is not
 * closed is one to go on with, where this phone has none of its own.
 *
 * @param practices the entries of each practice, sorted by id
 * @returns how many entries were new here
 */
export async function takeIn(
  standers: readonly AnyEntry[],
  practices: ReadonlyMap<string, readonly AnyEntry[]>,
): Promise<number> {
  await save();
  const goesOn = (entries: readonly AnyEntry[]) => {
    const folded = foldPractice(entries.filter(isKnown).filter(isPractised));
    return !openPractice.value && folded?.date === today() && !folded.closed;
  };
  const taken = await store.take(standers, practices, goesOn, now());
  if (taken > 0) {
    readAgain();
    tellWindows({ again: true });
    await saving;
    history.value = undefined;
    await readHistory();
  }
  return taken;
}
