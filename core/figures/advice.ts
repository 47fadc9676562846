import { takesAdvice } from '../drill/counting-rules.ts';
import type { Terms } from '../drill/drill.ts';
import type { Pace } from '../round/tempo.ts';
import { paceMedians } from './pace-known.ts';
import { comingConsistency } from './pooled.ts';
import { byPractice } from './practice-trend.ts';
import { adviseSize } from './setsize.ts';
import type { Stint } from './stints.ts';

/** A set size for a pair, and what is to be expected of it and of its neighbours. */
export interface SizeAdvice {
  size: number;
  /** Sets in the round at that size, at one shot fewer and at one shot more. */
  expected: number;
  smaller: number;
  larger: number;
  /** Whether it rests on rounds of these players together, not of each with others. */
  together: boolean;
}

/**
 * The set size at which about four sets are to be expected of a pair or trio in its next round of a
 * drill in a row. It rests on their own rounds at that drill together; where there were none, on
 * those of any of them with others. Undefined where there is neither, or by another rule.
 *
 * @param stints of pairs, oldest first
 * @param seconds live clock of the round to come, above 0
 */
export function sizeAdvice(
  stints: readonly Stint[],
  { drill, rule }: Pick<Terms, 'drill' | 'rule'>,
  players: readonly string[],
  seconds: number,
  pace?: Pace,
): SizeAdvice | undefined {
  if (!takesAdvice(rule)) return undefined;
  const known = stints.filter(({ terms }) => terms.drill === drill && terms.rule === rule);
  const theirs = known.filter(
    (stint) =>
      stint.players.length === players.length &&
      stint.players.every((player) => players.includes(player)),
  );
  const own = comingConsistency(byPractice(theirs));
  const others = () =>
    comingConsistency(
      byPractice(known.filter((stint) => stint.players.some((player) => players.includes(player)))),
    );
  const consistency = own ?? others();
  if (!consistency) return undefined;
  const advice = adviseSize({ ...consistency, seconds, ...paceMedians(pace) });
  return { ...advice, together: own !== undefined };
}

/** More sets than this in a round, or none, and the size does not suit the pair. */
const MOST_SETS = 8;

/** Whether a pair's count says that the size of its sets does not challenge it rightly. */
export const isOffSize = ({ rule }: Pick<Terms, 'rule'>, sets: number): boolean =>
  takesAdvice(rule) && (sets === 0 || sets > MOST_SETS);
