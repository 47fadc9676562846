import type { Family } from '../drill/drill.ts';
import { changeOf, changeParts, type LevelChange } from './level-change.ts';
import type { LevelFit } from './level-fit.ts';
import type { Part } from './level-parts.ts';
import { ENOUGH_WEEKS, WORD_WEEKS, wordOf } from './level-word.ts';
import { ENOUGH_PRACTICES, type TrendWord } from './trend.ts';

/**
 * How the squad changes in a week: the mean of its players, each as `weeklyChange` has it. Undefined
 * where none of them was seen.
 */
export function squadChange(
  fit: LevelFit,
  players: readonly string[],
  kind?: Family,
): LevelChange | undefined {
  const seen = players.flatMap((player) => {
    const parts = changeParts(fit, player, kind);
    return parts ? [parts] : [];
  });
  if (seen.length === 0) return undefined;
  const each = seen.flat().map(([unknown, times]): Part => [unknown, times / seen.length]);
  return changeOf(fit, each);
}

/** A squad's change in eight weeks that a coach would want to know of, in logits: about two balls in a hundred; ours. */
const MATTERS_OF_SQUAD = 0.15;

/**
 * The one word for it, as `changeWord` has it for a player: too few below six practices of the squad.
 * A mean of many is so sure that next to nothing shows: less than about two balls in a hundred over
 * eight weeks is steady. In simulation, where nothing changes, rising or falling is said of none of 40
 * squads after 12 and after 36 practices and of one after 24; where everyone rises by 0.4 in twelve
 * weeks rising is said of 32 of 40.
 */
export function squadWord(fit: LevelFit, players: readonly string[], kind?: Family): TrendWord {
  const weekly = squadChange(fit, players, kind);
  const practices = new Set(fit.tallies.map(({ practice }) => practice)).size;
  if (!weekly || practices < ENOUGH_PRACTICES || fit.age < ENOUGH_WEEKS) return 'too-few';
  const word = wordOf(weekly);
  const isSmall = WORD_WEEKS * Math.abs(weekly.mean) < MATTERS_OF_SQUAD;
  return isSmall && word !== 'unclear' ? 'steady' : word;
}
