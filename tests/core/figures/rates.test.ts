import { describe, expect, test } from 'vitest';
import { rateInterval } from '../../../core/figures/interval.ts';
import { ratesOf } from '../../../core/figures/rates.ts';
import { playerStints } from '../../../core/figures/stints.ts';
import { lobTerms, practiceWith, roundWith, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const of = (player: string, ...rounds: ReturnType<typeof roundWith>[]) =>
  ratesOf(playerStints([practiceWith('2026-03-02', rounds)]).get(player) ?? []);

describe('rates', () => {
  test('of nothing are undefined', () => {
    expect(ratesOf([])).toEqual({
      sets: 0,
      minutes: 0,
      touches: { counted: 0, waiting: 0, doubted: 0 },
    });
  });

  test('are sets over minutes of own live clock, with the exact interval', () => {
    const { sets, minutes, perMinute } = of(
      'c',
      roundWith(0, termsWith(), [[['a', 'b', 'c'], 6]], 90),
      roundWith(1, lobTerms, [[['c', 'd'], 3]], 120),
    );
    expect([sets, minutes]).toEqual([4 + 3, 1 + 2]);
    expect(perMinute).toEqual(rateInterval(7, 3));
  });

  test('without live clock are undefined, whatever was counted', () => {
    const still = of('a', roundWith(0, lobTerms, [[['a', 'b'], 2]], 0));
    expect(still).toMatchObject({ sets: 2, minutes: 0 });
    expect(still).not.toHaveProperty('perMinute');
    expect(still).not.toHaveProperty('touchesPerMinute');
  });

  test('of touches are all touches and their limits over the same minutes', () => {
    const round = estimatedRound(
      roundWith(0, termsWith(), [[['a', 'b'], 4]], 120),
      estimateWith(56, 5),
    );
    expect(of('a', round).touchesPerMinute).toEqual({ rate: 14, low: 12.5, high: 15.5 });
  });

  test('of touches are undefined while a round waits for its estimate', () => {
    expect(of('a', roundWith(0, lobTerms, [[['a', 'b'], 2]]))).not.toHaveProperty(
      'touchesPerMinute',
    );
  });
});
