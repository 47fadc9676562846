import { describe, expect, test } from 'vitest';
import { cheapestGroups } from '../../../core/planning/cheapest-groups.ts';
import type { PairCosts } from '../../../core/planning/pair-cost.ts';
import { type Random, randomFrom } from '../../../demo-data/random.ts';

/** Costs of all kinds: whole numbers, many ties, negative ones, wide scales. */
function anyCosts(players: number, random: Random): PairCosts {
  const most = [2, 20, 1000][random.below(3)]!;
  const least = random.chance(0.3) ? -most / 2 : 0;
  const any = () => Math.round((least + random.unit() * most) * 4) / 4;
  const pair = Array.from({ length: players }, () => Array<number>(players).fill(0));
  for (let a = 0; a < players; a += 1) {
    for (let b = a + 1; b < players; b += 1) {
      pair[a]![b] = any();
      pair[b]![a] = pair[a]![b]!;
    }
  }
  const turn = Array.from({ length: players }, () => (random.chance(0.5) ? any() : 0));
  const whole = random.chance(0.5);
  return {
    pair,
    trio: (a, b, c) =>
      (whole ? 1 : 0) * (pair[a]![b]! + pair[a]![c]! + pair[b]![c]!) +
      turn[a]! +
      turn[b]! +
      turn[c]!,
  };
}

const costOf = (groups: readonly (readonly number[])[], { pair, trio }: PairCosts) =>
  groups.reduce((sum, [a, b, c]) => sum + (c === undefined ? pair[a!]![b!]! : trio(a!, b!, c)), 0);

/** Every way to put players into pairs and, of an odd number, one trio. */
function* everyWay(players: readonly number[]): Generator<number[][]> {
  const [first, ...others] = players;
  if (first === undefined) {
    yield [];
    return;
  }
  for (const [at, other] of others.entries()) {
    const rest = others.toSpliced(at, 1);
    for (const way of everyWay(rest)) yield [[first, other], ...way];
    if (players.length % 2 === 0) continue;
    for (const third of rest.slice(at)) {
      const left = rest.filter((player) => player !== third);
      for (const way of everyWay(left)) yield [[first, other, third], ...way];
    }
  }
}
describe('the cheapest pairs and trio', () => {
  test('of 200 random squads of 2 to 10 are as cheap as trying every way finds', () => {
    for (let seed = 1; seed <= 200; seed += 1) {
      const random = randomFrom(seed);
      const players = 2 + (seed % 9);
      const costs = anyCosts(players, random);
      let least = Number.POSITIVE_INFINITY;
      for (const way of everyWay(costs.pair.map((_, at) => at))) {
        least = Math.min(least, costOf(way, costs));
      }
      const groups = cheapestGroups(costs);
      expect(costOf(groups, costs)).toBe(least);
      expect(groups.flat().sort((a, b) => a - b)).toEqual(costs.pair.map((_, at) => at));
      expect(groups.filter((group) => group.length === 3)).toHaveLength(players % 2);
    }
  });

  test('of three are the trio, of two the pair', () => {
    expect(cheapestGroups(anyCosts(3, randomFrom(1)))).toEqual([[0, 1, 2]]);
    expect(cheapestGroups(anyCosts(2, randomFrom(1)))).toEqual([[0, 1]]);
  });

  test('are the same each time', () => {
    for (const players of [9, 12]) {
      const costs = anyCosts(players, randomFrom(players));
      expect(cheapestGroups(costs)).toEqual(cheapestGroups(costs));
    }
  });

  test.each([0, 1])('of %i players is an error', (players) => {
    expect(() => cheapestGroups(anyCosts(players, randomFrom(1)))).toThrow(RangeError);
  });
});
