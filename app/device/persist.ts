import { signal } from '@preact/signals';

/**
 * Whether the browser has promised to keep the ledger when the phone runs short of space; undefined
 * where it does not say. Without the promise it is persisted too, as long as there is room.
 */
export const persisted = signal<boolean | undefined>(undefined);

/** Asks whether the promise was given. */
export const readPersisted = (): Promise<void> => put(() => navigator.storage.persisted());

/** Asks for the promise. Some browsers put a question to the person, most decide by themselves. */
export const askToPersist = (): Promise<void> => put(() => navigator.storage.persist());

async function put(ask: () => Promise<boolean>): Promise<void> {
  try {
    persisted.value = await ask();
  } catch {
    persisted.value = undefined; // An old browser, or a page without https.
  }
}
