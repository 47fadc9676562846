import { append } from '../ledger.ts';
import { openPractice } from '../practices.ts';

/** Keeps what was measured of a drill with the practice under way; nothing happens where there is none. */
export function keepCheck(
  kind: 'tempo-checked' | 'refeed-checked',
  drill: string,
  seconds: number,
): void {
  const practice = openPractice.value?.id;
  if (practice !== undefined) append({ kind, practice, drill, seconds });
}
