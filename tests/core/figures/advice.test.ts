import { describe, expect, test } from 'vitest';
import { isOffSize, sizeAdvice } from '../../../core/figures/advice.ts';
import { carriedOver } from '../../../core/figures/consistency.ts';
import { fitLevels } from '../../../core/figures/level-fit.ts';
import { levelTallies } from '../../../core/figures/level-tallies.ts';
import { pairShare } from '../../../core/figures/pair-share.ts';
import { adviseSize } from '../../../core/figures/setsize.ts';
import { practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const terms = termsWith();
const success = (consistency: number) => ({ success: { consistency, consistencySd: 0.05 } });
const played = (consistency: number, players = ['a', 'b'], of = terms) =>
  estimatedRound(roundWith(0, of, [[players, 3]]), estimateWith(50, 5, success(consistency)));
const fitOf = (...days: ReturnType<typeof played>[]) =>
  fitLevels(
    levelTallies(
      days.map((round, day) => practiceWith(`2026-03-0${day + 1}`, [round])),
      false,
    )!,
  );

describe('the advice on a set size', () => {
  test('where nothing is known of either player is none', () => {
    expect(sizeAdvice(undefined, terms, ['a', 'b'], 120)).toBeUndefined();
    expect(sizeAdvice(fitOf(played(0.9, ['c', 'd'])), terms, ['a', 'b'], 120)).toBeUndefined();
  });

  test('by another rule than in a row is none', () => {
    const fit = fitOf(played(0.8, ['a', 'b'], serveTerms), played(0.8));
    expect(sizeAdvice(fit, serveTerms, ['a', 'b'], 120)).toBeUndefined();
  });

  test('rests on the pair’s share in the model of levels, carried over to the next practice', () => {
    const fit = fitOf(played(0.9), played(0.6, ['a', 'c']))!;
    expect(sizeAdvice(fit, terms, ['b', 'a'], 120)).toEqual({
      ...adviseSize({
        ...carriedOver(pairShare(fit, terms, ['a', 'b'])!),
        ...{ seconds: 120, tempo: 1.53, refeed: 5.66 },
      }),
      together: true,
    });
  });

  test('for two who never met rests on the rounds of each with others', () => {
    const fit = fitOf(played(0.95, ['a', 'c']), played(0.95, ['b', 'd']), played(0.6, ['e', 'f']));
    const advice = sizeAdvice(fit, terms, ['a', 'b'], 120);
    expect(advice?.together).toBe(false);
    expect(advice!.size).toBeGreaterThan(sizeAdvice(fit, terms, ['e', 'f'], 120)!.size);
  });

  test('is there for a drill that nobody has played yet, from other drills of its kind', () => {
    const fit = fitOf(played(0.9));
    const other = termsWith({ drill: 'volley' });
    expect(sizeAdvice(fit, other, ['a', 'b'], 120)?.together).toBe(false);
    const overhead = termsWith({ drill: 'smash', family: 'overheads-and-lobs' });
    expect(sizeAdvice(fit, overhead, ['a', 'b'], 120)).toBeUndefined();
  });

  test('counts the rounds of a size for another size: what a pair can do is the same', () => {
    const fit = fitOf(played(0.9, ['a', 'b'], termsWith({ size: 4 })));
    expect(sizeAdvice(fit, terms, ['a', 'b'], 120)?.together).toBe(true);
  });

  test('for a steadier pair is a longer set, and so it is for a faster clock', () => {
    const size = (consistency: number, pace = {}) =>
      sizeAdvice(fitOf(played(consistency)), terms, ['a', 'b'], 120, pace)!.size;
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
