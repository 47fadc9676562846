import { describe, expect, test } from 'vitest';
import { cheapestPairs, roundRobin } from '../../core/planning/round-robin.ts';
import { drawCosts, matchingCases, matchingSource } from './matchings.ts';
import { checks, named } from './values.ts';

const numbered = (n: number) => Array.from({ length: n }, (_, i) => i + 1);

describe('roundRobin', () => {
  test.each(checks('F.berger.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    expect(roundRobin(numbered(c.inputs.n_players))).toEqual(c.expected.rounds);
  });

  test.each(checks('F.prop.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const players = numbered(c.inputs.n_players);
    const rounds = roundRobin(players);
    const { expected } = c;
    expect(rounds).toHaveLength(expected.rounds);
    expect(rounds.flat()).toHaveLength(expected.pairs);
    for (const round of rounds) {
      expect(round).toHaveLength(expected.pairs_per_round);
      expect(new Set(round.flat()).size).toBe(players.length - expected.byes_per_round);
    }
    for (const player of players) {
      const byes = rounds.filter((round) => !round.flat().includes(player));
      expect(byes).toHaveLength(expected.byes_per_player);
    }
  });
});

/** A sum of doubles in units of 2^-80, without rounding. */
const exactly = (costs: number[]) => costs.reduce((sum, cost) => sum + BigInt(cost * 2 ** 80), 0n);

describe('cheapestPairs', () => {
  test.each(checks('F.match.').map((c) => [named(c), c] as const))('%s', (_, c) => {
    const cost: number[][] = c.inputs.cost_matrix;
    const pairs = cheapestPairs(cost)!;
    const sum = pairs.reduce((total, [a, b]) => total + cost[a]![b]!, 0);
    expect(sum).toBe(c.expected.min_cost);
    expect(new Set(pairs.flat()).size).toBe(c.inputs.n);
    if (c.expected.number_of_optimal_matchings === 1) {
      expect(pairs.map(([a, b]) => [a + 1, b + 1])).toEqual(c.expected.one_optimal_matching);
    }
  });

  const cases = matchingCases.map((c) => [c.kind, c.n, c.seed, c] as const);
  test.each(cases)(`${matchingSource}: %s costs, %i players, seed %i`, (_kind, n, _seed, c) => {
    const cost = drawCosts(c);
    const pairs = cheapestPairs(cost);
    if (c.optimum === null) {
      expect(pairs).toBeUndefined();
      return;
    }
    expect(new Set(pairs!.flat()).size).toBe(n);
    expect(String(exactly(pairs!.map(([a, b]) => cost[a]![b]!)))).toBe(c.optimum);
  });
});
