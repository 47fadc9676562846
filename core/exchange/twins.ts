import { bothOf, type OneOrTwo } from '../ledger/merges.ts';
import type { Player } from '../ledger/squad.ts';
import type { Summary } from '../ledger/summary.ts';

/** Two players who may be one child, typed on two phones: the one who was there first is `into`. */
export interface Twins {
  player: string;
  into: string;
}

/**
 * Who may be one child: names that people would read as the same, accents and spaces aside, of two
 * who were never present at one practice. What the coach said of two stands.
 *
 * @param squad in the order in which its players were added
 */
export function twins(
  squad: Iterable<Player>,
  summaries: readonly Summary[],
  said: ReadonlyMap<string, OneOrTwo>,
): Twins[] {
  const first = new Map<string, Player>();
  const found: Twins[] = [];
  const days = new Map<string, Set<string>>();
  for (const { practice, attended } of summaries) {
    for (const player of attended) days.set(player, (days.get(player) ?? new Set()).add(practice));
  }
  const met = (one: string, other: string) =>
    [...(days.get(one) ?? [])].some((practice) => days.get(other)?.has(practice));
  for (const player of squad) {
    const name = plain(player.name);
    const before = first.get(name);
    if (!before) first.set(name, player);
    else if (!said.has(bothOf(player.id, before.id)) && !met(player.id, before.id)) {
      found.push({ player: player.id, into: before.id });
    }
  }
  return found;
}

const plain = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/[\p{M}\s.]/gu, '')
    .toLowerCase();
