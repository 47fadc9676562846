import { phi } from './normal.ts';
import type { Lognormal } from './touches-round.ts';

/** Coefficients of variation of one shot, one re-feed and one pause around the pair's own mean. */
export const SHOT_VARIATION = 0.15;
export const REFEED_VARIATION = 0.4;
export const PAUSE_VARIATION = 0.4;

/** How long a thing takes, over pairs and from one time to the next, in seconds. */
interface Duration {
  mean: number;
  /** Of the pair's own mean: shared by all of a round, so it grows with the square of the number. */
  varianceOfPairs: number;
  /** From one time to the next: independent, so it grows with the number. */
  varianceOfTimes: number;
}

export interface RoundClock {
  shot: Duration;
  refeed: Duration;
  pause: Duration;
}

/** The clock of a round whose tempo, re-feed and pause are known as well as these say. */
export const roundClock = (known: {
  tempo: Lognormal;
  refeed: Lognormal;
  pause: Lognormal;
}): RoundClock => ({
  shot: duration(known.tempo, SHOT_VARIATION),
  refeed: duration(known.refeed, REFEED_VARIATION),
  pause: duration(known.pause, PAUSE_VARIATION),
});

function duration([median, sdLog]: Lognormal, variation: number): Duration {
  const mean = median * Math.exp(sdLog ** 2 / 2);
  const varianceOfPairs = mean ** 2 * Math.expm1(sdLog ** 2);
  return {
    mean,
    varianceOfPairs,
    varianceOfTimes: variation ** 2 * (mean ** 2 + varianceOfPairs),
  };
}

/**
 * The chance that so many shots, re-feeds and pauses all fit into the seconds whose logarithm is
 * given: their sum taken as lognormal with the same mean and variance (Fenton 1960). 1 where there
 * are no shots.
 */
export function chanceToFit(
  { shot, refeed, pause }: RoundClock,
  logSeconds: number,
  shots: number,
  refeeds: number,
  pauses: number,
): number {
  if (shots <= 0) return 1;
  const mean = shots * shot.mean + refeeds * refeed.mean + pauses * pause.mean;
  const variance =
    shots * (shots * shot.varianceOfPairs + shot.varianceOfTimes) +
    refeeds * (refeeds * refeed.varianceOfPairs + refeed.varianceOfTimes) +
    pauses * (pauses * pause.varianceOfPairs + pause.varianceOfTimes);
  const spread = logVariance(mean, variance);
  return phi(logScore(logSeconds, mean, spread));
}

/** Variance of the logarithm of a lognormal time with this mean and variance. */
export const logVariance = (mean: number, variance: number): number =>
  Math.log1p(variance / (mean * mean));

/** How many standard deviations the logarithm of a time stands above its mean. */
export const logScore = (logTime: number, mean: number, spread: number): number =>
  (logTime - Math.log(mean) + spread / 2) / Math.sqrt(spread);
