import type { Family } from '../drill/drill.ts';
import { Z_OF_80 } from './level.ts';
import { type LevelChange, weeklyChange } from './level-change.ts';
import type { LevelFit } from './level-fit.ts';
import { ENOUGH_PRACTICES, type TrendWord } from './trend.ts';

/** Fewer rounds of a kind than this say nothing of a change in it. */
const ENOUGH_TALLIES = 3;
/** A shorter window than so many weeks shows no change. */
export const ENOUGH_WEEKS = 3;
/** The change that a word is about. */
export const WORD_WEEKS = 8;
/** A change in logits that a coach would want to know of, about five balls in a hundred: ours, no source. */
const MATTERS = 0.5;

/**
 * The one word for a player's change over eight weeks; of all kinds of work unless one is named.
 *
 * Rising and falling from a chance of 0.9, steady where a change that matters is ruled out (beyond
 * the 80% interval), else not clear yet. Too few below six practices of the player, three rounds of
 * the kind, or three weeks, and where there is no tally at all.
 *
 * In simulation (tests/bench/levels.ts; 36 practices), where nothing changes, rising or falling is said
 * of 7% of kinds and of 12% over all kinds. Of a player who rises by 0.8 in twelve weeks at all kinds
 * the word over all is rising in half of the cases, of a kind in a third, so the one over all is to be
 * shown first. A change in one kind only is found more often by that kind's trend
 * (practice-trend.ts). On target much more is known of each player, so small things show, and days of
 * form with them: where nothing changes a change is said of 17% over all kinds with a round on target
 * in each practice, and of 28% with six.
 */
export function changeWord(fit: LevelFit, player: string, kind?: Family): TrendWord {
  const weekly = weeklyChange(fit, player, kind);
  const practices = fit.players.get(player)?.practices ?? 0;
  if (!weekly || practices < ENOUGH_PRACTICES || fit.age < ENOUGH_WEEKS) return 'too-few';
  const tallies = kind && fit.kinds.get(kind)?.players.get(player)?.tallies;
  if (tallies !== undefined && tallies < ENOUGH_TALLIES) return 'too-few';
  return wordOf(weekly);
}

/** The word for a change a week, where enough was seen of it. */
export function wordOf(weekly: LevelChange): Exclude<TrendWord, 'too-few'> {
  const mean = WORD_WEEKS * weekly.mean;
  const reach = Z_OF_80 * WORD_WEEKS * weekly.sd;
  if (mean >= reach) return 'rising';
  if (mean <= -reach) return 'falling';
  return Math.abs(mean) + reach < MATTERS ? 'steady' : 'unclear';
}
