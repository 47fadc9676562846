/**
 * A press that must last: long enough that no child takes the coach's page by a tap, short enough
 * that a coach does it without thinking (our own choice, no source).
 */
export const HOLD_MS = 2_000;

/** The one finger or key that holds, and since when; undefined while nothing does. */
export type Hold = { readonly by: string; readonly since: number } | undefined;

/** A finger or key goes down at `at`, in milliseconds. A key that repeats or a second finger changes nothing. */
export const press = (hold: Hold, by: string, at: number): Hold => hold ?? { by, since: at };

/** A finger or key is let go: if it was the one that held, the next press starts again. */
export const release = (hold: Hold, by: string): Hold => (hold?.by === by ? undefined : hold);

/** How much of the time was held at `at`: 0 at the press, 1 once it lasted. */
export const heldPart = (hold: Hold, at: number): number =>
  hold ? Math.min(1, Math.max(0, (at - hold.since) / HOLD_MS)) : 0;
