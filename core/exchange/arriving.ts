import type { AnyEntry } from '../ledger/entry.ts';
import { foldErased } from '../ledger/erased.ts';
import { isPractised } from '../ledger/join.ts';
import { phoneOf } from '../ledger/stamp.ts';

/** What one phone wrote of what arrives. */
export interface FromPhone {
  /** Its name of ten letters; '' for an earlier version, which told none. */
  phone: string;
  entries: number;
  /** Rounds in which it set, started or counted anything. */
  rounds: number;
  marks: number;
}

/** What a file or a code brings that is not here yet, as a coach looks at it before it is kept. */
export interface Arriving {
  entries: number;
  /** Those who wrote the most first. */
  phones: FromPhone[];
  practices: number;
  rounds: number;
  marks: number;
  /** Players whose names are new here. */
  players: string[];
  /** Players and practices of this ledger that another person's entries would erase. */
  erases: { players: string[]; practices: string[] };
}

/**
 * @param fresh entries that are not here yet
 * @param players who are in the squad here
 * @param practices that are here
 */
export function arriving(
  fresh: readonly AnyEntry[],
  players: ReadonlySet<string>,
  practices: ReadonlySet<string>,
): Arriving {
  const by = new Map<string, AnyEntry[]>();
  for (const entry of fresh) {
    const phone = phoneOf(entry.id);
    const own = by.get(phone);
    if (own) own.push(entry);
    else by.set(phone, [entry]);
  }
  const erased = foldErased(fresh);
  return {
    entries: fresh.length,
    phones: [...by]
      .map(([phone, own]) => ({ phone, ...sizeOf(own) }))
      .sort((a, b) => b.entries - a.entries || (a.phone < b.phone ? -1 : 1)),
    practices: new Set(fresh.filter(isPractised).map(({ practice }) => practice)).size,
    rounds: sizeOf(fresh).rounds,
    marks: sizeOf(fresh).marks,
    players: [
      ...new Set(
        fresh.flatMap(({ kind, player }) =>
          kind === 'player-added' && !players.has(String(player)) ? [String(player)] : [],
        ),
      ),
    ],
    erases: {
      players: [...erased.players].filter((player) => players.has(player)),
      practices: [...erased.practices].filter((practice) => practices.has(practice)),
    },
  };
}

const sizeOf = (entries: readonly AnyEntry[]) => ({
  entries: entries.length,
  rounds: new Set(entries.flatMap(({ round }) => (typeof round === 'string' ? [round] : []))).size,
  marks: entries.filter(({ kind }) => kind === 'mark').length,
});
