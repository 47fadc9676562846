import type { Drill } from '../drill/drill.ts';
import type { Summary } from '../ledger/summary.ts';
import { isHeard } from '../round/tally.ts';
import { lastWeeks } from './review.ts';

/** Weeks up to the last practice that are looked at. */
const WEEKS = 4;
/** Fewer counts than this tell nothing of a drill; ours. */
const FEWEST_COUNTS = 6;

/** Counts of a drill, one a pair and round, and how many of them had no set. */
export interface SetlessCounts {
  counts: number;
  without: number;
}

/**
 * Whether a drill is too hard for the squad as it stands: in the last four weeks more than half of
 * its counts, at its own rule and size, had no set at all. Undefined where it is not, or where too
 * few counts tell. Our choice: about four sets a round are wanted (see setsize.ts).
 */
export function tooHard(
  summaries: readonly Summary[],
  { id, rule, size }: Pick<Drill, 'id' | 'rule' | 'size'>,
): SetlessCounts | undefined {
  const counted = lastWeeks(summaries, WEEKS)
    .now.flatMap(({ rounds }) => rounds)
    .filter(({ terms }) => terms.drill === id && terms.rule === rule && terms.size === size)
    .flatMap(({ tallies }) => tallies)
    .filter(isHeard);
  const without = counted.filter(({ sets }) => sets === 0).length;
  const isSo = counted.length >= FEWEST_COUNTS && 2 * without > counted.length;
  return isSo ? { counts: counted.length, without } : undefined;
}
