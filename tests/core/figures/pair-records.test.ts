import { describe, expect, test } from 'vitest';
import { pairRecords } from '../../../core/figures/pair-records.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';

const records = (...rounds: ReturnType<typeof roundWith>[]) =>
  pairRecords([practiceWith('2026-03-02', rounds)], 'groundstrokes');

describe('the records of a family', () => {
  test('of nothing are none', () => {
    expect(pairRecords([], 'volleys')).toEqual([]);
  });

  test('put together what two players did at one drill and size, whoever began', () => {
    const found = records(
      roundWith(0, termsWith(), [[['a', 'b'], 3]], 120),
      roundWith(1, termsWith(), [[['b', 'a'], 4]], 90),
      roundWith(2, termsWith({ size: 4 }), [[['a', 'b'], 9]], 60),
    );
    expect(found.map(({ a, b, sets, exposure }) => [a, b, sets, exposure])).toEqual([
      ['a', 'b', 7, 3.5],
      ['a', 'b', 9, 1],
    ]);
    expect(found[0]?.drill).not.toBe(found[1]?.drill);
  });

  test('of a trio are its three pairs, each with the sets in which it hit and a third of the clock', () => {
    const found = records(roundWith(0, termsWith(), [[['a', 'b', 'c'], 5]], 90));
    // Sets 0 and 3 are of a and b, 1 and 4 of b and c, 2 of c and a.
    expect(found.map(({ a, b, sets, exposure }) => [a, b, sets, exposure])).toEqual([
      ['a', 'b', 2, 0.5],
      ['b', 'c', 2, 0.5],
      ['c', 'a', 1, 0.5],
    ]);
  });

  test('leave out other families, balls on target, and rounds without live clock', () => {
    const onTarget = { ...serveTerms, family: 'groundstrokes' as const };
    expect(
      records(
        roundWith(0, lobTerms, [[['a', 'b'], 3]]),
        roundWith(1, onTarget, [[['a', 'b'], { a: 3 }]]),
        roundWith(2, termsWith(), [[['a', 'b'], 3]], 0),
      ),
    ).toEqual([]);
  });

  test('leave out a player who is said to have played with himself', () => {
    expect(records(roundWith(0, termsWith(), [[['a', 'a'], 3]]))).toEqual([]);
  });
});
