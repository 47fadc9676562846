import { describe, expect, test } from 'vitest';
import { pairStints, playerStints } from '../../../core/figures/stints.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const approach = termsWith({
  drill: 'approach',
  rule: 'sequence',
  size: 3,
  shots: [
    { role: 0, stroke: 'groundstroke' },
    { role: 1, stroke: 'groundstroke' },
    { role: 0, stroke: 'volley' },
  ],
});
const only = (round: ReturnType<typeof roundWith>, date = '2026-03-02') =>
  playerStints([practiceWith(date, [round])]);
const parts = (round: ReturnType<typeof roundWith>) =>
  [...only(round).values()].map(([stint]) => stint?.part);

describe('a player’s stint', () => {
  test('of nothing played is none', () => {
    expect(playerStints([]).size).toBe(0);
    expect(playerStints([practiceWith('2026-03-02', [])]).size).toBe(0);
  });

  test('has own sets, own touches, own clock, and the pair’s estimate', () => {
    const estimate = estimateWith(56, 5);
    const round = estimatedRound(roundWith(0, termsWith({ size: 5 }), [[['a', 'b'], 3]]), estimate);
    const [stint] = only(round).get('a') ?? [];
    expect(stint).toMatchObject({
      date: '2026-03-02',
      players: ['a', 'b'],
      sets: 3,
      counted: 9,
      seconds: 120,
      estimate,
      success: estimate.success,
    });
  });

  test('stands in the order of play', () => {
    const season = ['2026-03-02', '2026-03-04'].map((date) =>
      practiceWith(date, [
        roundWith(0, termsWith(), [[['a', 'b'], 1]]),
        roundWith(1, lobTerms, [[['b', 'a'], 2]]),
      ]),
    );
    expect(
      playerStints(season)
        .get('a')
        ?.map(({ date, sets }) => [date, sets]),
    ).toEqual([
      ['2026-03-02', 1],
      ['2026-03-02', 2],
      ['2026-03-04', 1],
      ['2026-03-04', 2],
    ]);
  });

  test('is half of the touches of a rally struck in turn', () => {
    expect(parts(roundWith(0, termsWith(), [[['a', 'b'], 1]]))).toEqual([1 / 2, 1 / 2]);
  });

  test('is as much of a sequence as the role strikes of it', () => {
    expect(parts(roundWith(0, approach, [[['a', 'b'], 1]]))).toEqual([2 / 3, 1 / 3]);
  });

  test('has beyond its part what the player has more of in completed sets', () => {
    const odd = roundWith(0, termsWith({ size: 5 }), [[['a', 'b'], 3]]);
    const offsets = [...only(odd).values()].map(([stint]) => stint?.offset);
    // Nine and six touches, of which half of fifteen is the common part.
    expect(offsets).toEqual([1.5, -1.5]);
    const onTarget = roundWith(0, serveTerms, [[['a', 'b'], { a: 5, b: 0 }]]);
    expect([...only(onTarget).values()].map(([stint]) => stint?.offset)).toEqual([0, 0]);
  });

  test('of a trio has two thirds of its clock', () => {
    const [stint] = only(roundWith(0, approach, [[['a', 'b', 'c'], 4]])).get('c') ?? [];
    expect(stint).toMatchObject({ seconds: 80, sets: 2 });
  });

  const trio = (sets: number, times: number[] = []) => {
    const round = roundWith(0, approach, [[['a', 'b', 'c'], sets]]);
    return parts({ ...round, tallies: round.tallies.map((tally) => ({ ...tally, times })) });
  };

  test('of a trio is half of the part of the clock in which the player hit', () => {
    // Until 30 s c rests, then a, and from 60 s to the horn b.
    expect(trio(2, [30, 60])).toEqual([
      expect.closeTo(0.5 * (1 - 30 / 120), 12),
      expect.closeTo(0.5 * (1 - 60 / 120), 12),
      expect.closeTo(0.5 * (1 - 30 / 120), 12),
    ]);
  });

  test('of a trio whose marks do not tell takes all sets as equally long', () => {
    expect(trio(2)).toEqual([1 / 3, 1 / 3, 1 / 3].map((part) => expect.closeTo(part, 12)));
    expect(trio(3, [30, 60])).toEqual(
      [0.5 * (1 - 1 / 4), 0.5 * (1 - 1 / 4), 0.5 * (1 - 2 / 4)].map((part) =>
        expect.closeTo(part, 12),
      ),
    );
  });

  test('of a trio without a set is nothing for the one who rested all the time', () => {
    expect(trio(0)).toEqual([1 / 2, 1 / 2, 0]);
  });

  test('of a trio without live clock is a third', () => {
    expect(parts(roundWith(0, approach, [[['a', 'b', 'c'], 0]], 0))).toEqual([1 / 3, 1 / 3, 1 / 3]);
  });

  test('on target is half of the balls and an own share of those that meet it', () => {
    const own = { a: { consistency: 0.3, consistencySd: 0.1 } };
    const round = estimatedRound(
      roundWith(0, serveTerms, [[['a', 'b'], { a: 5, b: 0 }]]),
      estimateWith(78, 9, { own }),
    );
    const stints = only(round);
    expect(stints.get('a')?.[0]).toMatchObject({ part: 1 / 2, sets: 5, success: own.a });
    // Without an own share there is the pair's.
    expect(stints.get('b')?.[0]?.success?.consistency).toBe(0.9);
  });
});

describe('a pair’s stint', () => {
  test('is the whole of a tally, its touches of all players together', () => {
    const round = estimatedRound(
      roundWith(0, approach, [
        [['a', 'b'], 4],
        [['c', 'd', 'e'], 2],
      ]),
      estimateWith(30, 3),
    );
    const stints = pairStints([practiceWith('2026-03-02', [round])]);
    expect(
      stints.map(({ counted, sets, seconds, part }) => [counted, sets, seconds, part]),
    ).toEqual([
      [12, 4, 120, 1],
      [6, 2, 120, 1],
    ]);
    expect(stints[0]?.success).toBeDefined();
    expect([stints[1]?.estimate, stints[1]?.success]).toEqual([undefined, undefined]);
  });
});
