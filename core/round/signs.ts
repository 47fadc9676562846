/** What a round calls out: thirty seconds left, each of the last five, and the horn. */
export type Sign = 'half-minute' | 'last-seconds' | 'horn';

const SIGNS: readonly { left: number; sign: Sign }[] = [
  { left: 30, sign: 'half-minute' },
  ...[5, 4, 3, 2, 1].map((left) => ({ left, sign: 'last-seconds' as const })),
  { left: 0, sign: 'horn' },
];

/** The signs still to come with `left` seconds on the clock, each with the seconds until it. */
export const signsAhead = (left: number): { in: number; sign: Sign }[] =>
  SIGNS.filter((each) => each.left < left || (each.left === left && left > 0)).map((each) => ({
    in: left - each.left,
    sign: each.sign,
  }));

/** The sign that was passed as the clock went from `before` to `left` seconds: the last, if several. */
export const signPassed = (before: number, left: number): Sign | undefined =>
  SIGNS.findLast((each) => each.left < before && each.left >= left)?.sign;
