import * as z from 'zod/mini';
import { Id } from '../id.ts';

/** What names a pair over the whole practice. */
export const Letter = z.string().check(z.regex(/^[A-L]$/));

/** A pair (or the one trio) of a round: its letter for the practice, its players in role order. */
export const Pair = z.object({
  letter: Letter,
  players: z.array(Id).check(z.minLength(2), z.maxLength(3)),
});
export type Pair = z.infer<typeof Pair>;
/** Tiles that a screen can hold: twenty-four players. */
export const MOST_PAIRS = 12;
