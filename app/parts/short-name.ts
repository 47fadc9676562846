import { partsOf } from './name-parts.ts';

/** A name of so many letters stands whole. */
const WHOLE = 14;
/** So many letters of a longer one are kept, from its beginning. */
const KEPT = 10;

/**
 * A name for a line that has more to say: a long one is cut, with a sign, and keeps the letter that
 * tells it from the others.
 */
export function shortName(name: string, others: readonly string[]): string {
  const letters = [...name];
  if (letters.length <= WHOLE) return name;
  const parts = partsOf(name, others);
  const apart = parts && [...parts.head].length >= KEPT ? parts.apart : '';
  return `${letters.slice(0, KEPT).join('')}…${apart}`;
}
