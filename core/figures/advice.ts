import { takesAdvice } from '../drill/counting-rules.ts';
import type { Terms } from '../drill/drill.ts';
import type { Pace } from '../round/tempo.ts';
import { carriedOver } from './consistency.ts';
import type { LevelFit } from './level-fit.ts';
import { paceMedians } from './pace-known.ts';
import { pairShare } from './pair-share.ts';
import { adviseSize } from './setsize.ts';

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
 * drill in a row, by what the model of levels knows of them (see `pairShare`), carried over to the
 * next practice. Undefined where it knows nothing of any of them, or by another rule.
 *
 * In simulated seasons it foresees the next practice's rounds better than the pair's own earlier
 * rounds alone do, after two practices as after 36 (0.306 to 0.321 of deviance a ball against 0.315
 * to 0.332).
 *
 * @param fit of balls that come back; undefined where there is none
 * @param seconds live clock of the round to come, above 0
 */
export function sizeAdvice(
  fit: LevelFit | undefined,
  terms: Pick<Terms, 'family' | 'drill' | 'rule'>,
  players: readonly string[],
  seconds: number,
  pace?: Pace,
): SizeAdvice | undefined {
  const share = takesAdvice(terms.rule) && fit && pairShare(fit, terms, players);
  if (!share) return undefined;
  const advice = adviseSize({ ...carriedOver(share), seconds, ...paceMedians(pace) });
  return { ...advice, together: share.together > 0 };
}

/** More sets than this in a round, or none, and the size does not suit the pair. */
const MOST_SETS = 8;

/** Whether a pair's count says that the size of its sets does not challenge it rightly. */
export const isOffSize = ({ rule }: Pick<Terms, 'rule'>, sets: number): boolean =>
  takesAdvice(rule) && (sets === 0 || sets > MOST_SETS);
