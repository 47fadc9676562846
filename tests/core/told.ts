import type { Entry, PracticeEntry, Saying } from '../../core/entry.ts';
import { makeEntry } from '../../core/entry.ts';
import { nextStamp } from '../../core/stamp.ts';

/** Some morning, in milliseconds since 1970. */
export const MORNING = 1_772_438_400_000;
export const PRACTICE = 'practice-1';

/** A stamp that no entry of these tests has. */
export const NO_STAMP = nextStamp('', MORNING - 1, 'nobody-here');

/** A writer of entries, who stamps them as the app does. */
export function teller(writer = 'writer-one') {
  let last = '';
  return <S extends Saying>(saying: S, at = MORNING): Extract<Entry, { kind: S['kind'] }> => {
    last = nextStamp(last, at, writer);
    return makeEntry(saying, last, at) as Extract<Entry, { kind: S['kind'] }>;
  };
}

/** The sayings as entries, a millisecond apart. */
export function told(...sayings: Saying[]): PracticeEntry[] {
  const tell = teller();
  return sayings.map((saying, index) => tell(saying, MORNING + index) as PracticeEntry);
}
