import type { AnyEntry, PracticeEntry, StandingEntry } from './entry.ts';

/**
 * The union of two ledgers, sorted by id: in any order, any number of times, to the same result.
 * An entry never changes, so of two with the same id either will do.
 */
export function join<E extends { id: string }>(one: Iterable<E>, other: Iterable<E>): E[] {
  const union = new Map<string, E>();
  for (const entry of one) union.set(entry.id, entry);
  for (const entry of other) if (!union.has(entry.id)) union.set(entry.id, entry);
  return [...union.values()].sort(byId);
}

/** Ids are stamps (see stamp.ts): this is the order in which things happened. */
export const byId = (a: { id: string }, b: { id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0;

/** Whether an entry belongs to one practice. */
export const isPractised = (entry: AnyEntry): entry is PracticeEntry =>
  typeof entry.practice === 'string';

export const isStanding = (entry: AnyEntry): entry is StandingEntry => !isPractised(entry);
