import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MOST_PAIRS } from '../../../core/round/pair.ts';
import { MOST_PLAYERS, pairUp, rePair, swap } from '../../../core/round/pairs.ts';
import { anySquad, expectPairs, key, squadOf } from '../any-pairs.ts';

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
