import type { Beta } from './consistency.ts';
import { SHARE_PRIOR } from './evidence.ts';

/** What is known of levels before anything was seen, in logits; normal but for `share`. */
export interface LevelPriors {
  /** The logit of a kind of work: its mean and sd. */
  kind: number;
  kindSd: number;
  /** Sds of a drill of the kind, of a player, and of a player at one kind. */
  drillSd: number;
  playerSd: number;
  playerKindSd: number;
  /** Sds of the change a week, of a player and of a player at one kind. */
  changeSd: number;
  changeKindSd: number;
  /** What each tally's estimate knew of its share before it saw the round. */
  share: Beta;
}

const COMMON = {
  kindSd: 1.5,
  drillSd: 0.35,
  playerSd: 0.7,
  playerKindSd: 0.35,
  changeSd: 0.05,
  changeKindSd: 0.04,
} as const;

/**
 * The sds are fixed: estimated by marginal likelihood they fell to 0 in many simulated seasons, and
 * the 80% intervals of the differences then held 33 to 73%. Kinds are nearly free (80% of squads
 * between 52 and 98% of balls that come back), drills of a kind differ by about four balls in a
 * hundred, four fifths of the difference of players is common to all kinds, and twelve weeks change
 * a player by 0.77 logit. All of them are this project's choice on simulated seasons, no source.
 */
export const LEVEL_PRIORS: Record<'back' | 'onTarget', LevelPriors> = {
  back: { ...COMMON, kind: 2, share: SHARE_PRIOR.back },
  onTarget: { ...COMMON, kind: 0, share: SHARE_PRIOR.onTarget },
};
