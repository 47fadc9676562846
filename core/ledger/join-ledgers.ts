import type { AnyEntry } from './entry.ts';
import { foldErased, isErased } from './erased.ts';
import { join } from './join.ts';

/**
 * What is kept of two whole ledgers that meet: the union, without what either of them erased. In any
 * order, any number of times, to the same result.
 */
export function joinLedgers(one: Iterable<AnyEntry>, other: Iterable<AnyEntry>): AnyEntry[] {
  const all = join(one, other);
  const erased = foldErased(all);
  return all.filter((entry) => !isErased(entry, erased));
}
