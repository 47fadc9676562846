import { batch, computed, effect, signal, untracked } from '@preact/signals';
import { entryAsMerged, summaryAsMerged } from '../core/ledger/as-merged.ts';
import { type Held, isPast, lastOnCourt, openedLast, underWay } from '../core/ledger/day.ts';
import { type AnyEntry, isKnown, type PracticeEntry } from '../core/ledger/entry.ts';
import { isPractised } from '../core/ledger/join.ts';
import { foldPractice, type OpenRound, type Practice } from '../core/ledger/practice.ts';
import { inOrderHeld, type Summary, summarise, withEstimatesOf } from '../core/ledger/summary.ts';
import { hornAt, isOver } from '../core/round/clock.ts';
import { dateOf, now, today } from './device/clock.ts';
import type { Damaged } from './device/records.ts';
import { leads, tellWindows } from './device/windows.ts';
import {
  breathe,
  dropPacked,
  dropPractices,
  isRead,
  merges,
  openedAgain,
  packDamaged,
  packedElsewhere,
  packsChanged,
  practicesOf,
  practised,
  show,
  store,
  takeIn,
  unsaved,
} from './ledger.ts';

/*
 * The practices of the ledger: the one that is under way, those that are over but not packed yet,
 * and the history of packed ones. Every figure reads `summaries`, which holds all of them at every
 * moment, packed or not.
 */

/** The practices whose entries are at hand, each folded once for what was said of it. */
const held = computed<readonly Held[]>(() => {
  const entries = new Map<string, PracticeEntry[]>();
  for (const entry of practised.value) {
    if (!isKnown(entry) || !isPractised(entry)) continue;
    const own = entries.get(entry.practice);
    if (own) own.push(entry);
    else entries.set(entry.practice, [entry]);
  }
  const merged = merges.value;
  for (const id of folds.keys()) {
    if (!entries.has(id) || merged !== foldedWith) folds.delete(id);
  }
  foldedWith = merged;
  return [...entries].flatMap(([id, own]) => heldOf(id, own) ?? []);
});

let foldedWith = merges.peek();
const folds = new Map<string, { count: number; last: string; held: Held | undefined }>();

/** A practice's entries only ever become more: as many of them are the same ones. */
function heldOf(id: string, own: readonly PracticeEntry[]): Held | undefined {
  const last = own.at(-1)?.id ?? '';
  const before = folds.get(id);
  if (before?.count === own.length && before.last === last) return before.held;
  const practice = foldPractice(own.map((entry) => entryAsMerged(entry, merges.value)));
  const held = practice && { practice, last: lastOnCourt(own, practice.date, dateOf) };
  folds.set(id, { count: own.length, last, held });
  return held;
}

/** The practice that was opened last, of those that are not packed. */
const latest = computed(() => openedLast(held.value));
export const practice = computed<Practice | undefined>(() => latest.value?.practice);

/** Milliseconds since 1970 of the last thing that was done in that practice. */
export const lastSaid = (): number | undefined => latest.value?.last;

/** The practice that is under way. */
export const openPractice = computed<Practice | undefined>(
  () => underWay(held.value, today(), now())?.practice,
);

/** A practice whose entries are at hand. */
export const practiceAt = (id: string): Practice | undefined =>
  held.value.find(({ practice }) => practice.id === id)?.practice;

/** A round of a practice whose entries are at hand, with that practice. */
export function roundAt(
  id: string | undefined,
): { practice: Practice; round: OpenRound } | undefined {
  for (const { practice } of held.value) {
    const round = practice.rounds.find((each) => each.id === id);
    if (round) return { practice, round };
  }
  return undefined;
}

/** Summaries of packed practices, oldest first; undefined until they were read. */
export const history = signal<readonly Summary[] | undefined>(undefined);

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

/** All practices as figures read them, packed or not, in the order in which they were held. */
export const summaries = computed<readonly Summary[]>(() => {
  void horns.value;
  const packed = new Map(
    (history.value ?? []).map((summary) => [
      summary.practice,
      summaryAsMerged(summary, merges.value),
    ]),
  );
  const own = held.value.map(({ practice }) =>
    withEstimatesOf(summaryOf(practice), packed.get(practice.id)),
  );
  const ids = new Set(own.map((summary) => summary.practice));
  const past = [...packed.values()].filter((summary) => !ids.has(summary.practice));
  return [...past, ...own].sort(inOrderHeld);
});

const finished = new WeakMap<Practice, Summary>();

/** What stands for good is summarised once. */
function summaryOf(practice: Practice): Summary {
  const known = finished.get(practice);
  if (known) return known;
  const summary = summarise(practice, now());
  const runs = practice.rounds.some(({ clock, left }) => clock && !left && !isOver(clock, now()));
  if (!runs) finished.set(practice, summary);
  return summary;
}

/** Practices that are to be packed: over, or more was said of one that is packed already. */
const past = computed<readonly string[]>(() => {
  const folded = new Map(held.value.map((each) => [each.practice.id, each]));
  return [...practicesOf(practised.value)].filter((id) => {
    const each = folded.get(id);
    return !openedAgain.has(id) && (!each || isPast(each, held.value, today(), now()));
  });
});

/** Packed practices of which only what another window has just said is at hand. */
const partly = computed(() => {
  const whole = new Set(held.value.map(({ practice }) => practice.id));
  return [...practicesOf(practised.value)].filter((id) => !whole.has(id));
});

