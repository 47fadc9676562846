import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bestLevels,
  fitSpread,
  laplace,
  laplaceAtZero,
  type PairCounts,
  pooledRates,
} from '../../../core/figures/player-spread.ts';

/** A squad of five and two drills; the ring in each drill sees to it that all are in it. */
const squad = fc
  .array(
    fc.record({
      sets: fc.nat(12),
      minutes: fc.constantFrom(1, 2, 3),
      drill: fc.nat(1),
      a: fc.nat(4),
      ahead: fc.integer({ min: 1, max: 4 }),
    }),
    { maxLength: 25 },
  )
  .map((extra): PairCounts => {
    const ring = [0, 1].flatMap((drill) =>
      [0, 1, 2, 3, 4].map((a) => ({
        sets: 2 + ((a * 3 + drill) % 4),
        minutes: 2,
        drill,
        a,
        ahead: 1,
      })),
    );
    const all = [...ring, ...extra];
    return {
      sets: all.map(({ sets }) => sets),
      exposures: all.map(({ minutes }) => minutes),
      drillOf: all.map(({ drill }) => drill),
      pairOf: all.map(({ a, ahead }) => [a, (a + ahead) % 5]),
      drills: 2,
      players: 5,
    };
  });
const sigmas = fc.double({ min: 0.02, max: 3, noNaN: true });

describe('laplace', () => {
  it('has the slopes in μ and σ² that its differences show', () => {
    fc.assert(
      fc.property(
        squad,
        sigmas,
        fc.double({ min: -1, max: 1, noNaN: true }),
        (counts, sigma, off) => {
          const variance = sigma ** 2;
          const mu = pooledRates(counts).map((level) => level + off);
          const here = laplace(counts, mu, variance);
          const close = (slope: number, up: number, down: number, step: number) =>
            expect(Math.abs(slope - (up - down) / (2 * step))).toBeLessThan(
              1e-5 * (1 + Math.abs(slope)),
            );
          for (const d of [0, 1]) {
            const at = (step: number) =>
              laplace(
                counts,
                mu.map((level, e) => level + (e === d ? step : 0)),
                variance,
              ).loglik;
            close(here.slopeMu[d]!, at(1e-4), at(-1e-4), 1e-4);
          }
          const at = (step: number) => laplace(counts, mu, variance + step).loglik;
          close(here.slopeVariance, at(1e-4 * variance), at(-1e-4 * variance), 1e-4 * variance);
        },
      ),
    );
  });

  it('goes over into laplaceAtZero as σ goes to 0', () => {
    fc.assert(
      fc.property(squad, (counts) => {
        const mu = pooledRates(counts);
        expect(laplace(counts, mu, 1e-9).loglik).toBeCloseTo(laplaceAtZero(counts, mu).loglik, 5);
      }),
    );
  });

  it('finds the same mode from any start', () => {
    fc.assert(
      fc.property(squad, sigmas, (counts, sigma) => {
        const mu = pooledRates(counts);
        const plain = laplace(counts, mu, sigma ** 2);
        const started = laplace(counts, mu, sigma ** 2, Float64Array.of(1, -1, 2, -2, 0));
        expect(started.loglik).toBeCloseTo(plain.loglik, 9);
      }),
    );
  });

  it('keeps its slope in μ where two players share very many sets', () => {
    // One pair: μ trades with θ_a + θ_b, and the terms of the slope cancel to eight digits.
    const counts = {
      sets: [2_000_000],
      exposures: [10],
      drillOf: [0],
      pairOf: [[0, 1]] as const,
      drills: 1,
      players: 2,
    };
    const mu = [12];
    const at = (step: number) => laplace(counts, [mu[0]! + step], 0.25).loglik;
    const differences = (at(1e-3) - at(-1e-3)) / 2e-3;
    expect(laplace(counts, mu, 0.25).slopeMu[0]).toBeCloseTo(differences, 4);
  });
});

