import { describe, expect, test } from 'vitest';
import { coverage } from '../../../core/figures/coverage.ts';
import { pooledMean } from '../../../core/figures/pooled.ts';
import { seasonWork, termTouches } from '../../../core/figures/season-work.ts';
import { pairStints } from '../../../core/figures/stints.ts';
import { lobTerms, practiceWith, roundWith, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const rally = (sets: number, players = ['a', 'b']) => roundWith(0, termsWith(), [[players, sets]]);
const lobs = roundWith(1, lobTerms, [[['a', 'b'], 4]]);

describe('the season', () => {
  const summaries = [
    practiceWith('2026-03-02', [rally(5, ['b', 'c'])]),
    practiceWith('2025-12-30', [rally(2)]),
    practiceWith('2026-01-03', [rally(3), lobs]),
    practiceWith('2026-01-31', [rally(4)]),
  ];

  test('is balls by family and month, oldest month first, without the months of no practice', () => {
    const [ground, , overheads] = seasonWork(summaries, 12);
    expect(ground?.months).toEqual([
      { month: '2025-12', balls: 20 },
      { month: '2026-01', balls: 70 },
      { month: '2026-03', balls: 50 },
    ]);
    expect(overheads?.months.map(({ balls }) => balls)).toEqual([0, 8, 0]);
  });

  test('of a player is the player’s own, and of one who never played nothing', () => {
    expect(seasonWork(summaries, 12, 'a')[0]?.months.map(({ balls }) => balls)).toEqual([10, 35]);
    expect(seasonWork(summaries, 12, 'nobody').every(({ months }) => months.length === 0)).toBe(
      true,
    );
  });

  test('keeps the newest months of many', () => {
    expect(seasonWork(summaries, 2)[0]?.months.map(({ month }) => month)).toEqual([
      '2026-01',
      '2026-03',
    ]);
  });

  test('has the share of balls that came back, all rounds of the month together', () => {
    const round = estimatedRound(rally(3), estimateWith(50, 5));
    const summary = practiceWith('2026-01-03', [round]);
    expect(seasonWork([summary], 12)[0]?.months[0]?.share).toBe(pooledMean(pairStints([summary])));
  });

  test('adds up over a term as the coverage of as many weeks does', () => {
    const term = termTouches(summaries);
    const { families } = coverage(summaries, '2026-03-02', { weeks: 12 });
    for (const { stroke, touches } of term) {
      const line = families.flatMap((family) => family.strokes).find((s) => s.stroke === stroke);
      expect(touches).toBe(line?.touches ?? 0);
    }
    expect(term.find(({ stroke }) => stroke === 'lob')?.touches).toBe(4);
    expect(termTouches(summaries, 'a').find(({ stroke }) => stroke === 'overhead')?.touches).toBe(
      0,
    );
    expect(termTouches([]).every(({ touches }) => touches === 0)).toBe(true);
  });

  test('leaves out of a term what is older', () => {
    const older = [...summaries, practiceWith('2025-11-01', [rally(9)])];
    expect(termTouches(older)).toEqual(termTouches(summaries));
  });
});
