import type { PairCosts } from './pair-cost.ts';
import { cheapestPairs } from './round-robin.ts';

/**
 * Everyone in a pair, an odd number with one trio, so that all costs together are least. Exact, and
 * always the same for the same costs.
 *
 * With an odd number every trio is a candidate, and its cost that of the trio and of the cheapest
 * pairs of all others. They are tried in the order of what they cost at least, until no other can be
 * cheaper. That bound gives each player a share such that no two shares come to more than the cost
 * of those two as a pair (a solution of the dual program), so the shares of all others come to no
 * more than any pairs of them.
 *
 * @param costs of as many players as `costs.pair` has rows
 * @returns places of players, rising in each pair or trio
 * @throws RangeError for fewer than two players
 */
export function cheapestGroups(costs: PairCosts): number[][] {
  const players = costs.pair.map((_, at) => at);
  if (players.length < 2) throw new RangeError(`players: ${players.length} do not make pairs`);
  if (players.length % 2 === 0) return pairsOf(players, costs).groups;

  const shares = sharesOf(costs.pair);
  const all = shares.reduce((sum, share) => sum + share, 0);
  let best: { groups: number[][]; cost: number } | undefined;
  for (const { trio, cost, least } of triosOf(players)
    .map((trio) => {
      const cost = costs.trio(...trio);
      return { trio, cost, least: cost + all - trio.reduce((sum, at) => sum + shares[at]!, 0) };
    })
    .sort((a, b) => a.least - b.least)) {
    if (best && least >= best.cost) break;
    const rest = pairsOf(
      players.filter((at) => !trio.includes(at)),
      costs,
    );
    if (!best || rest.cost + cost < best.cost) {
      best = { groups: [...rest.groups, trio], cost: rest.cost + cost };
    }
  }
  return best!.groups;
}

function pairsOf(players: readonly number[], { pair }: PairCosts) {
  const table = players.map((a) => players.map((b) => pair[a]![b]!));
  // All costs are finite, so there is always a way to pair everyone.
  const groups = cheapestPairs(table)!.map(([a, b]) => [players[a]!, players[b]!]);
  return { groups, cost: groups.reduce((sum, [a, b]) => sum + pair[a!]![b!]!, 0) };
}

function triosOf(players: readonly number[]): [number, number, number][] {
  return players.flatMap((a) =>
    players
      .slice(a + 1)
      .flatMap((b) => players.slice(b + 1).map((c): [number, number, number] => [a, b, c])),
  );
}

/** How often shares are raised by what is left; more hardly helps. */
const PASSES = 3;

/** A share of each player, no two of which come to more than the cost of the two. */
function sharesOf(pair: readonly (readonly number[])[]): number[] {
  const least = (row: readonly number[], own: number, left: (cost: number, at: number) => number) =>
    Math.min(...row.map((cost, at) => (at === own ? Number.POSITIVE_INFINITY : left(cost, at))));
  const shares = pair.map((row, own) => least(row, own, (cost) => cost / 2));
  for (let pass = 0; pass < PASSES; pass += 1) {
    for (const [own, row] of pair.entries()) {
      shares[own] = least(row, own, (cost, at) => cost - shares[at]!);
    }
  }
  return shares;
}
