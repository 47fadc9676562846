import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countingRules, strokes, type Terms } from '../../../core/drill/drill.ts';
import {
  addTouches,
  restingIn,
  shares,
  sumTouches,
  type Touches,
  touchesInSet,
} from '../../../core/figures/counted.ts';
import { lobTerms, serveTerms, termsWith } from '../made.ts';

const tallied = (players: string[], sets: number, byPlayer?: Record<string, number>) => ({
  pair: { letter: 'A', players },
  sets,
  ...(byPlayer && { byPlayer }),
});

const shots = fc.array(
  fc.record({
    role: fc.constantFrom(0 as const, 1 as const),
    stroke: fc.constantFrom(...strokes),
  }),
  { minLength: 1, maxLength: 12 },
);
const anyTerms = fc
  .record({
    rule: fc.constantFrom(...countingRules.filter((rule) => rule !== 'on-target')),
    size: fc.integer({ min: 1, max: 50 }),
    shots,
  })
  .map(({ rule, size, shots }) =>
    termsWith({ rule, shots, size: rule === 'sequence' ? shots.length : size }),
  );
const anySets = fc.nat(60);

/** Plays every shot of every set, the players of a trio changing places on the court. */
function playedOut(terms: Terms, players: readonly string[], sets: number) {
  const struck = new Map(players.map((player) => [player, {} as Touches]));
  const took = new Map(players.map((player) => [player, 0]));
  const rested = new Map(players.map((player) => [player, 0]));
  let [first, second, third] = players as [string, string, string?];
  for (let set = 0; set < sets; set++) {
    for (let shot = 0; shot < terms.size; shot++) {
      const { role, stroke } = terms.shots[shot % terms.shots.length]!;
      addTouches(struck.get(role === 0 ? first : second)!, { [stroke]: 1 });
    }
    took.set(first, took.get(first)! + 1);
    took.set(second, took.get(second)! + 1);
    if (third !== undefined) {
      rested.set(third, rested.get(third)! + 1);
      // Who hit first steps out, who hit second begins, who rested comes in.
      [first, second, third] = [second, third, first];
    }
  }
  return { struck, took, rested };
}

describe('the touches of one set', () => {
  test('are struck in turn, and the side that begins has the extra one of an odd size', () => {
    const terms = termsWith({ size: 7 });
    expect(touchesInSet(terms, 0)).toEqual({ groundstroke: 4 });
    expect(touchesInSet(terms, 1)).toEqual({ groundstroke: 3 });
  });

  test("of a sequence are each role's own shots", () => {
    expect(touchesInSet(lobTerms, 0)).toEqual({ lob: 1 });
    expect(touchesInSet(lobTerms, 1)).toEqual({ overhead: 1 });
  });

  test('of both roles are the size of the set', () => {
    fc.assert(
      fc.property(anyTerms, (terms) => {
        const both = sumTouches(touchesInSet(terms, 0)) + sumTouches(touchesInSet(terms, 1));
        expect(both).toBe(terms.size);
      }),
    );
  });
});

describe('the shares of a pair', () => {
  test('are all its sets for both, each with own touches, for the whole clock', () => {
    expect(shares(termsWith({ size: 5 }), tallied(['a', 'b'], 4), 120)).toEqual([
      { player: 'a', sets: 4, touches: { groundstroke: 12 }, time: 1 },
      { player: 'b', sets: 4, touches: { groundstroke: 8 }, time: 1 },
    ]);
  });

  test('without a set have no touches', () => {
    expect(shares(termsWith(), tallied(['a', 'b'], 0), 120)).toEqual([
      { player: 'a', sets: 0, touches: {}, time: 1 },
      { player: 'b', sets: 0, touches: {}, time: 1 },
    ]);
  });
});

describe('the shares of a trio', () => {
  test('turn after each set', () => {
    expect(shares(lobTerms, tallied(['a', 'b', 'c'], 4), 120)).toEqual([
      { player: 'a', sets: 3, touches: { lob: 2, overhead: 1 }, time: 2 / 3 },
      { player: 'b', sets: 3, touches: { lob: 1, overhead: 2 }, time: 2 / 3 },
      { player: 'c', sets: 2, touches: { lob: 1, overhead: 1 }, time: 2 / 3 },
    ]);
  });

  test('have the one rest whose turn it is, set by set', () => {
    const trio = ['a', 'b', 'c'];
    for (let set = 0; set < 9; set++) {
      const until = playedOut(lobTerms, trio, set).rested;
      const after = playedOut(lobTerms, trio, set + 1).rested;
      const resting = trio.filter((player) => after.get(player)! > until.get(player)!);
      expect([restingIn(trio, set)]).toEqual(resting);
      expect(restingIn(['a', 'b'], set)).toBeUndefined();
    }
  });

  test('let everyone rest as often as the others, to within one set', () => {
    fc.assert(
      fc.property(anyTerms, anySets, (terms, sets) => {
        const own = shares(terms, tallied(['a', 'b', 'c'], sets), 120).map((share) => share.sets);
        expect(Math.max(...own) - Math.min(...own)).toBeLessThanOrEqual(1);
        if (sets % 3 === 0) expect(own).toEqual([(2 * sets) / 3, (2 * sets) / 3, (2 * sets) / 3]);
      }),
    );
  });
});

describe('the shares of any tally', () => {
  const anyPlayers = fc.constantFrom<string[][]>(['a', 'b'], ['a', 'b', 'c']);

  test('are what a player strikes who plays every shot', () => {
    fc.assert(
      fc.property(anyTerms, anyPlayers, anySets, (terms, players, sets) => {
        const { struck, took, rested } = playedOut(terms, players, sets);
        for (const share of shares(terms, tallied(players, sets), 120)) {
          expect(share.touches).toEqual(struck.get(share.player));
          expect(share.sets).toBe(took.get(share.player));
          expect(share.sets + rested.get(share.player)!).toBe(sets);
        }
      }),
    );
  });

  test('share out every touch of every set exactly', () => {
    fc.assert(
      fc.property(anyTerms, anyPlayers, anySets, (terms, players, sets) => {
        const all = shares(terms, tallied(players, sets), 120);
        const touches = all.reduce((sum, share) => sum + sumTouches(share.touches), 0);
        expect(touches).toBe(terms.size * sets);
        expect(all.reduce((sum, share) => sum + share.sets, 0)).toBe(2 * sets);
        expect(all.reduce((sum, share) => sum + share.time, 0)).toBeCloseTo(2, 12);
      }),
    );
  });
});

describe('the shares on target', () => {
  test('are one touch a set, for the player who struck it', () => {
    expect(shares(serveTerms, tallied(['a', 'b'], 5, { a: 5, b: 0 }), 120)).toEqual([
      { player: 'a', sets: 5, touches: { serve: 5 }, time: 1 },
      { player: 'b', sets: 0, touches: {}, time: 1 },
    ]);
  });

  test('of a player whom nobody counted are none', () => {
    expect(shares(serveTerms, tallied(['a', 'b'], 0), 120).map(({ sets }) => sets)).toEqual([0, 0]);
  });
});

describe('touches', () => {
  test('of nothing sum to nothing', () => {
    expect(sumTouches({})).toBe(0);
  });

  test('are added stroke by stroke', () => {
    const touches: Touches = { lob: 2 };
    addTouches(touches, { lob: 1, serve: 4 });
    expect(touches).toEqual({ lob: 3, serve: 4 });
    expect(sumTouches(touches)).toBe(7);
  });
});
