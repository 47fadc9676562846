import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MOST_PAIRS, type Pair } from '../../core/entry.ts';
import { MOST_PLAYERS, pairUp, rePair, swap, turnPartners, turnRoles } from '../../core/pairs.ts';

const squadOf = (count: number) => Array.from({ length: count }, (_, at) => `p${at + 1}`);
const anySquad = fc
  .integer({ min: 2, max: MOST_PLAYERS })
  .chain((count) => fc.shuffledSubarray(squadOf(count), { minLength: count }));
const everyone = (pairs: readonly Pair[]) => pairs.flatMap(({ players }) => players);
const trios = (pairs: readonly Pair[]) => pairs.filter(({ players }) => players.length === 3);
const key = (players: readonly string[]) => players.toSorted().join(' ');

/** Everyone is in exactly once, in pairs and at most one trio, under letters of their own. */
function expectPairs(pairs: readonly Pair[], players: readonly string[]): void {
  expect(everyone(pairs).toSorted()).toEqual(players.toSorted());
  expect(pairs.every((pair) => pair.players.length === 2 || pair.players.length === 3)).toBe(true);
  expect(trios(pairs)).toHaveLength(players.length % 2);
  expect(new Set(pairs.map(({ letter }) => letter)).size).toBe(pairs.length);
  for (const { letter } of pairs) expect(letter).toMatch(/^[A-L]$/);
}

/** So many rounds, partners turned before each but the first. */
function turned(players: readonly string[], rounds: number): Pair[][] {
  const block = [pairUp(players)];
  while (block.length < rounds) block.push(turnPartners(block.at(-1)!));
  return block;
}

describe('pairing up', () => {
  test('puts neighbours together, an odd player into the last pair', () => {
    expect(pairUp(['a', 'b', 'c', 'd', 'e'])).toEqual([
      { letter: 'A', players: ['a', 'b'] },
      { letter: 'B', players: ['c', 'd', 'e'] },
    ]);
    expect(pairUp(['a', 'b', 'c'])).toEqual([{ letter: 'A', players: ['a', 'b', 'c'] }]);
  });

  test('puts everyone in exactly once, and makes a trio only of an odd number', () => {
    fc.assert(fc.property(anySquad, (players) => expectPairs(pairUp(players), players)));
  });

  test.each([0, 1, MOST_PLAYERS + 1])('of %i players is an error', (count) => {
    expect(() => pairUp(squadOf(count))).toThrow(RangeError);
  });

  test('never makes more pairs than a screen has tiles', () => {
    expect(pairUp(squadOf(MOST_PLAYERS))).toHaveLength(MOST_PAIRS);
  });
});

describe('swapping two players', () => {
  const pairs = pairUp(['a', 'b', 'c', 'd', 'e']);

  test('puts each in the place of the other', () => {
    expect(swap(pairs, 'a', 'e').map(({ players }) => players)).toEqual([
      ['e', 'b'],
      ['c', 'd', 'a'],
    ]);
  });

  test('inside a pair turns their roles', () => {
    expect(swap(pairs, 'a', 'b')[0]?.players).toEqual(['b', 'a']);
  });

  test('with one who is not in changes nothing', () => {
    expect(swap(pairs, 'a', 'z')).toEqual(pairs);
    expect(swap(pairs, 'z', 'a')).toEqual(pairs);
  });

  test('twice is as it was, and loses nobody', () => {
    fc.assert(
      fc.property(anySquad, fc.nat(), fc.nat(), (players, one, other) => {
        const before = pairUp(players);
        const pick = (at: number) => players[at % players.length]!;
        const after = swap(before, pick(one), pick(other));
        expectPairs(after, players);
        expect(swap(after, pick(one), pick(other))).toEqual(before);
      }),
    );
  });
});

describe('turning roles', () => {
  test('gives a pair the other role each, and a trio the next place', () => {
    expect(turnRoles(pairUp(['a', 'b', 'c', 'd', 'e'])).map(({ players }) => players)).toEqual([
      ['b', 'a'],
      ['d', 'e', 'c'],
    ]);
  });

  test('keeps every pair, and after two turns (three in a trio) its places too', () => {
    fc.assert(
      fc.property(anySquad, (players) => {
        const before = pairUp(players);
        const once = turnRoles(before);
        expect(once.map((pair) => [pair.letter, key(pair.players)])).toEqual(
          before.map((pair) => [pair.letter, key(pair.players)]),
        );
        const six = Array.from({ length: 6 }).reduce<Pair[]>((pairs) => turnRoles(pairs), before);
        expect(six).toEqual(before);
      }),
    );
  });
});

