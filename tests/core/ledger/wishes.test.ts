import { describe, expect, test } from 'vitest';
import type { Saying } from '../../../core/ledger/entry.ts';
import { foldWishes } from '../../../core/ledger/wishes.ts';
import { teller } from '../told.ts';

const wish = (a: string, b: string, wish: 'together' | 'apart' | 'none'): Saying => ({
  kind: 'wish-set',
  a,
  b,
  wish,
});
const fold = (...sayings: Saying[]) => {
  const tell = teller();
  return foldWishes(sayings.map((saying) => tell(saying)));
};

describe('wishes', () => {
  test('are none before one was said', () => {
    expect(fold()).toEqual([]);
    expect(fold({ kind: 'player-added', player: 'p1', name: 'Lin' })).toEqual([]);
  });

  test('stand one for any two players, the latest, whoever of them is named first', () => {
    expect(
      fold(wish('p1', 'p2', 'together'), wish('p1', 'p3', 'apart'), wish('p2', 'p1', 'apart')),
    ).toEqual([
      { a: 'p2', b: 'p1', wish: 'apart' },
      { a: 'p1', b: 'p3', wish: 'apart' },
    ]);
  });

  test('are taken back in either order of the two', () => {
    expect(fold(wish('p1', 'p2', 'together'), wish('p2', 'p1', 'none'))).toEqual([]);
  });
});