/** Shows a practice as another window puts it right, until the one that leads has packed it again. */
async function showWhole(id: string): Promise<void> {
  const entries = await store.practice(id).catch(() => []);
  // Where nothing opened it nothing can be shown of it, and what lies there is damaged.
  if (entries.some(({ kind }) => kind === 'practice-opened')) show(entries);
}

/** Packs from now on whatever is over, as soon as it is; only the window that leads does so. */
export function startPacking(): void {
  effect(() => {
    if (leads.value && isRead.value && past.value.length > 0 && unsaved.value.size === 0) {
      untracked(() => void packPast());
    }
  });
  effect(() => {
    if (packsChanged.value > 0) untracked(readAnew);
  });
  effect(() => {
    if (packedElsewhere.value.size > 0) untracked(() => void inTurn(readSummaries).catch(() => {}));
  });
  effect(() => {
    if (!leads.value && isRead.value) for (const id of partly.value) void showWhole(id);
  });
}

let packing: Promise<void> | undefined;
let reading: Promise<void> | undefined;
let turn: Promise<void> = Promise.resolve();

/** Packing and reading take turns: side by side, what is packed after it was looked for is in neither. */
function inTurn(work: () => Promise<void>): Promise<void> {
  const mine = turn.then(work);
  turn = mine.catch(() => {});
  return mine;
}

/**
 * Packs every practice that is over, so that opening stays quick: into the history, which is there
 * before. A phone that cannot write now, or read, leaves it for another time.
 */
export async function packPast(): Promise<void> {
  packing ??= readHistory()
    .then(() => inTurn(pack))
    .catch(() => {})
    .finally(() => {
      packing = undefined;
    });
  await packing;
}

async function pack(): Promise<void> {
  if (!leads.value || !isRead.value) return;
  let packed = false;
  for (const id of past.value) {
    if (practised.value.some((entry) => entry.practice === id && unsaved.value.has(entry.id))) {
      continue;
    }
    const summary = await store.pack(id, now());
    if (!summary) continue;
    packed = true;
    batch(() => {
      dropPractices(new Set([id]));
      history.value = withSummary(history.value ?? [], summary);
    });
  }
  if (packed) tellWindows({ again: true });
}

const withSummary = (all: readonly Summary[], summary: Summary): Summary[] =>
  [...all.filter(({ practice }) => practice !== summary.practice), summary].sort(inOrderHeld);

/** Reads the summaries of all packed practices, once; figures need them, counting does not. */
export async function readHistory(): Promise<void> {
  if (history.value) return;
  reading ??= inTurn(readSummaries).finally(() => {
    reading = undefined;
  });
  await reading;
}

/** What is packed has changed: what is shown stays until all of it was read. */
async function readAnew(): Promise<void> {
  if (history.value || reading) await inTurn(readSummaries).catch(() => {});
}

async function readSummaries(): Promise<void> {
  const packed = packedElsewhere.value;
  const found = new Map<string, Summary>();
  const damaged: Damaged[] = [];
  for await (const portion of store.history(now())) {
    for (const summary of portion.summaries) found.set(summary.practice, summary);
    damaged.push(...portion.damaged);
    await breathe();
  }
  batch(() => {
    history.value = [...found.values()].sort(inOrderHeld);
    packDamaged.value = damaged;
    dropPacked(packed);
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
  const { saysAll } = await import('../core/ledger/stored-summary.ts');
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

/** The date of a practice, wherever it lies. */
export const dateOfPractice = (id: string): string | undefined =>
  practiceAt(id)?.date ?? history.value?.find(({ practice }) => practice === id)?.date;

/**
 * Takes the entries of a packed practice out again, so that a screen can show them and they can be
 * put right. It is packed anew with what was said since once `putAway` is called.
 *
 * @returns whether there is such a practice
 */
export async function takeOut(id: string): Promise<boolean> {
  if (practiceAt(id)) return true;
  const entries = await store.practice(id);
  if (!entries.some(({ kind }) => kind === 'practice-opened')) return false;
  openedAgain.add(id);
  show(entries);
  return true;
}

/** Puts away what was taken out. */
export function putAway(): void {
  const ids = new Set(openedAgain);
  if (ids.size === 0) return;
  openedAgain.clear();
  const waits = practised.value.some(
    ({ id, practice }) => ids.has(String(practice)) && unsaved.value.has(id),
  );
  // The window that leads packs them again; another one has told it what was said.
  if (!leads.value && !waits) dropPractices(ids);
  else practised.value = [...practised.value];
}

/** The entries of the practice of now. */
export const latestEntries = (): readonly AnyEntry[] =>
  practised.value.filter((entry) => entry.practice === practice.value?.id);

/**
 * Joins entries from a file with the ledger: all of them or none. A practice of today that is not
 * closed is one to go on with, where this phone has none of its own.
 *
 * @param practices the entries of each practice, sorted by id
 * @returns how many entries were new here
 */
export async function takeInFile(
  standing: readonly AnyEntry[],
  practices: ReadonlyMap<string, readonly AnyEntry[]>,
): Promise<number> {
  return takeIn(standing, practices, (entries) => {
    const folded = foldPractice(entries.filter(isKnown).filter(isPractised));
    return !openPractice.value && folded?.date === today() && !folded.closed;
  });
}
