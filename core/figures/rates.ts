import { type AllTouches, sumEstimates } from './all-touches.ts';
import { rateInterval } from './interval.ts';
import type { Stint } from './stints.ts';

/** What was done a minute of live clock. */
export interface Rates {
  sets: number;
  /** Minutes of live clock. */
  minutes: number;
  /** Sets a minute with their exact 95% Poisson interval; undefined where the clock never ran. */
  perMinute?: { rate: number; low: number; high: number };
  /** All touches a minute, with the limits of their sum; undefined where that is. */
  touchesPerMinute?: { rate: number; low: number; high: number };
  touches: AllTouches;
}

/**
 * Sets and touches a minute over some stints. Touches come a whole set at a time and so are no
 * Poisson count: their limits are those of the model that estimates them.
 */
export function ratesOf(stints: readonly Stint[]): Rates {
  const sets = stints.reduce((sum, stint) => sum + stint.sets, 0);
  const minutes = stints.reduce((sum, stint) => sum + stint.seconds, 0) / 60;
  const perMinute = rateInterval(sets, minutes);
  const touches = sumEstimates(stints);
  const { all } = touches;
  return {
    sets,
    minutes,
    touches,
    ...(perMinute && { perMinute }),
    ...(all &&
      minutes > 0 && {
        touchesPerMinute: {
          rate: all.touches / minutes,
          low: all.low / minutes,
          high: all.high / minutes,
        },
      }),
  };
}
