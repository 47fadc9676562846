import { describe, expect, test } from 'vitest';
import { sumEstimates } from '../../../core/figures/all-touches.ts';
import { pairStints } from '../../../core/figures/stints.ts';
import { weekWork } from '../../../core/figures/week-work.ts';
import { lobTerms, practiceWith, roundWith, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const WEEK = { year: 2026, week: 10 };
/** Ten in a row: so many sets of a and b are twenty balls of the pair each, half of them a's. */
const rally = (sets: number, players = ['a', 'b']) => roundWith(0, termsWith(), [[players, sets]]);
// Wednesdays of the weeks 7 to 11.
const WEDNESDAYS = ['2026-02-11', '2026-02-18', '2026-02-25', '2026-03-04', '2026-03-11'];

describe('the work of a week', () => {
  test('stands beside the middle one of the weeks before, and later ones say nothing', () => {
    const summaries = [2, 6, 4, 5, 9].map((sets, at) =>
      practiceWith(WEDNESDAYS[at]!, [rally(sets)]),
    );
    const { families, players } = weekWork(summaries, WEEK);
    expect(families[0]).toEqual({ family: 'groundstrokes', balls: 50, usual: 40 });
    expect(players.get('a')).toEqual({ balls: 25, usual: 20 });
  });

  test('of a family that was left out is 0 balls, and its usual week stays', () => {
    const summaries = [
      practiceWith(WEDNESDAYS[2]!, [roundWith(0, lobTerms, [[['a', 'b'], 4]])]),
      practiceWith(WEDNESDAYS[3]!, [rally(3)]),
    ];
    const overheads = weekWork(summaries, WEEK).families[2];
    expect(overheads).toEqual({ family: 'overheads-and-lobs', balls: 0, usual: 8 });
  });

  test('of a first week has nothing beside it', () => {
    const { families, players } = weekWork([practiceWith(WEDNESDAYS[3]!, [rally(3)])], WEEK);
    expect(families.every(({ usual }) => usual === undefined)).toBe(true);
    expect(players.get('b')).toEqual({ balls: 15 });
  });

  test('is beside the weeks in which the player played: absence makes no week usual', () => {
    const summaries = [
      practiceWith(WEDNESDAYS[0]!, [rally(6)]),
      practiceWith(WEDNESDAYS[1]!, [rally(8, ['b', 'c'])]),
      practiceWith(WEDNESDAYS[2]!, [rally(8, ['b', 'c'])]),
      practiceWith(WEDNESDAYS[3]!, [rally(5)]),
    ];
    const { players } = weekWork(summaries, WEEK);
    expect(players.get('a')).toEqual({ balls: 25, usual: 30 });
    expect(players.has('c')).toBe(false);
  });

  test('is all touches where they were worked out', () => {
    const round = estimatedRound(rally(3), estimateWith(52, 4));
    const summary = practiceWith(WEDNESDAYS[3]!, [round]);
    const all = sumEstimates(pairStints([summary])).all!.touches;
    expect(weekWork([summary], WEEK).families[0]?.balls).toBe(all);
    expect(all).toBeGreaterThan(30);
  });

  test('of a week without practice is nothing of anybody', () => {
    const { families, players } = weekWork([practiceWith(WEDNESDAYS[0]!, [rally(3)])], WEEK);
    expect(families.every(({ balls }) => balls === 0)).toBe(true);
    expect(players.size).toBe(0);
  });
});
