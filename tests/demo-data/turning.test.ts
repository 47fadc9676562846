import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Pair } from '../../core/round/pair.ts';
import { pairUp } from '../../core/round/pairs.ts';
import { turnPartners, turnRoles } from '../../demo-data/turning.ts';
import { anySquad, expectPairs, key, squadOf, trios } from '../core/any-pairs.ts';

/** So many rounds, partners turned before each but the first. */
function turned(players: readonly string[], rounds: number): Pair[][] {
  const block = [pairUp(players)];
  while (block.length < rounds) block.push(turnPartners(block.at(-1)!));
  return block;
}

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
