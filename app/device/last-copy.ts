import { signal } from '@preact/signals';
import { isDate } from '../../core/calendar.ts';

/*
 * When the last copy of everything was made on this phone: no part of the ledger, and losing it asks
 * for one copy more.
 */
const KEY = 'rally-ledger-copied';

function stored(): string | undefined {
  try {
    const date = localStorage.getItem(KEY) ?? '';
    return isDate(date) ? date : undefined;
  } catch {
    return undefined;
  }
}

/** YYYY-MM-DD; undefined where none was made. */
export const lastCopy = signal(stored());

export function noteCopy(date: string): void {
  lastCopy.value = date;
  try {
    localStorage.setItem(KEY, date);
  } catch {
    // Refused storage: it holds until the page is closed.
  }
}
