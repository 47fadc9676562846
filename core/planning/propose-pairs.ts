import type { Wish } from '../ledger/wishes.ts';
import type { Pair } from '../round/pair.ts';
import { FEWEST_PLAYERS, joined, lettered, MOST_PLAYERS, staying } from '../round/pairs.ts';
import { cheapestGroups } from './cheapest-groups.ts';
import { type PairCosts, type Pairing, pairCosts } from './pair-cost.ts';

export interface PairProposal {
  pairs: Pair[];
  /** Wishes for two who are here that could not be kept, or not all at once. */
  broken: Wish[];
}

/**
 * The pairs that cost least (see pair-cost.ts), with one trio of an odd number; exact, and the same
 * each time. Pairs are lettered, and the players in each ordered, as `here` has them.
 *
 * @returns undefined where fewer than two are here
 * @throws RangeError for more than twenty-four players
 */
export function proposePairs(pairing: Pairing): PairProposal | undefined {
  const { here, wishes } = pairing;
  if (here.length < FEWEST_PLAYERS) return undefined;
  if (here.length > MOST_PLAYERS) {
    throw new RangeError(`here: ${here.length} players are more than the tiles`);
  }
  const groups = cheapestGroups(pairCosts(pairing)).sort(([a], [b]) => a! - b!);
  const pairs = lettered(groups.map((group) => group.map((at) => here[at]!)));
  return { pairs, broken: brokenBy(pairs, wishes) };
}

/**
 * The pairs after some came and some left: all who still have their partner keep him, and the
 * letter. The others go together so that it costs least (see pair-cost.ts); a single one joins the
 * pair, or takes one out of the trio, where that costs least.
 *
 * @param before the pairs as they stood
 * @returns undefined where fewer than two are here
 * @throws RangeError for more than twenty-four players
 */
export function proposeChange(pairing: Pairing, before: readonly Pair[]): PairProposal | undefined {
  const { here, wishes } = pairing;
  if (here.length < FEWEST_PLAYERS) return undefined;
  const { kept, loose } = staying(before, here);
  const costs = pairCosts(pairing);
  const places = new Map(here.map((player, at) => [player, at]));
  const costOf = ({ players }: Pick<Pair, 'players'>) => {
    const [a, b, c] = players.map((player) => places.get(player)!);
    return c === undefined ? costs.pair[a!]![b!]! : costs.trio(a!, b!, c);
  };
  const total = (pairs: readonly Pair[]) => pairs.reduce((sum, pair) => sum + costOf(pair), 0);

  /** The pairs with all these among themselves. */
  const together = (stay: readonly Pair[], players: readonly string[]): Pair[] => {
    if (players.length === 0) return [...stay];
    const own = players.map((player) => places.get(player)!);
    const groups = cheapestGroups(among(own, costs));
    return joined(
      stay,
      groups.map((group) => group.map((at) => players[at]!)),
    );
  };
  const changes = [];
  const trio = kept.find(({ players }) => players.length === 3);
  if (loose.length % 2 === 0 || (loose.length > 2 && !trio)) {
    changes.push(together(kept, loose));
  } else if (trio) {
    for (const freed of trio.players) {
      const two = { ...trio, players: trio.players.filter((player) => player !== freed) };
      changes.push(
        together(
          kept.map((pair) => (pair === trio ? two : pair)),
          [freed, ...loose],
        ),
      );
    }
  } else {
    for (const host of kept) {
      const three = { ...host, players: [...host.players, ...loose] };
      changes.push(kept.map((pair) => (pair === host ? three : pair)));
    }
  }
  const pairs = changes.reduce((best, change) => (total(change) < total(best) ? change : best));
  return { pairs, broken: brokenBy(pairs, wishes) };
}

/** The costs of some of the players, by their places in the list of all. */
const among = (own: readonly number[], { pair, trio }: PairCosts): PairCosts => ({
  pair: own.map((a) => own.map((b) => pair[a]![b]!)),
  trio: (a, b, c) => trio(own[a]!, own[b]!, own[c]!),
});

function brokenBy(pairs: readonly Pair[], wishes: readonly Wish[]): Wish[] {
  const pairOf = (player: string) => pairs.find(({ players }) => players.includes(player));
  return wishes.filter(({ a, b, wish }) => {
    const [one, other] = [pairOf(a), pairOf(b)];
    return one && other && (one === other) !== (wish === 'together');
  });
}
