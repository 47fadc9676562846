import { describe, expect, test } from 'vitest';
import { levelTallies } from '../../../core/figures/level-tallies.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const success = { consistency: 0.9, consistencySd: 0.04 };
const own = {
  a: { consistency: 0.3, consistencySd: 0.1 },
  b: { consistency: 0.5, consistencySd: 0.1 },
};
const rounds = [
  estimatedRound(roundWith(0, termsWith(), [[['a', 'b'], 3]]), estimateWith(50, 5)),
  estimatedRound(
    roundWith(1, termsWith({ rule: 'in-total' }), [[['a', 'b', 'c'], 3]]),
    estimateWith(50, 5),
  ),
  estimatedRound(roundWith(2, lobTerms, [[['b', 'a'], 3]]), estimateWith(50, 5)),
  estimatedRound(
    roundWith(3, serveTerms, [[['a', 'b'], { a: 5, b: 9 }]]),
    estimateWith(70, 9, { own }),
  ),
];

describe('the tallies that a level is fitted to', () => {
  test('are none where there is no practice', () => {
    expect(levelTallies([], false)).toBeUndefined();
  });

  test('of balls that come back are one a pair or trio, by every rule but on target', () => {
    const data = levelTallies([practiceWith('1970-01-11', rounds)], false);
    expect(data).toMatchObject({ onTarget: false, end: 10 });
    expect(data?.tallies).toEqual([
      {
        practice: '1970-01-11',
        day: 10,
        kind: 'groundstrokes',
        drill: 'rally in-a-row 10',
        players: ['a', 'b'],
        success,
      },
      {
        practice: '1970-01-11',
        day: 10,
        kind: 'groundstrokes',
        drill: 'rally in-total 10',
        players: ['a', 'b', 'c'],
        success,
      },
      {
        practice: '1970-01-11',
        day: 10,
        kind: 'overheads-and-lobs',
        drill: 'lob sequence 2',
        players: ['b', 'a'],
        success,
      },
    ]);
  });

  test('on target are one a player, of the player’s own share', () => {
    const data = levelTallies([practiceWith('1970-01-11', rounds)], true);
    expect(data?.tallies.map(({ players, success: share }) => [players, share])).toEqual([
      [['a'], own.a],
      [['b'], own.b],
    ]);
  });

  test('leave out what has no estimate, or one that the clock contradicts', () => {
    const contradicted = { ...estimateWith(50, 5), implausible: true as const };
    delete contradicted.success;
    const data = levelTallies(
      [
        practiceWith('2026-03-02', [
          roundWith(0, termsWith(), [[['a', 'b'], 3]]),
          estimatedRound(roundWith(1, termsWith(), [[['a', 'b'], 3]]), contradicted),
          estimatedRound(
            roundWith(2, serveTerms, [[['a', 'b'], { a: 5, b: 9 }]]),
            estimateWith(70, 9),
          ),
        ]),
      ],
      false,
    );
    expect(data?.tallies).toEqual([]);
  });

  test('pass over a practice that was struck out, as if it had never been', () => {
    const struck = { ...practiceWith('1970-01-31', []), struck: true as const };
    expect(levelTallies([struck], false)).toBeUndefined();
    expect(levelTallies([practiceWith('1970-01-11', rounds), struck], false)).toMatchObject({
      end: 10,
    });
  });

  test('end with the last practice there is, whatever was counted in it, in any order', () => {
    const last = practiceWith('1970-01-21', []);
    const first = practiceWith('1970-01-11', rounds);
    expect(levelTallies([last, first], false)).toMatchObject({ end: 20 });
    expect(levelTallies([first, last], true)).toMatchObject({ end: 20 });
  });
});
