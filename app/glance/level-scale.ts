import type { Level } from '../../core/figures/level.ts';

/** Less than this from bottom to top would make a mountain of every wave. */
const LEAST_RANGE = 0.08;

/** One height for all cells of a kind of work. */
export interface LevelScale {
  /** From 0 at the bottom of a cell to 1 at its top. */
  at: (share: number) => number;
  /** The mean of the levels on that scale. */
  middle: number;
}

/** The scale of some levels, with room for all their limits; undefined where there is none. */
export function levelScale(levels: readonly (Level | undefined)[]): LevelScale | undefined {
  const seen = levels.flatMap((level) => level ?? []);
  if (seen.length === 0) return undefined;
  const low = Math.min(...seen.map((level) => level.low));
  const high = Math.max(...seen.map((level) => level.high));
  const room = Math.max(0, LEAST_RANGE - (high - low)) / 2;
  const at = (share: number) => (share - low + room) / (high - low + 2 * room);
  return { at, middle: at(seen.reduce((sum, { share }) => sum + share, 0) / seen.length) };
}
