import { describe, expect, test } from 'vitest';
import { type Block, type Prices, pricesOf } from '../../../core/planning/block-cost.ts';
import { cheapestBlocks } from '../../../core/planning/cheapest-blocks.ts';
import { whatIsDue } from '../../../core/planning/what-is-due.ts';
import { type Random, randomFrom } from '../../../demo-data/random.ts';
import { anyDrills, anyHistory, squadOf, TODAY } from '../invented.ts';
import { addedUp } from './added-up.ts';

/** The drills and rounds of a block, whatever their order. */
const setOf = (block: Block) =>
  block
    .map(({ drill, rounds }) => `${drill}×${rounds}`)
    .sort()
    .join(' ');

/** The least cost of every set of drills and rounds, by trying every order of every set. */
function tryAll(prices: Prices): Map<string, number> {
  const least = new Map<string, number>();
  const grow = (block: { drill: number; rounds: number }[], left: number) => {
    if (left === 0) {
      const cost = addedUp(block, prices);
      const key = setOf(block);
      if (!(least.get(key)! <= cost)) least.set(key, cost);
    }
    for (let drill = 0; drill < prices.familyOf.length; drill += 1) {
      if (block.some((step) => step.drill === drill)) continue;
      for (let rounds = 1; rounds <= Math.min(10, left); rounds += 1) {
        grow([...block, { drill, rounds }], left - rounds);
      }
    }
  };
  grow([], prices.rounds);
  return least;
}

/** Prices of a ledger. */
function ledgerPrices(random: Random): Prices {
  const players = squadOf(2 + random.below(11));
  const drills = anyDrills(2 + random.below(5), random);
  const history = anyHistory(drills, players, random.below(7), random);
  const courts = random.chance(0.3) ? undefined : 1 + random.below(3);
  const rounds = 1 + random.below(6);
  const here = random.shuffled(players).slice(random.below(3));
  const due = whatIsDue(history, TODAY, here);
  return pricesOf(drills, rounds, Math.floor(here.length / 2), courts, 'full', due);
}

/** Prices that no ledger would have: in favour of coming back to a drill, and with many ties. */
function wildPrices(random: Random): Prices {
  const rounds = 2 + random.below(4);
  const drills = 3 + random.below(4);
  const families = 1 + random.below(3);
  const any = (most: number) => random.below(most + 1);
  const step = Array.from({ length: drills }, () => {
    const dear = random.chance(0.5) ? 40 : 4;
    return Array.from({ length: rounds + 1 }, (_, n) => any(dear) * (random.chance(0.5) ? n : 1));
  });
  const cost = Array.from({ length: drills }, () => Array.from({ length: drills }, () => any(9)));
  return {
    rounds,
    familyOf: Array.from({ length: drills }, (_, at) => at % families),
    family: Array.from({ length: families }, () =>
      Array.from({ length: rounds + 1 }, () => any(30) - 10),
    ),
    step,
    move: cost.map((row, a) => row.map((_, b) => cost[Math.min(a, b)]![Math.max(a, b)]!)),
    open: Array.from({ length: drills }, () => any(2)),
  };
}

function expectAll(prices: Prices): void {
  const all = tryAll(prices);
  const found = [...cheapestBlocks(prices)];
  expect(found.map(({ cost }) => cost)).toEqual([...all.values()].sort((a, b) => a - b));
  expect(new Set(found.map(({ block }) => setOf(block))).size).toBe(all.size);
  for (const { block, cost } of found) {
    expect(all.get(setOf(block))).toBe(cost);
    expect(addedUp(block, prices)).toBe(cost);
  }
}

describe('the cheapest blocks', () => {
  test('of 200 random libraries and ledgers are those that trying everything finds, all in order', () => {
    for (let seed = 1; seed <= 200; seed += 1) expectAll(ledgerPrices(randomFrom(seed)));
  });

  test('of 200 wild prices are those that trying everything finds, all in order', () => {
    for (let seed = 1; seed <= 200; seed += 1) expectAll(wildPrices(randomFrom(seed)));
  });

  test('are the same each time', () => {
    const prices = wildPrices(randomFrom(7));
    expect([...cheapestBlocks(prices)]).toEqual([...cheapestBlocks(prices)]);
  });

  test('of one drill are its rounds, at most ten of them', () => {
    const one = (rounds: number): Prices => ({
      rounds,
      familyOf: [0],
      family: [Array.from({ length: rounds + 1 }, () => 0)],
      step: [Array.from({ length: rounds + 1 }, (_, n) => n)],
      move: [[0]],
      open: [2],
    });
    expect([...cheapestBlocks(one(10))]).toEqual([{ block: [{ drill: 0, rounds: 10 }], cost: 12 }]);
    expect([...cheapestBlocks(one(11))]).toEqual([]);
  });

  test('without any drill are none', () => {
    const none: Prices = { rounds: 3, familyOf: [], family: [], step: [], move: [], open: [] };
    expect([...cheapestBlocks(none)]).toEqual([]);
  });
});
