import { describe, expect, test } from 'vitest';
import { consistencyInterval } from '../../../core/figures/consistency.ts';
import { pooledConsistency, pooledMean } from '../../../core/figures/pooled.ts';
import { estimateShots } from '../../../core/figures/touches.ts';
import { pairOf, playRound, randomNumbers } from './simulated-round.ts';

type Known = Parameters<typeof pooledMean>[0][number];
const back = { rule: 'in-a-row' } as const;
/** A round that adds so many hits and misses to what is known before, which is 4 and 1. */
const seen = (hits: number, misses: number): Known => {
  const [a, b] = [4 + hits, 1 + misses];
  const all = a + b;
  return {
    terms: back,
    success: {
      consistency: a / all,
      consistencySd: Math.sqrt((a * b) / (all * all * (all + 1))),
    },
  };
};
const close = ({ consistency, consistencySd }: { consistency: number; consistencySd: number }) => ({
  consistency: expect.closeTo(consistency, 10),
  consistencySd: expect.closeTo(consistencySd, 10),
});

describe('a pooled consistency', () => {
  test('of no round, or of rounds without one, is undefined', () => {
    expect(pooledConsistency([])).toBeUndefined();
    expect(pooledMean([])).toBeUndefined();
    expect(pooledConsistency([{ terms: back }])).toBeUndefined();
  });

  test('of one round is that round’s, with its limits', () => {
    const round = seen(40, 3);
    expect(pooledConsistency([round])).toEqual({
      ...close(round.success!),
      low: expect.closeTo(consistencyInterval(round.success!).low, 9),
      high: expect.closeTo(consistencyInterval(round.success!).high, 9),
      rounds: 1,
    });
  });

  test('of several adds what each has seen, and what was known before only once', () => {
    const both = pooledConsistency([seen(40, 3), { terms: back }, seen(30, 9)]);
    expect(both).toMatchObject({ ...close(seen(70, 12).success!), rounds: 2 });
    expect(pooledMean([seen(40, 3), seen(30, 9)])).toBeCloseTo(74 / 87, 10);
  });

  test('of a round that made the pair less sure takes nothing away', () => {
    const doubtful: Known = { terms: back, success: { consistency: 0.5, consistencySd: 0.35 } };
    expect(pooledMean([doubtful])).toBeCloseTo(0.8, 10);
  });

  test('never mixes balls that come back with balls that meet a target', () => {
    const onTarget: Known = {
      terms: { rule: 'on-target' },
      success: { consistency: 0.3, consistencySd: 0.05 },
    };
    expect(pooledConsistency([seen(40, 3), onTarget])?.rounds).toBe(1);
    expect(pooledMean([onTarget, seen(40, 3)])).toBeCloseTo(0.3, 10);
  });

  test('holds the true share about four times in five, over simulated rounds at ten in a row', () => {
    const random = randomNumbers(11);
    let held = 0;
    let sum = 0;
    const tries = 150;
    for (let i = 0; i < tries; i++) {
      const rounds = Array.from({ length: 3 }, (): Known => {
        const drill = { startsAgain: true, size: 10, seconds: 120 };
        const { sets } = playRound(random, pairOf(random, 0.88), drill);
        return { terms: back, success: estimateShots({ ...back, size: 10, sets, seconds: 120 }) };
      });
      const { consistency, low, high } = pooledConsistency(rounds)!;
      sum += consistency;
      if (low <= 0.88 && 0.88 <= high) held += 1;
    }
    expect(sum / tries).toBeCloseTo(0.88, 1);
    expect(Math.abs(sum / tries - 0.88)).toBeLessThan(0.015);
    // Three binomial standard deviations of 150 tries at 0.8, and the prior's pull beside it.
    expect(held / tries).toBeGreaterThan(0.7);
    expect(held / tries).toBeLessThan(0.93);
  });
});
