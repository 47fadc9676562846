import { describe, expect, test } from 'vitest';
import { squadPace } from '../../../core/figures/change.ts';
import { pooledConsistency } from '../../../core/figures/pooled.ts';
import { ratesOf } from '../../../core/figures/rates.ts';
import { lastWeeks, reviewChange, reviewDrills, reviewWork } from '../../../core/figures/review.ts';
import { playerStints } from '../../../core/figures/stints.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const pair = ['a', 'b'];
const known = (round: ReturnType<typeof roundWith>, consistency: number) =>
  estimatedRound(round, estimateWith(50, 4, { success: { consistency, consistencySd: 0.03 } }));
const season = [
  practiceWith('2026-03-02', [
    known(roundWith(0, lobTerms, [[pair, 5]]), 0.8),
    known(roundWith(1, serveTerms, [[pair, { a: 4, b: 2 }]]), 0.3),
    known(roundWith(2, termsWith(), [[pair, 3]]), 0.9),
  ]),
  practiceWith('2026-03-04', [
    known(roundWith(0, termsWith({ size: 6, name: 'Renamed' }), [[pair, 6]]), 0.92),
    known(roundWith(1, termsWith(), [[pair, 4]]), 0.91),
  ]),
];
const own = playerStints(season).get('a')!;

describe('the review by kind of work', () => {
  test('of nothing is empty', () => {
    expect(reviewWork([])).toEqual([]);
    expect(reviewDrills([])).toEqual([]);
    expect(reviewChange([], [], squadPace([]))).toEqual([]);
  });

  test('stands in the order of the families, balls on target by themselves', () => {
    expect(reviewWork(own).map(({ family, onTarget }) => [family, onTarget])).toEqual([
      ['groundstrokes', false],
      ['overheads-and-lobs', false],
      ['serves-and-returns', true],
    ]);
  });

  test('has the rates and the consistency of its stints', () => {
    const [work] = reviewWork(own);
    const stints = own.filter(({ terms }) => terms.family === 'groundstrokes');
    expect(work?.rates).toEqual(ratesOf(stints));
    expect(work?.consistency).toEqual(pooledConsistency(stints));
  });

  test('has no consistency where there is no estimate', () => {
    const bare = playerStints([
      practiceWith('2026-03-02', [roundWith(0, lobTerms, [[pair, 5]])]),
    ]).get('a')!;
    expect(reviewWork(bare)[0]).not.toHaveProperty('consistency');
    expect(reviewDrills(bare)[0]).not.toHaveProperty('consistency');
  });
});

describe('the review by drill', () => {
  test('has every drill once, under its newest name, in the order of play', () => {
    expect(reviewDrills(own).map(({ terms }) => terms.drill)).toEqual(['lob', 'serve', 'rally']);
    expect(reviewDrills(own.slice(0, 4)).at(-1)?.terms.name).toBe('Renamed');
  });

  test('has the rates of each size apart, the smallest first, and one consistency', () => {
    const rally = reviewDrills(own).at(-1)!;
    expect(rally.sizes.map(({ size, rates }) => [size, rates.sets, rates.minutes])).toEqual([
      [6, 6, 2],
      [10, 7, 4],
    ]);
    expect(rally.consistency?.rounds).toBe(3);
  });
});

describe('the review of a change', () => {
  const stintsOf = (from: number, to: number) =>
    playerStints(season.slice(from, to)).get('a') ?? [];

  test('has the kinds of work of both spans, and the drills and sizes of both', () => {
    const found = reviewChange(stintsOf(0, 1), stintsOf(1, 2), squadPace(own));
    expect(found.map(({ family }) => family)).toEqual(['groundstrokes']);
    expect(found[0]?.drills.map(({ terms, change }) => [terms.size, change.ratio])).toEqual([
      [10, expect.closeTo(4 / 3, 12)],
    ]);
    expect(found[0]?.change?.ratio).toBeGreaterThan(1);
  });
});

describe('the last weeks', () => {
  const on = (...dates: string[]) => dates.map((date) => practiceWith(date, []));
  const dates = (summaries: { date: string }[]) => summaries.map(({ date }) => date);

  test('end with the last practice, and have as many weeks before them', () => {
    const { now, before } = lastWeeks(
      on('2026-03-04', '2026-02-26', '2026-02-25', '2026-02-19', '2026-02-18'),
      1,
    );
    expect(dates(now)).toEqual(['2026-03-04', '2026-02-26']);
    expect(dates(before)).toEqual(['2026-02-25', '2026-02-19']);
  });

  test('of nothing are empty', () => {
    expect(lastWeeks([], 4)).toEqual({ now: [], before: [] });
  });
});
