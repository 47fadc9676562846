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
  const last = new Map<string, string>();
  for (const { date, round } of roundsUntil(summaries, today)) {
    for (const { pair } of round.tallies) {
      for (const [one, other] of twosOf(pair.players)) {
        const key = keyOf(one, other);
        if (!(last.get(key)! >= date)) last.set(key, date);
      }
    }
  }
  const waits = ({ days = Number.POSITIVE_INFINITY }: NextPartners) => days;
  return (proposal?.pairs ?? [])
    .map(({ players }): NextPartners => {
      const dates = twosOf(players).flatMap(([one, other]) => last.get(keyOf(one, other)) ?? []);
      const newest = dates.sort().at(-1);
      return { players, ...(newest !== undefined && { days: daysBetween(newest, today) }) };
    })
    .sort((a, b) => (waits(a) === waits(b) ? 0 : waits(b) - waits(a)));
}

const twosOf = (players: readonly string[]): [string, string][] =>
  players.flatMap((one, at) =>
    players.slice(at + 1).map((other): [string, string] => [one, other]),
  );

const keyOf = (a: string, b: string) => JSON.stringify(a < b ? [a, b] : [b, a]);
