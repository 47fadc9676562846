import { describe, expect, it } from 'vitest';
import { estimateShots, type TouchesRound } from '../../core/figures/touches.ts';
import { agree } from './values.ts';

const SECONDS = 120;

interface Vector {
  id: string;
  round: Omit<TouchesRound, 'seconds'>;
  shots: number;
  low: number;
  high: number;
  consistency: number;
  consistencySd: number;
  misses: number;
  truth: { shots: number; low: number; high: number; consistency: number };
}

/**
 * The first columns: two implementations of the model, written apart from each other and from this
 * one, which agree to 1e-7. `truth`: the rounds that the model speaks of, without its approximations,
 * by inversion of characteristic functions and by 4e7 to 1.6e8 simulated rounds conditioned on the
 * counts, which agree to three standard errors.
 */
const vectors: Vector[] = [
  {
    id: 'ten in a row, four sets',
    round: { rule: 'in-a-row', size: 10, sets: 4 },
    shots: 56.0785,
    low: 48.9864,
    high: 63.4917,
    consistency: 0.937509,
    consistencySd: 0.0364872,
    misses: 2.85009,
    truth: { shots: 56.06, low: 48.98, high: 63.45, consistency: 0.93754 },
  },
  {
    id: 'ten in a row, no set',
    round: { rule: 'in-a-row', size: 10, sets: 0 },
    shots: 33.3981,
    low: 22.2668,
    high: 44.9291,
    consistency: 0.634027,
    consistencySd: 0.144363,
    misses: 12.2994,
    truth: { shots: 33.38, low: 22.3, high: 44.77, consistency: 0.63403 },
  },
  {
    id: 'twenty in a row, no set, a longest run of nine observed',
    round: { rule: 'in-a-row', size: 20, sets: 0, best: 9, bestTolerance: 0 },
    shots: 41.5355,
    low: 32.2889,
    high: 51.1306,
    consistency: 0.754511,
    consistencySd: 0.085762,
    misses: 10.219,
    truth: { shots: 41.51, low: 32.34, high: 50.89, consistency: 0.75453 },
  },
  {
    id: 'ten in a row, five sets and seven showing, a known tempo',
    round: {
      rule: 'in-a-row',
      size: 10,
      sets: 5,
      showing: 7,
      priors: { tempo: [1.42, 0.054] },
    },
    shots: 63.0793,
    low: 57.2292,
    high: 68.086,
    consistency: 0.966256,
    consistencySd: 0.0243009,
    misses: 1.32336,
    truth: { shots: 63.16, low: 57.28, high: 67.91, consistency: 0.96612 },
  },
  {
    id: 'four in a row, eight sets, a known tempo',
    round: { rule: 'in-a-row', size: 4, sets: 8, priors: { tempo: [1.5, 0.054] } },
    shots: 41.7052,
    low: 36.8994,
    high: 46.6836,
    consistency: 0.896919,
    consistencySd: 0.0522969,
    misses: 3.887,
    truth: { shots: 41.7, low: 36.82, high: 46.55, consistency: 0.89692 },
  },
  {
    id: 'a sequence of three, eleven sets, priors of its own',
    round: {
      rule: 'sequence',
      size: 3,
      sets: 11,
      priors: { a: 3, tempo: [1.6, 0.127], refeed: [5, 0.3], pause: [3.5, 0.3] },
    },
    shots: 39.604,
    low: 34.7733,
    high: 44.7241,
    consistency: 0.905495,
    consistencySd: 0.0574736,
    misses: 3.24667,
    truth: { shots: 39.67, low: 34.87, high: 44.65, consistency: 0.90476 },
  },
  {
    id: 'ten in total, three sets',
    round: { rule: 'in-total', size: 10, sets: 3 },
    shots: 41.6823,
    low: 37.3201,
    high: 46.1043,
    consistency: 0.814026,
    consistencySd: 0.0725301,
    misses: 7.72057,
    truth: { shots: 41.67, low: 37.37, high: 46.03, consistency: 0.81412 },
  },
];

describe('touches from counts', () => {
  it.each(vectors)('of $id agree with two other implementations to 1e-5', (vector) => {
    const found = estimateShots({ ...vector.round, seconds: SECONDS });
    for (const key of ['shots', 'low', 'high', 'consistency', 'consistencySd', 'misses'] as const)
      agree(found[key], vector[key], 1e-5, key);
    expect(found.implausible).toBe(false);
  });

  it.each(vectors)('of $id are within a quarter of a shot of the rounds themselves', (vector) => {
    const { truth } = vector;
    const found = estimateShots({ ...vector.round, seconds: SECONDS });
    for (const key of ['shots', 'low', 'high'] as const)
      expect(Math.abs(found[key] - truth[key]), key).toBeLessThan(0.25);
    expect(Math.abs(found.consistency - truth.consistency)).toBeLessThan(0.001);
  });
});

/** As above; `finer` is the same model on a finer grid. */
const timed = [
  {
    id: 'three sets of ten',
    round: { rule: 'in-a-row', size: 10, sets: 3, times: [24, 58, 83] },
    expected: {
      shots: 52.438,
      low: 45.0051,
      high: 60.593,
      consistency: 0.892967,
      misses: 5.14079,
    },
    finer: { shots: 52.16, low: 44.39, high: 60.55, consistency: 0.8941 },
  },
  {
    id: 'five sets of ten at a known tempo',
    round: {
      rule: 'in-a-row',
      size: 10,
      sets: 5,
      times: [19.5, 39, 60, 80.5, 101],
      priors: { tempo: [1.48, 0.054] },
    },
    expected: {
      shots: 58.8069,
      low: 56.5185,
      high: 61.1222,
      consistency: 0.963601,
      misses: 1.30458,
    },
    finer: { shots: 58.72, low: 56.46, high: 61.05, consistency: 0.9647 },
  },
] satisfies {
  id: string;
  round: Omit<TouchesRound, 'seconds'>;
  expected: Record<string, number>;
  finer: Record<string, number>;
}[];

describe('touches from the times of the marks', () => {
  it.each(timed)('of $id agree with two other implementations to 0.006', (vector) => {
    const found = estimateShots({ ...vector.round, seconds: SECONDS });
    for (const key of ['shots', 'low', 'high', 'consistency', 'misses'] as const)
      expect(Math.abs(found[key] - vector.expected[key]), key).toBeLessThan(0.006);
  });

  it.each(timed)('of $id are within two thirds of a shot of a finer grid', (vector) => {
    const found = estimateShots({ ...vector.round, seconds: SECONDS });
    for (const key of ['shots', 'low', 'high'] as const)
      expect(Math.abs(found[key] - vector.finer[key]), key).toBeLessThan(0.65);
    expect(Math.abs(found.consistency - vector.finer.consistency)).toBeLessThan(0.002);
  });
});
