import { MOST_PAIRS, type Pair } from './pair.ts';

const LETTERS = 'ABCDEFGHIJKL';

/** Fewest players that make a pair, and most that fit on the tiles of one screen. */
export const FEWEST_PLAYERS = 2;
export const MOST_PLAYERS = 2 * MOST_PAIRS;

/** The players of the pairs, lettered A, B, C … */
export const lettered = (groups: readonly (readonly string[])[]): Pair[] =>
  groups.map((players, index) => ({ letter: LETTERS[index] ?? '', players: [...players] }));

/**
 * Puts everyone into pairs in the order given; an odd player makes the last pair a trio.
 *
 * @throws RangeError for fewer than two players or more than twenty-four
 */
export function pairUp(players: readonly string[]): Pair[] {
  if (players.length < FEWEST_PLAYERS || players.length > MOST_PLAYERS) {
    throw new RangeError(`players: ${players.length} do not make pairs`);
  }
  const groups: string[][] = [];
  for (let place = 0; place + 1 < players.length; place += 2) {
    groups.push(players.slice(place, place + 2));
  }
  if (players.length % 2 === 1) groups.at(-1)?.push(players.at(-1) ?? '');
  return lettered(groups);
}

/** The pairs with two players in each other's places; as they were where one of them is not in. */
export function swap(pairs: readonly Pair[], one: string, other: string): Pair[] {
  const there = new Set(pairs.flatMap((pair) => pair.players));
  if (!there.has(one) || !there.has(other)) return [...pairs];
  const exchange = (player: string) => (player === one ? other : player === other ? one : player);
  return pairs.map((pair) => ({ ...pair, players: pair.players.map(exchange) }));
}

/**
 * The pairs with another player in the place of one: they swap where both are in, and one who was
 * not in comes in.
 */
export const withPlayer = (pairs: readonly Pair[], one: string, other: string): Pair[] =>
  pairs.some(({ players }) => players.includes(other))
    ? swap(pairs, one, other)
    : pairs.map((pair) => ({
        ...pair,
        players: pair.players.map((player) => (player === one ? other : player)),
      }));

/**
 * The pairs after some came and some left: pairs of which both are here stay together; whoever was
 * left over goes with a newcomer, with the trio's third, or makes a trio. A pair that stays keeps
 * its letter. Undefined where fewer than two are here.
 *
 * @throws RangeError for more than twenty-four players
 */
export function rePair(pairs: readonly Pair[], here: readonly string[]): Pair[] | undefined {
  if (here.length < FEWEST_PLAYERS) return undefined;
  const { kept, loose } = staying(pairs, here);
  const groups: string[][] = [];
  while (loose.length >= 2) groups.push(loose.splice(0, 2));
  const [single] = loose;
  if (single !== undefined) {
    const trio = kept.find((pair) => pair.players.length === 3);
    if (trio) groups.push([...trio.players.splice(2), single]);
    else (groups.at(-1) ?? kept.at(-1)?.players)?.push(single);
  }
  return joined(kept, groups);
}

/**
 * The pairs, and the trio, of which two or all three are here, without those who have left; and
 * everyone else who is here.
 *
 * @throws RangeError for more than twenty-four players
 */
export function staying(
  pairs: readonly Pair[],
  here: readonly string[],
): { kept: Pair[]; loose: string[] } {
  if (here.length > MOST_PLAYERS) {
    throw new RangeError(`here: ${here.length} players are more than the tiles`);
  }
  const isHere = new Set(here);
  const kept: Pair[] = [];
  const loose: string[] = [];
  for (const pair of pairs) {
    const players = pair.players.filter((player) => isHere.delete(player));
    if (players.length >= 2) kept.push({ letter: pair.letter, players });
    else loose.push(...players);
  }
  loose.push(...here.filter((player) => isHere.has(player)));
  return { kept, loose };
}

/** The first letter that no pair has; undefined where all are taken. */
export const freeLetter = (pairs: readonly Pair[]): string | undefined =>
  [...LETTERS].find((letter) => pairs.every((pair) => pair.letter !== letter));

/** Pairs that stay, and new ones under letters that are free, in the order of their letters. */
export function joined(kept: readonly Pair[], groups: readonly (readonly string[])[]): Pair[] {
  const taken = new Set(kept.map((pair) => pair.letter));
  const free = [...LETTERS].filter((letter) => !taken.has(letter));
  const added = groups.map((players, at) => ({ letter: free[at] ?? '', players: [...players] }));
  return [...kept, ...added].sort((a, b) => (a.letter < b.letter ? -1 : 1));
}
