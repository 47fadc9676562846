/**
 * The chances of the ways in which unfinished attempts at a run can add up, where each shot succeeds
 * with the same probability p.
 */
export interface Attempts {
  /** Chance that `misses` attempts all end in a miss and take `shots` shots together: [shots]. */
  failed(misses: number): Float64Array;
  /** The same followed by a run that still goes on, of 1 or more shots: [shots] counts them too. */
  goingOn(misses: number): Float64Array;
}

/**
 * `longest` is the most shots that an attempt can take, its miss included; `most` the largest number
 * of shots that is asked for. With `reach`, only those ways count in which some run (the one that
 * still goes on included) came to that many successes. With `showing`, a run that still goes on has
 * exactly that many shots; 0 leaves none.
 *
 * A[m][L], the number of ways to write L as m ordered parts of 1 … longest, is failed(m)[L] over
 * (1 − p)^m p^(L − m). The chances are kept instead of those numbers because they neither overflow
 * nor, for a p near the true one, vanish; and every one is a sum of positive terms.
 */
export function attempts(
  p: number,
  longest: number,
  most: number,
  { reach = 0, showing }: { reach?: number; showing?: number | undefined } = {},
): Attempts {
  // A way that has not yet reached the run asked for can still do so by its next attempt.
  const anyWay = reach > 0 ? attempts(p, longest, most) : undefined;
  const failed = [new Float64Array(most + 1)];
  if (!anyWay) failed[0]![0] = 1;
  const goingOn: Float64Array[] = [];

  const powers = new Float64Array(Math.min(longest, most + 1));
  for (let c = 0; c < powers.length; c++) powers[c] = p ** c;

  // Nothing lies outside the least and the most shots that so many attempts can take, so the rest of
  // a row stays 0 without being summed.
  function run(misses: number, from: number, below: number): Float64Array {
    const row = new Float64Array(most + 1);
    const short = failed[misses]!;
    const any = anyWay?.failed(misses) ?? short;
    const longestBefore = misses * longest;
    const last = Math.min(most, longestBefore + below - 1);
    for (let shots = misses + from; shots <= last; shots++) {
      const end = Math.min(below, shots - misses + 1);
      const shortEnd = Math.min(end, reach);
      let c = Math.max(from, shots - longestBefore);
      let sum = 0;
      for (; c < shortEnd; c++) sum += powers[c]! * short[shots - c]!;
      for (; c < end; c++) sum += powers[c]! * any[shots - c]!;
      row[shots] = sum;
    }
    return row;
  }

  function grow(misses: number): void {
    for (let m = goingOn.length; m <= misses; m++) {
      const ended = failed[m]!;
      const open = run(m, 1, powers.length);
      const next = new Float64Array(most + 1);
      const last = Math.min(most, (m + 1) * longest);
      for (let shots = m + 1; shots <= last; shots++)
        next[shots] = (1 - p) * (ended[shots - 1]! + open[shots - 1]!);
      failed.push(next);
      goingOn.push(
        showing === undefined ? open : run(m, Math.max(1, showing), Math.min(showing + 1, longest)),
      );
    }
  }

  return {
    failed(misses) {
      grow(misses);
      return failed[misses]!;
    },
    goingOn(misses) {
      grow(misses);
      return goingOn[misses]!;
    },
  };
}
