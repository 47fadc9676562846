import { describe, expect, test } from 'vitest';
import { families } from '../../../core/drill/drill.ts';
import { levelOf } from '../../../core/figures/level.ts';
import { fitLevels } from '../../../core/figures/level-fit.ts';
import { levelLine } from '../../../core/figures/level-line.ts';
import { levelTallies } from '../../../core/figures/level-tallies.ts';
import { simulateSeason } from './simulated-season.ts';

const season = simulateSeason({
  seed: 56,
  practices: 30,
  rise: (place) => ({ all: place === 0 ? 1.5 : 0 }),
});
const fit = fitLevels(levelTallies(season.summaries, false)!)!;
const [first = ''] = season.players;

describe('a level over the weeks', () => {
  test('ends at the level of now, with its limits', () => {
    for (const player of season.players) {
      for (const kind of families) {
        const end = levelLine(fit, { player, kind })!.at(-1)!;
        const level = levelOf(fit, player, kind)!;
        expect(end.weeksAgo).toBe(0);
        expect(end.share).toBeCloseTo(level.share, 12);
        expect(end.low).toBeCloseTo(level.low, 12);
        expect(end.high).toBeCloseTo(level.high, 12);
      }
    }
  });

  test('begins with the first tally, goes on a week at most, and lies within its band', () => {
    const line = levelLine(fit)!;
    expect(line[0]?.weeksAgo).toBe(fit.age);
    for (const [at, { weeksAgo, low, share, high }] of line.entries()) {
      if (at > 0) expect(line[at - 1]!.weeksAgo - weeksAgo).toBeLessThanOrEqual(1 + 1e-9);
      expect(low).toBeLessThan(share);
      expect(share).toBeLessThan(high);
    }
  });

  test('rises for one who rises, and more than for the squad', () => {
    const climb = (line: { share: number }[] | undefined) => line!.at(-1)!.share - line![0]!.share;
    expect(climb(levelLine(fit, { player: first }))).toBeGreaterThan(0.01);
    expect(climb(levelLine(fit, { player: first }))).toBeGreaterThan(climb(levelLine(fit)));
  });

  test('is undefined for one who was not seen', () => {
    expect(levelLine(fit, { player: 'nobody' })).toBeUndefined();
  });

  test('of one practice is a point said twice, and no number that is none', () => {
    const once = simulateSeason({ seed: 52, practices: 1 });
    const line = levelLine(fitLevels(levelTallies(once.summaries, false)!)!)!;
    expect(line.map(({ weeksAgo }) => weeksAgo)).toEqual([0, 0]);
    expect(line.every(({ share, low, high }) => low < share && share < high)).toBe(true);
  });
});