describe('fitSpread', () => {
  it('is 0 where the records differ less than chance would make them', () => {
    const alike = {
      sets: [6, 6, 6],
      exposures: [2, 2, 2],
      drillOf: [0, 0, 0],
      pairOf: [
        [0, 1],
        [1, 2],
        [2, 0],
      ] as const,
      drills: 1,
      players: 3,
    };
    const fit = fitSpread(alike);
    expect(fit.sigma).toBe(0);
    expect(fit.mu[0]).toBeCloseTo(Math.log(3), 14);
    expect(Array.from(fit.theta)).toEqual([0, 0, 0]);
  });

  it('finds a top above 0 where 0 is a top as well', () => {
    const counts = {
      sets: [14, 4, 13],
      exposures: [2, 2, 2],
      drillOf: [0, 0, 0],
      pairOf: [
        [0, 1],
        [1, 2],
        [2, 0],
      ] as const,
      drills: 1,
      players: 3,
    };
    const mu = pooledRates(counts);
    const zero = laplaceAtZero(counts, mu).loglik;
    const dip = bestLevels(counts, 0.02, { mu, ...laplace(counts, mu, 0.0004) }).loglik;
    const fit = fitSpread(counts);
    expect(dip).toBeLessThan(zero);
    expect(fit.sigma).toBeGreaterThan(0.02);
    expect(fit.loglik).toBeGreaterThan(zero);
  });

  it.each<[string, number, PairCounts]>([
    [
      'a top at 0 and a higher one at 1.2, behind a dip',
      1.172,
      {
        sets: [1, 19, 0, 187, 15],
        exposures: [1, 7, 7, 0.5, 7],
        drillOf: [0, 0, 0, 1, 0],
        pairOf: [
          [0, 1],
          [1, 2],
          [3, 1],
          [4, 1],
          [0, 1],
        ],
        drills: 2,
        players: 5,
      },
    ],
    [
      'tops at 10 and, a little higher, at 23',
      22.98,
      {
        sets: [1483, 0, 1452, 0, 0],
        exposures: [0.5, 7, 0.5, 1, 2],
        drillOf: [0, 0, 0, 0, 0],
        pairOf: [
          [0, 1],
          [2, 3],
          [1, 0],
          [3, 0],
          [3, 0],
        ],
        drills: 1,
        players: 4,
      },
    ],
  ])('finds the highest of several tops: %s', (_, sigma, counts) => {
    const mu = pooledRates(counts);
    let from = { mu, ...laplace(counts, mu, 0.0001) };
    let best = { sigma: 0, loglik: laplaceAtZero(counts, mu).loglik };
    for (let s = 0.01; s < 100; s *= 1.05) {
      const { point, ...top } = bestLevels(counts, s, from);
      from = { mu: point, ...top };
      if (top.loglik > best.loglik) best = { sigma: s, loglik: top.loglik };
    }
    const fit = fitSpread(counts);
    expect(fit.loglik).toBeGreaterThanOrEqual(best.loglik);
    expect(Math.abs(fit.sigma / best.sigma - 1)).toBeLessThan(0.05);
    expect(Math.abs(fit.sigma / sigma - 1)).toBeLessThan(0.001);
  });

  it('is as likely as any other σ with its best μ', () => {
    fc.assert(
      fc.property(squad, sigmas, (counts, sigma) => {
        const fit = fitSpread(counts);
        const mu = pooledRates(counts);
        const other = bestLevels(counts, sigma, { mu, ...laplace(counts, mu, sigma ** 2) });
        expect(fit.loglik).toBeGreaterThanOrEqual(other.loglik - 1e-9);
        expect(fit.loglik).toBeGreaterThanOrEqual(laplaceAtZero(counts, mu).loglik - 1e-9);
      }),
    );
  });

  it('finds wide differences between players, and narrow ones where sets abound', () => {
    const allPairs = {
      exposures: [1, 1, 1, 1, 1, 1],
      drillOf: [0, 0, 0, 0, 0, 0],
      pairOf: [
        [0, 1],
        [0, 2],
        [0, 3],
        [1, 2],
        [1, 3],
        [2, 3],
      ] as const,
      drills: 1,
      players: 4,
    };
    // exp(3 + θ_a + θ_b) for the effects 3, 1, −1 and −3, whose standard deviation is √5.
    const wide = fitSpread({ ...allPairs, sets: [1097, 148, 20, 20, 3, 0] });
    expect(Math.abs(wide.sigma - Math.sqrt(5))).toBeLessThan(0.2);
    // 1e6 exp(θ_a + θ_b) for 0.01, 0, 0 and −0.01: √0.5 of a hundredth.
    const narrow = fitSpread({
      ...allPairs,
      sets: [1_010_050, 1_010_050, 1_000_000, 1_000_000, 990_050, 990_050],
    });
    expect(Math.abs(narrow.sigma - 0.01 * Math.sqrt(0.5))).toBeLessThan(0.001);
  });
});
