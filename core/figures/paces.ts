import type { Summary } from '../ledger/summary.ts';
import type { Pace } from '../round/tempo.ts';

/**
 * For every practice what had been measured by its end: of each drill the newest check, made in it
 * or before it. A later check changes no earlier round.
 *
 * @param summaries oldest first
 */
export function pacesBy(
  summaries: readonly Pick<Summary, 'practice' | 'paces'>[],
): Map<string, Readonly<Record<string, Pace>>> {
  let known: Readonly<Record<string, Pace>> = {};
  return new Map(
    summaries.map(({ practice, paces = {} }) => {
      for (const [drill, pace] of Object.entries(paces)) {
        known = { ...known, [drill]: { ...known[drill], ...pace } };
      }
      return [practice, known];
    }),
  );
}
