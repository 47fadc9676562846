import { rateRatio } from './interval.ts';
import type { Stint } from './stints.ts';
import { isTelling } from './telling.ts';

/** How a player's sets a minute changed from one span to another. */
export interface Change {
  /** 1.2: a fifth more than before. Infinity where there was no set before. */
  ratio: number;
  low: number;
  high: number;
  /** Two-sided p of no change. */
  p: number;
}

/** What an interval that is narrow enough, and does or does not hold 1, allows to say. */
export function changeWord({ low, high }: Change): 'more' | 'fewer' | 'open' | 'too-little' {
  // Also where there was no set before.
  if (!isTelling({ low, high })) return 'too-little';
  return low > 1 ? 'more' : high < 1 ? 'fewer' : 'open';
}

/** Sets a second that the squad makes of each drill at each size, by `countedAs`. */
export type SquadPace = ReadonlyMap<string, number>;

/** What the squad makes of a second, from all players' stints. */
export function squadPace(stints: readonly Stint[]): SquadPace {
  const sums = new Map<string, { sets: number; seconds: number }>();
  for (const { countedAs, sets, seconds } of stints) {
    const sum = sums.get(countedAs) ?? { sets: 0, seconds: 0 };
    sums.set(countedAs, sum);
    sum.sets += sets;
    sum.seconds += seconds;
  }
  return new Map(
    [...sums].map(([alike, { sets, seconds }]) => [alike, seconds > 0 ? sets / seconds : 0]),
  );
}

/**
 * The change of a player's sets a minute, as the ratio of two rates with its exact 95% interval.
 *
 * Sets of different drills and sizes take different time. So a second counts by what the squad makes
 * of it at the same drill, rule and size (indirect standardisation): an easier block is no progress.
 * Where both spans hold one drill at one size this is the plain ratio of the rates. Undefined where
 * a span has no second in which anyone made a set, or the player made none in either.
 *
 * @param before the player's stints of the earlier span
 * @param after those of the later one
 * @param pace the squad's over both spans
 */
export function changeOf(
  before: readonly Stint[],
  after: readonly Stint[],
  pace: SquadPace,
): Change | undefined {
  const expected = (stints: readonly Stint[]) =>
    stints.reduce((sum, { countedAs, seconds }) => sum + seconds * (pace.get(countedAs) ?? 0), 0);
  const made = (stints: readonly Stint[]) => stints.reduce((sum, { sets }) => sum + sets, 0);
  return rateRatio(made(after), expected(after), made(before), expected(before));
}