describe('turning partners', () => {
  test.each([4, 6, 8, 10, 12, 14, 16])(
    'with %i players meets everybody once before anybody twice',
    (count) => {
      const players = squadOf(count);
      const met = new Map(players.map((player) => [player, new Set<string>()]));
      const block = turned(players, count - 1);
      for (const pairs of block) {
        expectPairs(pairs, players);
        for (const {
          players: [one, other],
        } of pairs) {
          met.get(one!)!.add(other!);
          met.get(other!)!.add(one!);
        }
      }
      for (const others of met.values()) expect(others.size).toBe(count - 1);
      expect(
        turnPartners(block.at(-1)!)
          .map((pair) => key(pair.players))
          .toSorted(),
      ).toEqual(block[0]!.map((pair) => key(pair.players)).toSorted());
    },
  );

  test.each([3, 5, 7, 9, 11, 13, 15])(
    'with %i players has a new trio each time, and everyone as its third once',
    (count) => {
      const players = squadOf(count);
      const block = turned(players, count);
      for (const pairs of block) expectPairs(pairs, players);
      const thirds = block.map((pairs) => trios(pairs)[0]!.players[2]);
      expect(thirds.toSorted()).toEqual(players.toSorted());
      if (count > 3) {
        const groups = block.map((pairs) => key(trios(pairs)[0]!.players));
        expect(new Set(groups).size).toBe(count);
      }
    },
  );

  test.each([5, 7, 9, 11, 13, 15])(
    'with %i players meets everybody once in as many rounds, the third of a trio aside',
    (count) => {
      const meetings = turned(squadOf(count), count).flatMap((pairs) =>
        pairs.map(({ players }) => key(players.slice(0, 2))),
      );
      expect(meetings).toHaveLength((count * (count - 1)) / 2);
      expect(new Set(meetings).size).toBe(meetings.length);
    },
  );

  test('of any pairs keeps everyone in exactly once, whichever letter the trio has', () => {
    fc.assert(
      fc.property(anySquad, fc.nat(), (players, trio) => {
        const pairs = pairUp(players);
        const at = trio % pairs.length;
        const third = pairs.at(-1)!.players.splice(2);
        pairs[at]!.players.push(...third);
        expectPairs(turnPartners(pairs), players);
      }),
    );
  });

  test('gives everybody someone new the first time already', () => {
    fc.assert(
      fc.property(anySquad, (players) => {
        fc.pre(players.length > 3);
        const before = new Set(pairUp(players).map((pair) => key(pair.players.slice(0, 2))));
        for (const pair of turnPartners(pairUp(players))) {
          expect(before.has(key(pair.players.slice(0, 2)))).toBe(false);
        }
      }),
    );
  });
});

describe('pairing again after some came and some left', () => {
  const pairs = pairUp(['a', 'b', 'c', 'd', 'e', 'f']);
  const shown = (here: string) =>
    rePair(pairs, [...here])?.map(({ letter, players }) => `${letter}:${players.join('')}`);

  test('changes nothing where nobody did', () => {
    expect(shown('abcdef')).toEqual(['A:ab', 'B:cd', 'C:ef']);
  });

  test('keeps a pair and its letter where both are here', () => {
    expect(shown('abef')).toEqual(['A:ab', 'C:ef']);
  });

  test('puts one who was left over with a newcomer', () => {
    expect(shown('abcefx')).toEqual(['A:ab', 'B:cx', 'C:ef']);
  });

  test('puts two who were left over together', () => {
    expect(shown('acef')).toEqual(['A:ac', 'C:ef']);
  });

  test('makes a trio of one who is left over alone', () => {
    expect(shown('abcef')).toEqual(['A:ab', 'C:efc']);
  });

  test('frees the third of a trio for one who is left over', () => {
    const odd = pairUp(['a', 'b', 'c', 'd', 'e']);
    expect(rePair(odd, ['a', 'b', 'c', 'd', 'e', 'x'])).toEqual([
      { letter: 'A', players: ['a', 'b'] },
      { letter: 'B', players: ['c', 'd'] },
      { letter: 'C', players: ['e', 'x'] },
    ]);
  });

  test('of fewer than two is undefined', () => {
    expect(rePair(pairs, [])).toBeUndefined();
    expect(rePair(pairs, ['a'])).toBeUndefined();
  });

  test('of more than the tiles of a screen is an error', () => {
    expect(() => rePair(pairs, squadOf(MOST_PLAYERS + 1))).toThrow(RangeError);
  });

  const anyChange = anySquad.chain((players) =>
    fc.record({
      before: fc.constant(pairUp(players)),
      stay: fc.subarray(players),
      come: fc.subarray(squadOf(MOST_PLAYERS).map((player) => `new-${player}`)),
    }),
  );

  test('puts everyone here in exactly once, whoever came and left', () => {
    fc.assert(
      fc.property(anyChange, ({ before, stay, come }) => {
        const here = [...stay, ...come].slice(0, MOST_PLAYERS);
        fc.pre(here.length >= 2);
        expectPairs(rePair(before, here)!, here);
      }),
    );
  });

  test('parts no two partners who are both here, but to free a third', () => {
    fc.assert(
      fc.property(anyChange, ({ before, stay, come }) => {
        const here = [...stay, ...come].slice(0, MOST_PLAYERS);
        fc.pre(here.length >= 2);
        const after = rePair(before, here)!;
        for (const { letter, players } of before) {
          const left = players.filter((player) => here.includes(player));
          if (left.length < 2) continue;
          const now = after.find((pair) => pair.letter === letter)!.players;
          expect(now.slice(0, 2)).toEqual(left.slice(0, 2));
        }
      }),
    );
  });

  test('lets one of an even number leave and come again, and all partners are as before', () => {
    fc.assert(
      fc.property(anySquad, fc.nat(), (players, at) => {
        fc.pre(players.length > 2 && players.length % 2 === 0);
        const before = pairUp(players);
        const gone = players[at % players.length]!;
        const without = rePair(
          before,
          players.filter((player) => player !== gone),
        )!;
        const again = rePair(without, players)!;
        const changed = before.filter(
          (pair) => !again.some((other) => key(other.players) === key(pair.players)),
        );
        expect(changed).toEqual([]);
      }),
    );
  });
});
