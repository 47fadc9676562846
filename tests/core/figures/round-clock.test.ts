import { describe, expect, it } from 'vitest';
import { chanceToFit, roundClock } from '../../../core/figures/round-clock.ts';
import { gamma, pairOf, randomNumbers } from './simulated-round.ts';

const usual = roundClock({ tempo: [1.53, 0.127], refeed: [5.66, 0.27], pause: [4.24, 0.27] });
const fits = (shots: number, refeeds: number, pauses: number, seconds = 120) =>
  chanceToFit(usual, Math.log(seconds), shots, refeeds, pauses);

describe('the chance that shots, re-feeds and pauses fit into a round', () => {
  it('is certain where there are no shots', () => {
    expect(fits(0, 30, 30)).toBe(1);
    expect(fits(-3, 30, 30)).toBe(1);
  });

  it('falls with every shot, re-feed and pause, and rises with every second', () => {
    for (const [n, m, k] of [
      [1, 0, 0],
      [40, 3, 4],
      [75, 0, 0],
      [20, 15, 1],
    ] as const) {
      expect(fits(n + 1, m, k)).toBeLessThanOrEqual(fits(n, m, k));
      expect(fits(n, m + 1, k)).toBeLessThanOrEqual(fits(n, m, k));
      expect(fits(n, m, k + 1)).toBeLessThanOrEqual(fits(n, m, k));
      expect(fits(n, m, k, 121)).toBeGreaterThanOrEqual(fits(n, m, k));
    }
  });

  it('keeps its digits where it is tiny', () => {
    expect(fits(1000, 0, 99)).toBeGreaterThan(0);
    expect(fits(1000, 0, 99)).toBeLessThan(1e-80);
  });

  it.each([
    [50, 4, 4],
    [60, 2, 5],
    [30, 12, 0],
    [70, 0, 0],
  ])('is that of simulated pairs to one in a hundred: %i, %i and %i', (shots, refeeds, pauses) => {
    const random = randomNumbers(7);
    const rounds = 6000;
    let fitting = 0;
    for (let i = 0; i < rounds; i++) {
      const pair = pairOf(random, 1);
      let seconds = 0;
      for (let j = 0; j < shots; j++) seconds += gamma(random, pair.tempo, 0.15);
      for (let j = 0; j < refeeds; j++) seconds += gamma(random, pair.refeed, 0.4);
      for (let j = 0; j < pauses; j++) seconds += gamma(random, pair.pause, 0.4);
      if (seconds <= 120) fitting++;
    }
    // 2.5 standard errors of the simulation are 0.016.
    expect(Math.abs(fitting / rounds - fits(shots, refeeds, pauses))).toBeLessThan(0.01 + 0.016);
  });
});
