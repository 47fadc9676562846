import { describe, expect, test } from 'vitest';
import { addDays } from '../../../core/calendar.ts';
import { practiceTrend } from '../../../core/figures/practice-trend.ts';
import { playerStints } from '../../../core/figures/stints.ts';
import { practiceWith, roundWith, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const round = (consistency: number | undefined, ordinal = 0) =>
  estimatedRound(
    roundWith(ordinal, termsWith(), [[['a', 'b'], 3]]),
    estimateWith(
      50,
      5,
      consistency === undefined ? {} : { success: { consistency, consistencySd: 0.02 } },
    ),
  );
const unestimated = roundWith(0, termsWith(), [[['a', 'b'], 3]]);
const onDay = (day: number, ...rounds: ReturnType<typeof round>[]) =>
  practiceWith(addDays('2026-01-05', day), rounds);
const of = (...practices: ReturnType<typeof onDay>[]) =>
  practiceTrend(playerStints(practices).get('a') ?? []);

describe('the trend over practices', () => {
  test('of none has no points and is too few', () => {
    expect(of()).toEqual({ points: [], word: 'too-few' });
  });

  test('has one point a practice, at its day', () => {
    const { points } = of(onDay(0, round(0.8), round(0.9, 1)), onDay(3, round(0.7)));
    expect(points).toEqual([
      { date: '2026-01-05', at: 0, value: expect.closeTo(0.86, 1) },
      { date: '2026-01-08', at: 3, value: expect.closeTo(0.7, 10) },
    ]);
  });

  test('has no point for a practice without an estimate', () => {
    const days = of(onDay(0, unestimated), onDay(2, round(0.8))).points.map(({ at }) => at);
    expect(days).toEqual([2]);
  });

  const season = (value: (practice: number) => number, practices = 12) =>
    of(...Array.from({ length: practices }, (_, i) => onDay(7 * i, round(value(i)))));

  test('of a share that climbs is rising, and of one that falls falling', () => {
    expect(season((i) => 0.7 + 0.02 * i)).toMatchObject({ word: 'rising', trend: { n: 12 } });
    expect(season((i) => 0.95 - 0.02 * i).word).toBe('falling');
  });

  test('of a share that wavers a little is steady, one that wavers much is not clear yet', () => {
    const wave = [0, 1, -1, 1, -1, 0, 0, -1, 1, -1, 1, 0];
    expect(season((i) => 0.85 + 0.005 * wave[i]!).word).toBe('steady');
    expect(season((i) => 0.8 + 0.15 * wave[i]!).word).toBe('unclear');
  });

  test('of five practices is too few however clear it looks', () => {
    expect(season((i) => 0.7 + 0.05 * i, 5).word).toBe('too-few');
  });

  test('of practices that are all alike is not called rising', () => {
    const even = season(() => 0.85);
    expect(even.points).toHaveLength(12);
    expect(even.word).toBe('unclear');
    expect(even.trend).toMatchObject({ slope: 0, p: 1 });
  });
});
