import { signal } from '@preact/signals';

/**
 * The other windows of the app on this phone: what one writes the others show, and one of them
 * leads, which packs. All show the same clock, for it is a function of the same entries.
 */
export const leads = signal(false);

/**
 * Whether this window gives the signs of a round, by sound and buzz. One does: the one that a
 * person touched last, for a phone lets a window sound only once it was touched, and so one that was
 * never touched waits for no turn. Once that window is closed another takes over that was touched
 * before; where there is none the round is silent until somebody touches one.
 */
export const givesSigns = signal(false);

/** What one window tells the others; whoever hears it checks what it is. */
export type Told =
  /** These entries are on the disk. */
  | { entries: readonly unknown[] }
  /** The records were changed in other ways: read them again. */
  | { again: true }
  /** The window that says so gives the signs from now on: only where the phone has no locks to see to it. */
  | { signs: true };

let channel: BroadcastChannel | undefined;
let database = '';

/** Joins the windows that share a database. */
export function joinWindows(shared: string, hear: (told: unknown) => void): void {
  database = shared;
  if (navigator.locks) queueFor('lead', leads);
  else leads.value = true;
  try {
    channel = new BroadcastChannel(database);
    channel.onmessage = ({ data }) => {
      if (data?.signs) givesSigns.value = false;
      else hear(data);
    };
  } catch {
    channel = undefined; // A phone without them reads the records again when a window is seen.
  }
}

export const tellWindows = (told: Told): void => channel?.postMessage(told);

/** A person works this window: it leads and gives the signs from now on. */
export function takeLead(): void {
  if (navigator.locks) {
    if (!leads.value) queueFor('lead', leads, true);
    if (!givesSigns.value) queueFor('signs', givesSigns, true);
  } else if (!givesSigns.value) {
    givesSigns.value = true;
    tellWindows({ signs: true });
  }
}

/** Turns that are being taken: a second touch before the first was answered would take them from itself. */
const taking = new Set<string>();

/** Queues for a turn that one window has at a time, or takes it; `turn` says whether this one has it. */
function queueFor(name: string, turn: typeof leads, steal = false): void {
  if (steal && taking.has(name)) return;
  if (steal) taking.add(name);
  navigator.locks
    .request(`${database}/${name}`, { steal }, () => {
      taking.delete(name);
      turn.value = true;
      return new Promise<never>(() => {}); // Held until the window is closed, or another takes it.
    })
    .catch((error) => {
      taking.delete(name);
      const taken = error instanceof DOMException && error.name === 'AbortError';
      turn.value = !taken; // Where a phone refuses locks, every window has it.
      if (taken) queueFor(name, turn);
    });
}
