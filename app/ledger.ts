import { batch, computed, signal } from '@preact/signals';
import { nanoid } from 'nanoid';
import {
  type AnyEntry,
  type Entry,
  isKnown,
  makeEntry,
  readEntry,
  type Saying,
} from '../core/ledger/entry.ts';
import { foldErased, isErased } from '../core/ledger/erased.ts';
import { byId, isPractised, isStanding, join } from '../core/ledger/join.ts';
import { joinLedgers } from '../core/ledger/join-ledgers.ts';
import { foldLibrary } from '../core/ledger/library.ts';
import { foldMerges, type Merges } from '../core/ledger/merges.ts';
import { foldSquad } from '../core/ledger/squad.ts';
import { foldSettings } from '../core/ledger/squad-settings.ts';
import { nextStamp, writerOf } from '../core/ledger/stamp.ts';
import { foldWishes } from '../core/ledger/wishes.ts';
import { checkClock, dateOf, now } from './device/clock.ts';
import { key } from './device/records.ts';
import { type Damaged, Store } from './device/store.ts';
import { joinWindows, tellWindows } from './device/windows.ts';

/**
 * The one writer: append, save, tell. A touch becomes an entry, the entry is shown at once and
 * saved behind it; everything a screen shows is folded from the same entries. Other windows of the
 * app hear of an entry once it is on the disk.
 */

/** Every page draws a name of its own, so that no two ever make the same stamp. */
const page = nanoid(6);
/**
 * What this phone calls itself in what it writes: it tells which of two phones counted, and nothing
 * of whose it is. Drawn once and kept beside the ledger; a page that wrote before it could read the
 * name that is kept goes on by the one it drew.
 */
let phone = nanoid(10);
export const thisPhone = (): string => phone;
let hasWritten = false;
let last = '';

/** The records of the ledger on this phone, once it was opened. */
export let store: Store;

/** The entries that stand beyond one practice. */
export const standing = signal<readonly AnyEntry[]>([]);
/** The entries of all practices that are not packed, and of those that were opened again. */
export const practised = signal<readonly AnyEntry[]>([]);

/** Goes up whenever another window, or a file, changed what is packed. */
export const packsChanged = signal(0);
/** Ids of entries that lie in a pack by now: they stay in sight until the history was read with it. */
export const packedElsewhere = signal<ReadonlySet<string>>(new Set());

/** Whether what is on the disk is shown; until then a phone has not answered, or refuses. */
export const isRead = signal(false);

/** Ids of entries that are shown but not on the disk yet, in the order of their making. */
export const unsaved = signal<ReadonlySet<string>>(new Set());

/** Why the phone cannot save at present: it is full, it refuses, or it does not answer. */
export type Trouble = 'full' | 'refused' | 'slow';
export const trouble = signal<Trouble | undefined>(undefined);

const looseDamaged = signal<readonly Damaged[]>([]);
/** Damaged records of packed practices, as far as they were looked at. */
export const packDamaged = signal<readonly Damaged[]>([]);
/** Stored records that cannot be read. */
export const damaged = computed(() => [...looseDamaged.value, ...packDamaged.value]);

export const squad = computed(() => foldSquad(standing.value.filter(isKnown)));
/** Players who are one child with another; no other practice is folded anew than where that changes. */
const mergesSaid = computed(() => JSON.stringify([...foldMerges(standing.value.filter(isKnown))]));
export const merges = computed<Merges>(() => new Map(JSON.parse(mergesSaid.value)));
export const library = computed(() => foldLibrary(standing.value.filter(isKnown)));
export const wishes = computed(() => foldWishes(standing.value.filter(isKnown)));
export const squadSettings = computed(() => foldSettings(standing.value.filter(isKnown)));

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
  const entries = make(sayings);
  send(entries);
  showSent(entries);
  return entries;
}

/**
 * Appends as `append` does, but what shows it is given back, to be called soon: so a touch is on its
 * way to the disk before its own frame, and what the screens draw of it comes behind that.
 */
export function appendUnseen(...sayings: Saying[]): () => void {
  const entries = make(sayings);
  send(entries);
  return () => showSent(entries);
}

function make(sayings: readonly Saying[]): Entry[] {
  checkClock();
  const at = now();
  hasWritten = true;
  return sayings.map((saying) => {
    last = nextStamp(last, at, writerOf(phone, page));
    return makeEntry(saying, last, at);
  });
}

const showSent = (entries: readonly Entry[]): void =>
  batch(() => {
    show(entries);
    noteUnsaved();
  });

/** Takes entries into what is shown. */
export function show(entries: readonly AnyEntry[]): void {
  for (const { id } of entries) if (id > last) last = id;
  batch(() => {
    const more = entries.filter(isPractised);
    if (more.length > 0) practised.value = inOrder(practised.value, more);
    const standers = entries.filter(isStanding);
    if (standers.length > 0) standing.value = inOrder(standing.value, standers);
    if (standers.some(({ kind }) => kind.endsWith('-erased'))) {
      putAll(joinLedgers(standing.value, practised.value));
    }
  });
}

