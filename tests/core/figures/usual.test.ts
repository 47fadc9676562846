import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ownDay, pairUsual } from '../../../core/figures/usual.ts';
import { median } from '../../../core/median.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';

describe('the median', () => {
  test('of no values is undefined', () => {
    expect(median([])).toBeUndefined();
  });

  test('is the middle value, or the mean of the middle two', () => {
    expect(median([7])).toBe(7);
    expect(median([9, 1, 10])).toBe(9);
    expect(median([4, 1, 100, 2])).toBe(3);
  });

  test('of what is not a number is an error', () => {
    expect(() => median([1, Number.NaN])).toThrow(RangeError);
  });

  test('has as many values on either side of it, and leaves them in their order', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1 }), (values) => {
        const given = [...values];
        const middle = median(values)!;
        expect(values).toEqual(given);
        const half = values.length / 2;
        expect(values.filter((value) => value < middle).length).toBeLessThanOrEqual(half);
        expect(values.filter((value) => value > middle).length).toBeLessThanOrEqual(half);
      }),
    );
  });
});

describe("a pair's usual", () => {
  const terms = termsWith();
  const day = (date: string, sets: number, seconds = 120, players = ['a', 'b'], over = terms) =>
    practiceWith(date, [roundWith(0, over, [[players, sets]], seconds)]);

  test('without an earlier round is undefined', () => {
    expect(pairUsual([], terms, ['a', 'b'], 120)).toBeUndefined();
  });

  test('is the median of its rounds, scaled to the length asked for', () => {
    const history = [day('2026-03-02', 4), day('2026-03-03', 9, 180), day('2026-03-04', 1, 60)];
    expect(pairUsual(history, terms, ['a', 'b'], 60)).toBe(2);
    expect(pairUsual(history, terms, ['a', 'b'], 120)).toBe(4);
  });

  test('is the same whichever of them comes first', () => {
    const history = [day('2026-03-02', 4), day('2026-03-03', 6, 120, ['b', 'a'])];
    expect(pairUsual(history, terms, ['b', 'a'], 120)).toBe(5);
  });

  test.each([
    ['other players', day('2026-03-02', 4, 120, ['a', 'c'])],
    ['a trio with both of them', day('2026-03-02', 4, 120, ['a', 'b', 'c'])],
    ['another drill', day('2026-03-02', 4, 120, ['a', 'b'], lobTerms)],
    ['another size', day('2026-03-02', 4, 120, ['a', 'b'], termsWith({ size: 20 }))],
    [
      'another counting rule',
      day('2026-03-02', 4, 120, ['a', 'b'], termsWith({ rule: 'in-total' })),
    ],
    ['a round without live clock', day('2026-03-02', 4, 0)],
  ])('leaves out %s', (_, other) => {
    expect(pairUsual([other], terms, ['a', 'b'], 120)).toBeUndefined();
  });

  test.each([-1, Number.NaN])('of %s seconds is an error', (seconds) => {
    expect(() => pairUsual([], terms, ['a', 'b'], seconds)).toThrow(RangeError);
  });
});

describe("a player's own day", () => {
  const terms = termsWith({ size: 4 });
  const day = (date: string, ...rounds: [sets: number, seconds: number][]) =>
    practiceWith(
      date,
      rounds.map(([sets, seconds], ordinal) =>
        roundWith(ordinal, terms, [[['a', 'b'], sets]], seconds),
      ),
    );

  test('is empty for one who did not play', () => {
    expect(ownDay([], day('2026-03-09', [1, 120]), 'c')).toEqual([]);
  });

  test('is one value a drill and size, however many rounds, in the order of play', () => {
    const today = practiceWith('2026-03-09', [
      roundWith(0, terms, [[['a', 'b'], 3]]),
      roundWith(1, lobTerms, [[['b', 'a'], 5]], 60),
      roundWith(2, terms, [[['a', 'c'], 2]], 60),
      roundWith(3, termsWith({ size: 6 }), [[['a', 'b'], 1]]),
      roundWith(4, serveTerms, [[['b', 'a'], { a: 7, b: 1 }]], 30),
    ]);
    expect(ownDay([], today, 'a')).toEqual([
      { drill: 'rally', terms, sets: 5, touches: 10, seconds: 180 },
      { drill: 'lob', terms: lobTerms, sets: 5, touches: 5, seconds: 60 },
      { drill: 'rally', terms: termsWith({ size: 6 }), sets: 1, touches: 3, seconds: 120 },
      { drill: 'serve', terms: serveTerms, sets: 7, touches: 7, seconds: 30 },
    ]);
  });

  test('without an earlier practice has no usual, no best and nothing beaten', () => {
    const [work] = ownDay([], day('2026-03-09', [3, 120]), 'a');
    expect([work?.usual, work?.best, work?.beaten]).toEqual([undefined, undefined, undefined]);
  });

  test('is held beside the median and the best practice, each scaled to today', () => {
    const history = [
      day('2026-03-02', [1, 60], [2, 60]),
      day('2026-03-04', [10, 240]),
      day('2026-03-06', [4, 240]),
    ];
    const [work] = ownDay(history, day('2026-03-09', [4, 120]), 'a');
    expect(work).toMatchObject({ sets: 4, usual: 3, best: 5, beaten: false });
  });

  test('an equal practice is not beaten, one set more is', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 40 }),
        fc.integer({ min: 1, max: 600 }),
        (sets, seconds) => {
          const history = [day('2026-03-02', [sets, seconds])];
          expect(ownDay(history, day('2026-03-09', [sets, seconds]), 'a')[0]?.beaten).toBe(false);
          expect(ownDay(history, day('2026-03-09', [sets + 1, seconds]), 'a')[0]?.beaten).toBe(
            true,
          );
        },
      ),
    );
  });

  test('has the sets of both pairs for one who went on with others in mid-round', () => {
    const round = roundWith(0, terms, [
      [['a', 'b'], 2],
      [['c', 'd', 'a'], 3],
    ]);
    round.tallies[0]!.span = { from: 0, to: 30 };
    round.tallies[1]!.span = { from: 30, to: 120 };
    // In the trio a hits in the second and the third set of three, for two thirds of its 90 s.
    expect(ownDay([], practiceWith('2026-03-09', [round]), 'a')).toEqual([
      { drill: 'rally', terms, sets: 4, touches: 8, seconds: 90 },
    ]);
  });

  test('counts a trio by the sets and the clock of the player alone', () => {
    const trio = practiceWith('2026-03-02', [roundWith(0, terms, [[['a', 'b', 'c'], 6]])]);
    const [work] = ownDay([trio], day('2026-03-09', [6, 120]), 'a');
    expect(work?.usual).toBeCloseTo(6, 9); // 4 sets in 80 s
  });

  test('today in the history is passed over, and so is a practice without live clock', () => {
    const today = day('2026-03-09', [3, 120]);
    const [work] = ownDay([today, day('2026-03-02', [3, 0])], today, 'a');
    expect(work).not.toHaveProperty('usual');
  });

  test('without live clock today has nothing to be held beside', () => {
    const [work] = ownDay([day('2026-03-02', [3, 120])], day('2026-03-09', [1, 0]), 'a');
    expect(work).not.toHaveProperty('usual');
  });
});
