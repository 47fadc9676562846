/** What a round calls out: that roles turn, thirty seconds left, each of the last five, and the horn. */
export type Sign = 'turn' | 'half-minute' | 'last-seconds' | 'horn';

const SIGNS: readonly { left: number; sign: Sign }[] = [
  { left: 30, sign: 'half-minute' },
  ...[5, 4, 3, 2, 1].map((left) => ({ left, sign: 'last-seconds' as const })),
  { left: 0, sign: 'horn' },
];

/** All signs of a round in which roles turn with `turn` seconds left, or do not, in their order. */
const signsOf = (turn: number | undefined) =>
  turn === undefined
    ? SIGNS
    : [...SIGNS.filter(({ left }) => left !== turn), { left: turn, sign: 'turn' as const }].sort(
        (a, b) => b.left - a.left,
      );

/**
 * The signs still to come with `left` seconds on the clock, each with the seconds until it.
 *
 * @param turn seconds left on the clock as roles turn; left out where they do not
 */
export const signsAhead = (left: number, turn?: number): { in: number; sign: Sign }[] =>
  signsOf(turn)
    .filter((each) => each.left < left || (each.left === left && left > 0))
    .map((each) => ({ in: left - each.left, sign: each.sign }));

/**
 * The sign that was passed as the clock went from `before` to `left` seconds: the last, if several.
 *
 * @param turn seconds left on the clock as roles turn; left out where they do not
 */
export const signPassed = (before: number, left: number, turn?: number): Sign | undefined =>
  signsOf(turn).findLast((each) => each.left < before && each.left >= left)?.sign;
