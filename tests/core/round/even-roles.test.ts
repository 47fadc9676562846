import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenRoles, timesFirst } from '../../../core/round/even-roles.ts';
import type { Pair } from '../../../core/round/pair.ts';

const pair = (letter: string, players: string): Pair => ({ letter, players: [...players] });
const round = (drill: string, ...pairs: string[]) => ({
  terms: { drill },
  tallies: pairs.map((players, at) => ({ pair: pair('ABCDEF'[at]!, players) })),
});

describe('how often a player began in role 1', () => {
  test('is counted at that drill only', () => {
    const rounds = [round('lob', 'ab', 'cde'), round('lob', 'ac'), round('serve', 'ba')];
    expect([...timesFirst(rounds, 'lob')]).toEqual([
      ['a', 2],
      ['c', 1],
    ]);
  });

  test('is nothing where the drill was not played', () => {
    expect(timesFirst([], 'lob').size).toBe(0);
  });
});

describe('even roles', () => {
  test('let whoever had role 1 less often begin', () => {
    const times = new Map([
      ['a', 2],
      ['b', 1],
    ]);
    expect(evenRoles([pair('A', 'ab'), pair('B', 'cd')], times)).toEqual([
      pair('A', 'ba'),
      pair('B', 'cd'),
    ]);
  });

  test('differ by one at most after any number of rounds together, in a pair and in a trio', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('ab', 'abc'),
        fc.integer({ min: 1, max: 12 }),
        (players, many) => {
          const played: ReturnType<typeof round>[] = [];
          let pairs = [pair('A', players)];
          for (let at = 0; at < many; at += 1) {
            pairs = evenRoles(pairs, timesFirst(played, 'lob'));
            played.push(round('lob', pairs[0]!.players.join('')));
          }
          const times = timesFirst(played, 'lob');
          const counts = [...players].map((player) => times.get(player) ?? 0);
          expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});
