import { daysBetween } from '../calendar.ts';
import { roundsUntil } from '../figures/last-practised.ts';
import type { Summary } from '../ledger/summary.ts';
import { MOST_PLAYERS } from '../round/pairs.ts';
import type { Pairing } from './pair-cost.ts';
import { proposePairs } from './propose-pairs.ts';

/** Two, or three, who should play together next, and why. */
export interface NextPartners {
  players: string[];
  /** Days since any two of them were partners; undefined where they never were. */
  days?: number;
}

/**
 * Who should play together next: the pairs that would be proposed if everybody came, each with how
 * long ago they were partners, those that have waited longest first. Nobody has to be marked as here.
 *
 * @param pairing everyone of the squad; of more than twenty-four the first ones
 * @param summaries in any order; what is later than `today` is passed over
 */
export function nextPartners(
  pairing: Pairing,
  summaries: readonly Summary[],
  today: string,
): NextPartners[] {
  const proposal = proposePairs({ ...pairing, here: pairing.here.slice(0, MOST_PLAYERS) });
  const pairs = proposal?.pairs.map(({ players }) => players) ?? [];
  const last = lastTogether(pairs, summaries, today);
  const waits = ({ days = Number.POSITIVE_INFINITY }: NextPartners) => days;
  return pairs
    .map((players): NextPartners => {
      const date = last.get(players);
      return { players, ...(date !== undefined && { days: daysBetween(date, today) }) };
    })
    .sort((a, b) => (waits(a) === waits(b) ? 0 : waits(b) - waits(a)));
}

/** When any two of each of these were partners, looked for from the latest practice back. */
function lastTogether(
  pairs: readonly string[][],
  summaries: readonly Summary[],
  today: string,
): Map<string[], string> {
  const last = new Map<string[], string>();
  const sought = new Set(pairs);
  const back = summaries.toSorted((a, b) => (a.date < b.date ? 1 : a.date > b.date ? -1 : 0));
  for (const summary of back) {
    if (sought.size === 0) break;
    for (const { round } of roundsUntil([summary], today)) {
      for (const { pair } of round.tallies) {
        for (const players of sought) {
          if (players.filter((player) => pair.players.includes(player)).length < 2) continue;
          last.set(players, summary.date);
          sought.delete(players);
        }
      }
    }
  }
  return last;
}
