import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runCounts, shotsToRun } from '../../../core/figures/runs.ts';
import { agree } from '../../reference/values.ts';

const size = fc.integer({ min: 1, max: 12 });
const share = fc.double({ min: 0, max: 1, noNaN: true });

/** How many full runs of n a row of hits and misses holds, counted as an assistant would. */
function countRuns(row: readonly boolean[], n: number): number {
  let runs = 0;
  let length = 0;
  for (const hit of row) {
    length = hit ? length + 1 : 0;
    if (length === n) {
      runs += 1;
      length = 0;
    }
  }
  return runs;
}

describe('shotsToRun', () => {
  it('of a run of one is the wait for a success: 1/p, and (1 − p)/p²', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1, noNaN: true }), (p) => {
        const { mean, variance } = shotsToRun(1, p);
        agree(mean, 1 / p, 1e-14);
        agree(variance, (1 - p) / p ** 2, 1e-14);
      }),
    );
  });

  it("agrees with Feller's closed forms where these keep their digits", () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.2, max: 0.8, noNaN: true }), (n, p) => {
        const q = 1 - p;
        const { mean, variance } = shotsToRun(n, p);
        agree(mean, (1 - p ** n) / (q * p ** n), 1e-11);
        const spread = 1 / (q * p ** n) ** 2 - (2 * n + 1) / (q * p ** n) - p / q ** 2;
        agree(variance, spread, 1e-9);
      }),
    );
  });

  it('keeps its digits next to p = 1, where the closed forms lose them', () => {
    // mpmath 1.3 at 100 digits, Feller's forms with q = 2^-40, n = 20
    const { mean, variance } = shotsToRun(20, 1 - 2 ** -40);
    agree(mean, 20.000000000190994, 1e-14);
    agree(variance, 2.6102497941381582e-9, 1e-12);
  });

  it('is longer for a longer run', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.05, max: 1, noNaN: true }), (n, p) => {
        expect(shotsToRun(n + 1, p).mean).toBeGreaterThan(shotsToRun(n, p).mean);
      }),
    );
  });

  it('of a pair that never misses is n, without variance', () => {
    expect(shotsToRun(10, 1)).toEqual({ mean: 10, variance: 0 });
  });

  it('of a pair that always misses never ends', () => {
    expect(shotsToRun(10, 0)).toEqual({ mean: Infinity, variance: Infinity });
  });

  it('of a run beyond all numbers is Infinity, never NaN', () => {
    expect(shotsToRun(2000, 0.1)).toEqual({ mean: Infinity, variance: Infinity });
  });

  it.each([
    ['n', 0, 0.5],
    ['n', -1, 0.5],
    ['n', 2.5, 0.5],
    ['n', Number.NaN, 0.5],
    ['p', 3, -0.1],
    ['p', 3, 1.1],
    ['p', 3, Number.NaN],
  ] as const)('names %s when it makes no sense: n %d, p %d', (name, n, p) => {
    expect(() => shotsToRun(n, p)).toThrow(RangeError);
    expect(() => shotsToRun(n, p)).toThrow(new RegExp(`^${name} `));
  });
});

describe('runCounts', () => {
  it('adds up to 1, with a place for every count that fits', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 120 }), size, share, (shots, n, p) => {
        const chances = runCounts(shots, n, p);
        expect(chances).toHaveLength(Math.floor(shots / n) + 1);
        for (const chance of chances) expect(chance).toBeGreaterThanOrEqual(0);
        agree(
          chances.reduce((sum, chance) => sum + chance, 0),
          1,
          1e-12,
        );
      }),
    );
  });

  it('is what counting every row of hits and misses gives', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 10 }),
        fc.integer({ min: 1, max: 5 }),
        share,
        (shots, n, p) => {
          const counted = new Array<number>(Math.floor(shots / n) + 1).fill(0);
          for (let bits = 0; bits < 2 ** shots; bits++) {
            const row = Array.from({ length: shots }, (_, i) => ((bits >> i) & 1) === 1);
            const hits = row.filter((hit) => hit).length;
            counted[countRuns(row, n)]! += p ** hits * (1 - p) ** (shots - hits);
          }
          runCounts(shots, n, p).forEach((chance, k) => {
            expect(Math.abs(chance - counted[k]!)).toBeLessThan(1e-13);
          });
        },
      ),
      { numRuns: 40 },
    );
  });

  it('of runs of one is the binomial distribution', () => {
    const chances = runCounts(4, 1, 0.25);
    [81, 108, 54, 12, 1].forEach((ways, k) => {
      agree(chances[k], ways / 256, 1e-15);
    });
  });

  it('of no shots is no run for sure', () => {
    expect(runCounts(0, 10, 0.9)).toEqual([1]);
  });

  it('of a pair that never misses is every run that fits', () => {
    expect(runCounts(35, 10, 1)).toEqual([0, 0, 0, 1]);
  });

  it('of a pair that always misses is none', () => {
    expect(runCounts(35, 10, 0)).toEqual([1, 0, 0, 0]);
  });

  it('agrees with the mean wait: over very many shots one run comes every mean wait', () => {
    const chances = runCounts(3000, 10, 0.85);
    const mean = chances.reduce((sum, chance, k) => sum + k * chance, 0);
    const wait = shotsToRun(10, 0.85);
    // Renewal theorem for waits in whole shots (Feller I, XIII.12): runs by shot t ≈ t/μ + (σ² + μ)/(2μ²) − ½
    const expected = 3000 / wait.mean + (wait.variance + wait.mean) / (2 * wait.mean ** 2) - 0.5;
    agree(mean, expected, 1e-9);
  });

  it.each([
    ['shots', -1, 3, 0.5],
    ['shots', 1.5, 3, 0.5],
    ['shots', Infinity, 3, 0.5],
    ['n', 10, 0, 0.5],
    ['n', 10, 1.5, 0.5],
    ['p', 10, 3, 2],
    ['p', 10, 3, Number.NaN],
  ] as const)('names %s when it makes no sense: %d shots, n %d, p %d', (name, shots, n, p) => {
    expect(() => runCounts(shots, n, p)).toThrow(RangeError);
    expect(() => runCounts(shots, n, p)).toThrow(new RegExp(`^${name} `));
  });
});
