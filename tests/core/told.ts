import type { Entry, PracticeEntry, Saying } from '../../core/ledger/entry.ts';
import { makeEntry } from '../../core/ledger/entry.ts';
import { isPractised } from '../../core/ledger/join.ts';
import { nextStamp } from '../../core/ledger/stamp.ts';

/** Some morning, in milliseconds since 1970. */
export const MORNING = 1_772_438_400_000;
export const PRACTICE = 'practice-1';

/** A stamp that no entry of these tests has. */
export const NO_STAMP = nextStamp('', MORNING - 1, 'nobody-here');

/** A writer of entries, who stamps them as the app does. */
export function teller(writer = 'writer-one') {
  let last = '';
  return (saying: Saying, at = MORNING): Entry => {
    last = nextStamp(last, at, writer);
    return makeEntry(saying, last, at);
  };
}

/** What was said of a practice as its entries, a millisecond apart. */
export function told(...sayings: Saying[]): PracticeEntry[] {
  const tell = teller();
  return sayings.map((saying, index) => tell(saying, MORNING + index)).filter(isPractised);
}
