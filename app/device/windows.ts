import { signal } from '@preact/signals';

/**
 * The other windows of the app on this phone: what one writes the others show, and one of them
 * leads. The one that leads sounds the signs and packs; all show the same clock, for it is a
 * function of the same entries.
 */
export const leads = signal(false);

/** What one window tells the others; whoever hears it checks what it is. */
export type Told =
  /** These entries are on the disk. */
  | { entries: readonly unknown[] }
  /** The records were changed in other ways: read them again. */
  | { again: true };

let channel: BroadcastChannel | undefined;
let lock = '';

/** Joins the windows that share a database. */
export function joinWindows(database: string, hear: (told: unknown) => void): void {
  lock = `${database}/lead`;
  queueForLead();
  try {
    channel = new BroadcastChannel(database);
    channel.onmessage = (event) => hear(event.data);
  } catch {
    channel = undefined; // A phone without them reads the records again when a window is seen.
  }
}

export const tellWindows = (told: Told): void => channel?.postMessage(told);

/** Makes this window the one that leads: a person has just started or resumed a round in it. */
export function takeLead(): void {
  if (!leads.value) queueForLead(true);
}

function queueForLead(steal = false): void {
  if (!navigator.locks) {
    leads.value = true;
    return;
  }
  navigator.locks
    .request(lock, { steal }, () => {
      leads.value = true;
      return new Promise<never>(() => {}); // Held until the window is closed, or another takes it.
    })
    .catch((error) => {
      const taken = error instanceof DOMException && error.name === 'AbortError';
      leads.value = !taken; // Where a phone refuses locks, every window leads.
      if (taken) queueForLead();
    });
}
