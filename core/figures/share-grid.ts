import { attempts } from './attempts.ts';
import { even, fromLogit } from './logit.ts';

/** A row of `attempts` for each share of a grid: [share][shots]. */
type RowsByShare = readonly Float64Array[];

/** What `attempts` says, for every share of a grid at once. */
export interface AttemptsByShare {
  failed(misses: number): RowsByShare;
  goingOn(misses: number): RowsByShare;
}

/** Guesses at the share of its shots that succeed, even in the logit. */
export interface ShareGrid {
  points: readonly ReturnType<typeof fromLogit>[];
  /** Of sets of so many shots, to rows of at least `most` shots. */
  attempts(size: number, most: number): AttemptsByShare;
}

/**
 * The tables depend on the size of the set alone, and a practice keeps to a few sizes: those of the
 * last ones asked for are kept. Rows are as long as a power of two, so that one
 * table serves rounds of about the same length; where a very long one asks for more, it is made anew
 * each time.
 */
const SIZES_KEPT = 8;
const SHORTEST_ROWS = 64;
const LONGEST_KEPT = 256;

function gridOf(count: number): ShareGrid {
  const points = even(count, -1, 6.2).map(fromLogit);
  const kept = new Map<number, { most: number; ways: AttemptsByShare }>();
  return {
    points,
    attempts(size, most) {
      const known = kept.get(size);
      if (known && known.most >= most) return known.ways;
      const reach = Math.max(SHORTEST_ROWS, 2 ** Math.ceil(Math.log2(most)));
      const ways = attemptsByShare(points, size, reach);
      if (reach > LONGEST_KEPT) return ways;
      kept.delete(size);
      kept.set(size, { most: reach, ways });
      for (const oldest of kept.keys()) {
        if (kept.size <= SIZES_KEPT) break;
        kept.delete(oldest);
      }
      return ways;
    },
  };
}

function attemptsByShare(
  points: readonly { share: number }[],
  size: number,
  most: number,
): AttemptsByShare {
  const tables = points.map(({ share }) => attempts(share, size, most));
  const failed: RowsByShare[] = [];
  const goingOn: RowsByShare[] = [];
  return {
    failed(misses) {
      failed[misses] ??= tables.map((table) => table.failed(misses));
      return failed[misses];
    },
    goingOn(misses) {
      goingOn[misses] ??= tables.map((table) => table.goingOn(misses));
      return goingOn[misses];
    },
  };
}

const usual = gridOf(13);
const fine = gridOf(25);

/** A prior worth more than 30 shots is too narrow for the usual grid. */
export const shareGrid = (a: number, b: number): ShareGrid => (a + b > 30 ? fine : usual);
