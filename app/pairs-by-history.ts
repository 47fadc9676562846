import type { Terms } from '../core/drill/drill.ts';
import type { Wish } from '../core/ledger/wishes.ts';
import { dueRoles } from '../core/planning/due-roles.ts';
import { meetingsOf } from '../core/planning/meetings.ts';
import type { Pairing } from '../core/planning/pair-cost.ts';
import { pairLevels } from '../core/planning/pair-levels.ts';
import { type PairProposal, proposeChange, proposePairs } from '../core/planning/propose-pairs.ts';
import { whatIsDue } from '../core/planning/what-is-due.ts';
import type { Pair } from '../core/round/pair.ts';
import { today } from './device/clock.ts';
import { squad, wishes } from './ledger.ts';
import { pastLevels } from './levels.ts';
import { asked } from './next-asks.ts';
import { summaries } from './practices.ts';

/**
 * Who plays with whom by what the ledger knows: who has met lately, levels, and the coach's wishes.
 * Loaded once players are here; until then, and where it cannot be, pairs are made in the order of
 * their coming (see coming-round.ts).
 */

/** Pairs as they stood, changed for those who came and left; new ones where none stood. */
export function pairsByHistory(
  here: readonly string[],
  before: readonly Pair[] | undefined,
  played: ReadonlyMap<string, number> | undefined,
): PairProposal | undefined {
  const given = [...squad.value.values()].flatMap(({ id, level }) =>
    level === undefined ? [] : [[id, level] as const],
  );
  const pairing: Pairing = {
    here,
    levels: pairLevels(here, new Map(given), pastLevels.value),
    meetings: meetingsOf(summaries.value, today()),
    wishes: [...wishes.value, ...askedPairs()],
    ...(played && { played }),
  };
  return before ? proposeChange(pairing, before) : proposePairs(pairing);
}

/** Two whom the coach asked for as a pair at this practice, where no wish of old says otherwise. */
const askedPairs = (): Wish[] =>
  asked.value.pairs
    .filter(([a, b]) => !wishes.value.some((wish) => isOf(wish, a, b)))
    .map(([a, b]) => ({ a, b, wish: 'together' as const }));

const isOf = (wish: Wish, a: string, b: string) =>
  (wish.a === a && wish.b === b) || (wish.a === b && wish.b === a);

/** The pairs with the roles of a drill to those who have waited longer for their strokes. */
export const rolesByHistory = (pairs: readonly Pair[], terms: Terms): Pair[] =>
  dueRoles(pairs, terms, whatIsDue(summaries.value, today(), []));
