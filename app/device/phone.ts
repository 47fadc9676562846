import { nanoid } from 'nanoid';

const KEY = 'rally-ledger-phone';
const SHAPE = /^[\w-]{10}$/;

/**
 * What this phone calls itself in what it writes, drawn once: it tells which of two phones counted,
 * and nothing of whose it is. Where storage is refused it holds until the page is closed.
 */
export const phone = ((): string => {
  const drawn = nanoid(10);
  try {
    const known = localStorage.getItem(KEY);
    if (known && SHAPE.test(known)) return known;
    localStorage.setItem(KEY, drawn);
  } catch {
    // Refused storage: nothing else of the app is kept either.
  }
  return drawn;
})();
