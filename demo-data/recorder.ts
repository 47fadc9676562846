import type { Entry, Saying } from '../core/ledger/entry.ts';
import { nextStamp } from '../core/ledger/stamp.ts';

/** Makes an entry of what was said at a time, in milliseconds since 1970. */
export type Say = (saying: Saying, at: number) => Entry;

/** The name that invented entries carry in their ids. */
const WRITER = 'demo-data';

/**
 * Makes entries as a phone would, with stamps that only rise. They are not held to the schemas one
 * by one, which would take most of the time of a long season: the tests do that for all of them.
 */
export function recorder(): Say {
  let last = '';
  return (saying, at) => {
    const whole = Math.round(at);
    last = nextStamp(last, whole, WRITER);
    return { ...saying, id: last, at: whole };
  };
}