/** Shows these entries, and no others. */
function putAll(entries: readonly AnyEntry[]): void {
  standing.value = entries.filter(isStanding);
  practised.value = entries.filter(isPractised);
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

/** Puts entries into the queue of those to be saved, and says so. */
function keep(entries: readonly AnyEntry[]): void {
  send(entries);
  noteUnsaved();
}

function send(entries: readonly AnyEntry[]): void {
  queue.push(...entries);
  void save();
}

function noteUnsaved(): void {
  unsaved.value = new Set(queue.map(({ id }) => id));
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
    noteUnsaved();
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
  const named = await store.phone(phone).catch(() => phone);
  if (!hasWritten) phone = named;
  wantsReading = false;
  // Where it cannot be had now, what was erased stays out of sight, and goes another time.
  if (opened.erased)
    void import('./device/take.ts').then(({ forget }) => forget(store)).catch(() => {});
  const there = new Set([...opened.standing, ...opened.practised].map(({ id }) => id));
  const gone = saved.filter(({ id }) => !there.has(id));
  const isPacked = (entry: AnyEntry) => isPractised(entry) && opened.packed.has(entry.practice);
  // Those that were opened again lie in their pack and stay in sight.
  const isAway = (entry: AnyEntry) => isPacked(entry) && !openedAgain.has(String(entry.practice));
  const erased = foldErased([...opened.standing, ...standing.value]);
  const lost = gone.filter((entry) => !isPacked(entry) && !isErased(entry, erased));
  const mended = new Set(lost.map(key.entry));
  batch(() => {
    putAll(
      joinLedgers(
        [...opened.standing, ...opened.practised],
        [...standing.value, ...practised.value],
      ),
    );
    packedElsewhere.value = new Set(gone.filter(isAway).map(({ id }) => id));
    looseDamaged.value = opened.damaged.filter((each) => !mended.has(each.key));
    for (const id of there) if (id > last) last = id;
    isRead.value = true;
    if (lost.length > 0) keep(lost);
    openAnew(opened.packed);
  });
}

/** Packed practices that a screen shows entry by entry. */
export const openedAgain = new Set<string>();

export const practicesOf = (entries: readonly AnyEntry[]): Set<string> =>
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
    packsChanged.value += 1;
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
}

/** Takes practices out of sight that are packed: their summaries say what figures read of them. */
export function dropPractices(practices: ReadonlySet<string>): void {
  practised.value = practised.value.filter((entry) => !practices.has(String(entry.practice)));
}

/** The same for entries that another window packed, but for those that were opened again since. */
export function dropPacked(ids: ReadonlySet<string>): void {
  practised.value = practised.value.filter(
    ({ id, practice }) => !ids.has(id) || openedAgain.has(String(practice)),
  );
}

/**
 * Removes damaged records from this phone, once they were handed over or are not missed: these and
 * no others, and only as far as they still lie as they are given.
 *
 * @returns how many lie otherwise by now, and stay
 */
export async function removeDamaged(given: readonly Damaged[]): Promise<number> {
  const [records, { isStillDamaged }] = await Promise.all([
    import('./device/take.ts'),
    import('./device/packs.ts'),
  ]);
  const others = await records.removeDamaged(store, given);
  const keys = new Set(given.map(({ key }) => key));
  const changed = new Map(others.map((each) => [each.key, each]));
  packDamaged.value = packDamaged.value.flatMap((each) => {
    if (!keys.has(each.key)) return [each];
    const now = changed.get(each.key);
    return now && isStillDamaged(now) ? [now] : [];
  });
  readAgain();
  tellWindows({ again: true });
  await saving;
  return others.length;
}

/** Erases from this phone's records what the ledger says is to be; resolves once it is gone. */
export async function forgetErased(): Promise<void> {
  await save();
  const { forget } = await import('./device/take.ts');
  await forget(store);
  tellWindows({ again: true });
  packsChanged.value += 1;
}

/** Gives this phone a new name, where another device goes by the same one. */
export async function renamePhone(): Promise<void> {
  const name = nanoid(10);
  const { rename } = await import('./device/take.ts');
  await rename(store, name);
  phone = name;
}

/** Between two portions of a long work the phone serves whoever touches it. */
export const breathe = () => new Promise((resolve) => setTimeout(resolve));

/** Every entry there is, in portions, those that are not saved yet too. */
export async function* allEntries(): AsyncGenerator<readonly AnyEntry[]> {
  yield [...standing.value, ...practised.value];
  for await (const packs of store.packs()) {
    for (const { entries } of packs) yield entries;
    await breathe();
  }
}

/**
 * Joins entries from a file with the ledger: all of them or none.
 *
 * @param practices the entries of each practice, sorted by id
 * @param staysOpen whether a practice that is new here is one to go on with
 * @returns how many entries were new here
 */
export async function takeIn(
  standers: readonly AnyEntry[],
  practices: ReadonlyMap<string, readonly AnyEntry[]>,
  staysOpen: (entries: readonly AnyEntry[]) => boolean,
): Promise<number> {
  await save();
  const { take } = await import('./device/take.ts');
  const taken = await take(store, standers, practices, staysOpen, now());
  if (taken > 0) {
    readAgain();
    tellWindows({ again: true });
    await saving;
    packsChanged.value += 1;
  }
  return taken;
}
