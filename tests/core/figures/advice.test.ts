import { describe, expect, test } from 'vitest';
import { isOffSize, sizeAdvice } from '../../../core/figures/advice.ts';
import { comingConsistency } from '../../../core/figures/pooled.ts';
import { adviseSize } from '../../../core/figures/setsize.ts';
import { pairStints } from '../../../core/figures/stints.ts';
import { practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const terms = termsWith();
const success = (consistency: number) => ({ success: { consistency, consistencySd: 0.05 } });
const played = (consistency: number, players = ['a', 'b'], of = terms) =>
  estimatedRound(roundWith(0, of, [[players, 3]]), estimateWith(50, 5, success(consistency)));
const stints = (...days: ReturnType<typeof played>[]) =>
  pairStints(days.map((round, day) => practiceWith(`2026-03-0${day + 1}`, [round])));
const known = (consistency: number) => comingConsistency([[{ terms, ...success(consistency) }]])!;

describe('the advice on a set size', () => {
  test('without a round of either player at the drill is none', () => {
    expect(sizeAdvice([], terms, ['a', 'b'], 120)).toBeUndefined();
    const others = stints(
      played(0.9, ['c', 'd']),
      played(0.9, ['a', 'b'], termsWith({ drill: 'volley' })),
    );
    expect(sizeAdvice(others, terms, ['a', 'b'], 120)).toBeUndefined();
  });

  test('by another rule than in a row is none', () => {
    expect(
      sizeAdvice(stints(played(0.3, ['a', 'b'], serveTerms)), serveTerms, ['a', 'b'], 120),
    ).toBeUndefined();
  });

  test('rests on the pair’s own rounds together, carried over to the next practice', () => {
    expect(
      sizeAdvice(stints(played(0.9), played(0.6, ['a', 'c'])), terms, ['b', 'a'], 120),
    ).toEqual({
      ...adviseSize({ ...known(0.9), seconds: 120, tempo: 1.53, refeed: 5.66 }),
      together: true,
    });
  });

  test('for two who never met rests on the rounds of each with others', () => {
    const advice = sizeAdvice(stints(played(0.9, ['a', 'c'])), terms, ['a', 'b'], 120);
    expect(advice?.together).toBe(false);
    expect(advice?.size).toBe(sizeAdvice(stints(played(0.9)), terms, ['a', 'b'], 120)?.size);
  });

  test('counts the rounds of a size for another size: consistency is the same', () => {
    const small = played(0.9, ['a', 'b'], termsWith({ size: 4 }));
    expect(sizeAdvice(stints(small), terms, ['a', 'b'], 120)?.together).toBe(true);
  });

  test('for a steadier pair is a longer set, and so it is for a faster clock', () => {
    const size = (consistency: number, pace = {}) =>
      sizeAdvice(stints(played(consistency)), terms, ['a', 'b'], 120, pace)!.size;
    expect(size(0.95)).toBeGreaterThan(size(0.8));
    expect(size(0.95, { tempo: 1, refeed: 3 })).toBeGreaterThan(size(0.95));
  });
});

describe('a count that says the size is off', () => {
  test('is none at all, or more than eight, in a row', () => {
    expect([0, 1, 8, 9].map((sets) => isOffSize(terms, sets))).toEqual([true, false, false, true]);
    expect(isOffSize(serveTerms, 0)).toBe(false);
    expect(isOffSize(termsWith({ rule: 'in-total' }), 12)).toBe(false);
  });
});
