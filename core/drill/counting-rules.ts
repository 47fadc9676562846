import type { CountingRule } from './drill.ts';

/**
 * What each counting rule means, all of it in one table: a rule that is added here is asked for
 * everything that the program must know of it.
 */
export interface RuleMeaning {
  /**
   * What a set is as long as: what the coach sets, the shots of the pattern, or one ball.
   */
  size: 'set' | 'pattern' | 'one';
  /** Whether each player has an own count; else the pair has one. */
  counts: 'pair' | 'player';
  /** Whether a miss starts the set again. */
  startsAgain: boolean;
  /** Whether a miss, and a completed set, cost the time to feed anew: not where each ball is fed. */
  feedsAnew: boolean;
  /**
   * Beta(a, b) of the share of shots that succeed, before anything is known of a pair: about four
   * of five balls come back; of a target nothing is known (common practice, no source).
   */
  prior: { a: number; b: number };
}

const BACK = { a: 4, b: 1 };
const ANY = { a: 1, b: 1 };

export const ruleMeanings: Readonly<Record<CountingRule, RuleMeaning>> = {
  'in-a-row': { size: 'set', counts: 'pair', startsAgain: true, feedsAnew: true, prior: BACK },
  'in-total': { size: 'set', counts: 'pair', startsAgain: false, feedsAnew: true, prior: BACK },
  sequence: { size: 'pattern', counts: 'pair', startsAgain: true, feedsAnew: true, prior: BACK },
  'on-target': { size: 'one', counts: 'player', startsAgain: false, feedsAnew: false, prior: ANY },
};

/** Whether the coach sets how many shots a set has; else the pattern does, or it is one ball. */
export const hasOwnSize = (rule: CountingRule): boolean => ruleMeanings[rule].size === 'set';

/**
 * Whether a pair can be advised another size: the coach sets it, and a miss starts the set again, so
 * that a size too large gives no set at all.
 */
export const takesAdvice = (rule: CountingRule): boolean =>
  hasOwnSize(rule) && ruleMeanings[rule].startsAgain;

/** Whether each player of a pair has an own count. */
export const countsByPlayer = (rule: CountingRule): boolean =>
  ruleMeanings[rule].counts === 'player';
