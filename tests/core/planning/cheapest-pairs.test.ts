import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cheapestPairs } from '../../../core/planning/cheapest-pairs.ts';
import { drawCosts, kinds } from '../../reference/matchings.ts';

type Kind = keyof typeof kinds;
const kindNames = Object.keys(kinds) as Kind[];

/** Tries every way to pair the free players, the first of them with each other one. */
function leastByTrying(cost: number[][], free = [...cost.keys()]): number {
  const [first, ...rest] = free;
  if (first === undefined) return 0;
  return Math.min(
    ...rest.map((other) => {
      const pair = cost[first]![other]!;
      return pair === Infinity
        ? Infinity
        : pair +
            leastByTrying(
              cost,
              rest.filter((player) => player !== other),
            );
    }),
  );
}

const sum = (cost: number[][], pairs: [number, number][]) =>
  pairs.reduce((total, [a, b]) => total + cost[a]![b]!, 0);

const square = (n: number, cost: (i: number, j: number) => number) =>
  Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j) => cost(i, j)));

/** Sums of the same doubles in another order differ by a rounding of the largest. */
function expectSame(actual: number, expected: number, cost: number[][]) {
  const largest = Math.max(...cost.flat().map((c) => (c === Infinity ? 0 : Math.abs(c))));
  expect(Math.abs(actual - expected)).toBeLessThanOrEqual(1e-14 * largest);
}

describe('the cheapest pairs', () => {
  const squads = Array.from({ length: 220 }, (_, seed) => ({
    kind: kindNames[seed % kindNames.length]!,
    n: 4 + 2 * (seed % 4),
    seed,
  }));

  test.each(squads)(
    'are those that trying all finds: $n players, $kind costs, seed $seed',
    (squad) => {
      const cost = drawCosts(squad);
      const pairs = cheapestPairs(cost);
      const least = leastByTrying(cost);
      if (least === Infinity) {
        expect(pairs).toBeUndefined();
        return;
      }
      expect(pairs!.flat().sort((a, b) => a - b)).toEqual([...cost.keys()]);
      expectSame(sum(cost, pairs!), least, cost);
    },
  );

  test('costs of any size are told apart', () => {
    const anyCost = fc.oneof(
      // Sums of three stay finite in any order.
      fc.double({ min: -1e307, max: 1e307, noNaN: true }),
      fc.integer({ min: -3, max: 3 }),
      fc.constant(Infinity),
    );
    fc.assert(
      fc.property(fc.array(anyCost, { minLength: 15, maxLength: 15 }), (drawn) => {
        const cost = square(6, (i, j) =>
          i === j ? 0 : drawn[(Math.max(i, j) * (Math.max(i, j) - 1)) / 2 + Math.min(i, j)]!,
        );
        const pairs = cheapestPairs(cost);
        const least = leastByTrying(cost);
        if (least === Infinity) expect(pairs).toBeUndefined();
        else expectSame(sum(cost, pairs!), least, cost);
      }),
      { numRuns: 500 },
    );
  });

  test('a cost of a billion hides no difference between small ones', () => {
    const cost = square(4, () => 1e9);
    const set = (a: number, b: number, value: number) => {
      cost[a]![b] = value;
      cost[b]![a] = value;
    };
    set(0, 1, 1e-9);
    set(2, 3, 2e-9);
    set(0, 2, 1.5e-9);
    set(1, 3, 1.4e-9);
    expect(cheapestPairs(cost)).toEqual([
      [0, 2],
      [1, 3],
    ]);
  });

  test('name the smaller player first, in rising order', () => {
    const cost = drawCosts({ n: 24, kind: 'whole', seed: 5 });
    const pairs = cheapestPairs(cost)!;
    expect(pairs.every(([a, b]) => a < b)).toBe(true);
    expect(pairs).toEqual([...pairs].sort(([a], [b]) => a - b));
  });

  test('are the same every time, also where all cost the same', () => {
    const cost = drawCosts({ n: 24, kind: 'ties', seed: 5 });
    const before = structuredClone(cost);
    const pairs = cheapestPairs(cost);
    expect(cheapestPairs(structuredClone(cost))).toEqual(pairs);
    expect(cost).toEqual(before);
  });

  test('cost the same whatever order the players stand in', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kindNames),
        fc.integer({ min: 1, max: 12 }),
        fc.nat(),
        fc.nat(),
        (kind, half, seed, turn) => {
          const n = 2 * half;
          const cost = drawCosts({ n, kind, seed });
          // A step without a common factor with n visits everyone once.
          const steps = [...cost.keys()].filter((step) => gcd(step, n) === 1);
          const step = steps[turn % steps.length]!;
          const from = (i: number) => (i * step + turn) % n;
          const moved = square(n, (i, j) => cost[from(i)]![from(j)]!);
          const pairs = cheapestPairs(cost);
          const movedPairs = cheapestPairs(moved);
          if (!pairs || !movedPairs) expect(movedPairs).toBe(pairs);
          else expectSame(sum(moved, movedPairs), sum(cost, pairs), cost);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('nobody makes no pairs', () => {
    expect(cheapestPairs([])).toEqual([]);
  });

  test('the diagonal is not read', () => {
    expect(cheapestPairs(square(2, (i, j) => (i === j ? Number.NaN : 1)))).toEqual([[0, 1]]);
  });
});

describe('where pairs are forbidden', () => {
  test('two who must not meet cannot be paired', () => {
    expect(cheapestPairs(square(2, () => Infinity))).toBeUndefined();
  });

  test('two groups of three that never meet cannot be paired', () => {
    const apart = square(6, (i, j) => (Math.floor(i / 3) === Math.floor(j / 3) ? 1 : Infinity));
    expect(cheapestPairs(apart)).toBeUndefined();
  });

  test('everyone who can play only with the same one cannot be paired', () => {
    const star = square(6, (i, j) => (i === 0 || j === 0 ? 1 : Infinity));
    expect(cheapestPairs(star)).toBeUndefined();
  });

  test('the one way that is left is found, whatever it costs', () => {
    const chain = square(8, (i, j) => (Math.abs(i - j) === 1 ? 1e6 : Infinity));
    expect(cheapestPairs(chain)).toEqual([
      [0, 1],
      [2, 3],
      [4, 5],
      [6, 7],
    ]);
  });
});

describe('what is no table of costs is refused', () => {
  test.each([
    ['an odd number of players', square(3, () => 1), /even/],
    ['a row too short', [[0, 1], [1]], /square/],
    [
      'a row too long',
      [
        [0, 1, 2],
        [1, 0],
      ],
      /square/,
    ],
    [
      'two directions that differ',
      [
        [0, 1],
        [2, 0],
      ],
      /symmetric/,
    ],
    ['a cost that is no number', square(2, () => Number.NaN), /finite or Infinity/],
    ['a gain without end', square(2, () => -Infinity), /finite or Infinity/],
  ])('%s', (_, cost, message) => {
    expect(() => cheapestPairs(cost)).toThrow(RangeError);
    expect(() => cheapestPairs(cost)).toThrow(message);
  });
});

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}
