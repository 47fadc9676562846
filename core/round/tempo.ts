import { median } from '../median.ts';
import { LEAST_SECONDS_A_SHOT } from './tally.ts';

/** What was measured of a drill's clock with this squad, in seconds. */
export interface Pace {
  /** From hit to hit. */
  tempo?: number;
  /** From a miss to the next hit. */
  refeed?: number;
}

/** Taps of one tempo check: nine gaps leave its logarithm an sd of about 0.06. */
export const TEMPO_HITS = 10;
/** Misses of one re-feed check. */
export const REFEED_MISSES = 5;

/** What came of a check: the seconds, or why it is to be done again. */
export type Check = { seconds: number } | { again: 'gap' | 'fast' };

/** A gap of more than so many medians is a hit that was not tapped, or a rally that broke off. */
const LONGEST_GAP = 2;

/**
 * The seconds between hits from ten taps, one a hit of any rally: the last minus the first over nine.
 * A gap of more than twice the median, and a tempo that no pair has, ask for it again. Undefined
 * while there are fewer than ten.
 *
 * @param taps seconds, rising
 * @throws RangeError for more than ten taps, or such as do not rise
 */
export function tempoOf(taps: readonly number[]): Check | undefined {
  const gaps = gapsOf(taps, TEMPO_HITS);
  const usual = median(gaps);
  if (usual === undefined || taps.length < TEMPO_HITS) return undefined;
  if (Math.max(...gaps) > LONGEST_GAP * usual) return { again: 'gap' };
  const seconds = ((taps.at(-1) ?? 0) - (taps[0] ?? 0)) / gaps.length;
  return seconds < LEAST_SECONDS_A_SHOT ? { again: 'fast' } : { seconds };
}

/**
 * The seconds from a miss to the next hit: the mean of five. The taps are a miss, the next hit, a
 * miss, the next hit and so on. Faster than a shot can be struck asks for it again. Undefined while
 * there are fewer than ten taps.
 *
 * @param taps seconds, rising
 * @throws RangeError for more than ten taps, or such as do not rise
 */
export function refeedOf(taps: readonly number[]): Check | undefined {
  const gaps = gapsOf(taps, 2 * REFEED_MISSES).filter((_, gap) => gap % 2 === 0);
  if (taps.length < 2 * REFEED_MISSES) return undefined;
  const seconds = gaps.reduce((sum, gap) => sum + gap, 0) / REFEED_MISSES;
  return seconds < LEAST_SECONDS_A_SHOT ? { again: 'fast' } : { seconds };
}

function gapsOf(taps: readonly number[], most: number): number[] {
  if (taps.length > most) throw new RangeError(`taps must be at most ${most}, not ${taps.length}`);
  return taps.slice(1).map((tap, before) => {
    const gap = tap - (taps[before] ?? 0);
    if (!(gap > 0)) throw new RangeError(`taps must rise, not by ${gap}`);
    return gap;
  });
}
