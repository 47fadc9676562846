import type { Terms } from '../drill/drill.ts';
import type { Consistency } from '../ledger/summary.ts';
import type { LevelFit } from './level-fit.ts';
import { pairShare } from './pair-share.ts';

/**
 * What any two of a group can do at a drill: the mean of all their pairs' shares, its sd as wide as
 * the pairs differ and as little is known of each. Undefined where nothing is known of any.
 */
export function groupShare(
  fit: LevelFit,
  terms: Pick<Terms, 'family' | 'drill' | 'rule'>,
  players: readonly string[],
): Consistency | undefined {
  const shares = players.flatMap((one, at) =>
    players.slice(at + 1).flatMap((other) => pairShare(fit, terms, [one, other]) ?? []),
  );
  if (shares.length === 0) return undefined;
  const mean = (of: (share: Consistency) => number) =>
    shares.reduce((sum, share) => sum + of(share), 0) / shares.length;
  const consistency = mean((share) => share.consistency);
  const variance = mean(
    (share) => share.consistencySd ** 2 + (share.consistency - consistency) ** 2,
  );
  return { consistency, consistencySd: Math.sqrt(variance) };
}
