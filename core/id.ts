import * as z from 'zod/mini';

/** Names of fields that every object of the language has from its birth. */
const RESERVED: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/**
 * What names a player, a practice, a round, a drill or a block: letters, digits, `-` and `_`, as
 * the app draws them. Ids are parts of keys and names of fields, so a stranger's file may hold no
 * other.
 */
export const Id = z.string().check(
  z.regex(/^[\w-]{1,40}$/),
  z.refine((id) => !RESERVED.has(id)),
);

/** Whether a field of a record from outside has a name that could reach into the language itself. */
export const isReserved = (name: string): boolean => RESERVED.has(name);
