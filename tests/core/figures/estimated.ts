import type { Estimate, PlayedRound } from '../../../core/ledger/summary.ts';

/** An estimate with these touches and this spread, as the model would have it without a skew. */
export const estimateWith = (
  shots: number,
  sd: number,
  over: Partial<Estimate> = {},
): Estimate => ({
  model: 1,
  shots,
  sd,
  low: shots - 1.2815515655446004 * sd,
  high: shots + 1.2815515655446004 * sd,
  success: { consistency: 0.9, consistencySd: 0.04 },
  ...over,
});

/** The round with an estimate of each of its tallies; undefined leaves one without. */
export const estimatedRound = (
  round: PlayedRound,
  ...estimates: (Estimate | undefined)[]
): PlayedRound => ({
  ...round,
  tallies: round.tallies.map((tally, place) => {
    const estimate = estimates[place];
    return estimate ? { ...tally, estimate } : tally;
  }),
});
