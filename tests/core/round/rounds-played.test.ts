import { expect, test } from 'vitest';
import { roundsPlayed } from '../../../core/round/rounds-played.ts';

const round = (...pairs: string[]) => ({
  tallies: pairs.map((players) => ({ pair: { players: [...players] } })),
});

test('each player has the rounds that the player was in, in a pair or a trio', () => {
  expect([...roundsPlayed([round('ab', 'cde'), round('ab')])]).toEqual([
    ['a', 2],
    ['b', 2],
    ['c', 1],
    ['d', 1],
    ['e', 1],
  ]);
});

test('whoever waited for a court has none', () => {
  expect(roundsPlayed([round('ab')]).get('c')).toBeUndefined();
});
