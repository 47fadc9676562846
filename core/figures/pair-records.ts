import type { Family } from '../drill/drill.ts';
import { type Summary, secondsOf } from '../ledger/summary.ts';
import { isHeard } from '../round/tally.ts';
import type { PairRecord } from './pair-record.ts';
import { countedAs, isOnTarget } from './stints.ts';

/**
 * The counts of a family from which a player is told from a partner: one record for two players at one drill and
 * size, with all sets and minutes they had together, which tell as much as the rounds one by one.
 * In a trio the three pairs of it each have a third of the minutes and the sets in which they hit.
 * Balls on target are left out: they are a player's own already.
 */
export function pairRecords(summaries: readonly Summary[], family: Family): PairRecord[] {
  const records = new Map<string, PairRecord>();
  const add = (a: string, b: string, drill: string, sets: number, exposure: number) => {
    const key = a < b ? `${a} ${b} ${drill}` : `${b} ${a} ${drill}`;
    const record = records.get(key) ?? { a, b, drill, sets: 0, exposure: 0 };
    records.set(key, record);
    record.sets += sets;
    record.exposure += exposure;
  };
  for (const { rounds } of summaries) {
    for (const round of rounds) {
      const { terms } = round;
      if (terms.family !== family || isOnTarget({ terms })) continue;
      for (const tally of round.tallies.filter(isHeard)) {
        const { pair, sets } = tally;
        const seconds = secondsOf(round, tally);
        if (seconds === 0) continue;
        const pairs = pairsOf(pair.players);
        pairs.forEach(([a, b], turn) => {
          if (a === b) return; // Only a stranger's file says so.
          // In set j (from 0) of a trio its pair number j mod 3 hits.
          const own = Math.floor((sets - turn + pairs.length - 1) / pairs.length);
          add(a, b, countedAs(terms), own, seconds / 60 / pairs.length);
        });
      }
    }
  }
  return [...records.values()];
}

/** The pairs in which the players hit, in the order of their turns. */
function pairsOf([a = '', b = '', c]: readonly string[]): [string, string][] {
  return c === undefined
    ? [[a, b]]
    : [
        [a, b],
        [b, c],
        [c, a],
      ];
}
