import { describe, expect, test } from 'vitest';
import { roundRobin } from '../../../core/planning/round-robin.ts';

describe('roundRobin', () => {
  const sizes = Array.from({ length: 23 }, (_, i) => i + 2);

  test.each(sizes)('%i players all meet once, and nobody is asked for twice in a round', (n) => {
    const players = Array.from({ length: n }, (_, i) => `player ${i}`);
    const rounds = roundRobin(players);
    expect(rounds).toHaveLength(n % 2 === 0 ? n - 1 : n);
    const met = rounds.flat().map((pair) => [...pair].sort().join(' and '));
    expect(met).toHaveLength((n * (n - 1)) / 2);
    expect(new Set(met).size).toBe(met.length);
    for (const round of rounds) {
      expect(round).toHaveLength(Math.floor(n / 2));
      expect(new Set(round.flat()).size).toBe(2 * round.length);
    }
  });

  test.each(sizes)(
    'each of %i players is named first in half of the pairs, give or take one',
    (n) => {
      const players = Array.from({ length: n }, (_, i) => i);
      const pairs = roundRobin(players).flat();
      for (const player of players) {
        const first = pairs.filter(([one]) => one === player).length;
        const second = pairs.filter(([, other]) => other === player).length;
        expect(Math.abs(first - second)).toBeLessThanOrEqual(1);
      }
    },
  );

  test('an odd one out sits out one round', () => {
    const rounds = roundRobin(['Ana', 'Bo', 'Cy']);
    expect(rounds).toHaveLength(3);
    for (const player of ['Ana', 'Bo', 'Cy']) {
      expect(rounds.filter((round) => !round.flat().includes(player))).toHaveLength(1);
    }
  });

  test('nobody has no rounds, one player has a round to sit out', () => {
    expect(roundRobin([])).toEqual([]);
    expect(roundRobin(['Ana'])).toEqual([[]]);
  });

  test('two players of the same name are still two', () => {
    expect(roundRobin(['Ana', 'Ana'])).toEqual([[['Ana', 'Ana']]]);
  });
});
