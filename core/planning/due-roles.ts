import type { Terms } from '../drill/drill.ts';
import { strokesAt } from '../figures/last-practised.ts';
import type { Pair } from '../round/pair.ts';
import type { WhatIsDue } from './what-is-due.ts';

/**
 * The same pairs, each in the order that gives its first turn at a drill to those who have waited
 * longest for the strokes of a role; as they stand where both have waited as long. A trio, which
 * turns, stays as it is.
 */
export const dueRoles = (pairs: readonly Pair[], terms: Terms, due: WhatIsDue): Pair[] =>
  pairs.map((pair) => {
    if (pair.players.length !== 2) return pair;
    const turned = { ...pair, players: pair.players.toReversed() };
    return waited(turned, terms, due) > waited(pair, terms, due) ? turned : pair;
  });

/** How overdue the strokes are that a pair has in its roles. */
const waited = ({ players }: Pair, terms: Terms, due: WhatIsDue): number =>
  players
    .flatMap((player, place) =>
      strokesAt(terms, players, place).map((stroke) => due.overdueFor(player, stroke)),
    )
    .reduce((sum, overdue) => sum + overdue, 0);
