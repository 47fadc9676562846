import type { Drill } from '../drill/drill.ts';
import type { Entry } from '../ledger/entry.ts';
import { foldMerges } from '../ledger/merges.ts';

/** What the coach asked for at the next practice. */
export interface NextAsks {
  /** By their ids, in the order in which they were asked for. */
  drills: string[];
  pairs: [string, string][];
}

/**
 * What was asked for and stands: said after the last practice that is over was opened, and not taken
 * back. Once a further practice is over it has had its chance, and is gone.
 *
 * @param entries sorted by id
 * @param since the stamp with which the last practice that is over was opened; '' where there is none
 */
export function nextAsks(entries: readonly Entry[], since: string): NextAsks {
  const merges = foldMerges(entries);
  const who = (player: string) => merges.get(player) ?? player;
  const drills = new Set<string>();
  const pairs = new Map<string, [string, string]>();
  for (const entry of entries) {
    if (entry.kind !== 'next-asked' || entry.id <= since) continue;
    const { drill, a, b, on } = entry;
    if (drill !== undefined) {
      if (on) drills.add(drill);
      else drills.delete(drill);
    }
    if (a !== undefined && b !== undefined && who(a) !== who(b)) {
      const pair: [string, string] = [who(a), who(b)];
      const key = JSON.stringify(pair.toSorted());
      if (on) pairs.set(key, pair);
      else pairs.delete(key);
    }
  }
  return { drills: [...drills], pairs: [...pairs.values()] };
}

/**
 * The drills that a block can be proposed of so that what was asked for is in it: of a family with an
 * asked drill that one only.
 */
export function withAsked(drills: readonly Drill[], asked: readonly string[]): Drill[] {
  const families = new Set(
    drills.filter(({ id }) => asked.includes(id)).map(({ family }) => family),
  );
  return drills.filter(({ id, family }) => !families.has(family) || asked.includes(id));
}
