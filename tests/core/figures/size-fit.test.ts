import { describe, expect, test } from 'vitest';
import { carriedOver } from '../../../core/figures/consistency.ts';
import { groupShare } from '../../../core/figures/group-share.ts';
import { fitLevels } from '../../../core/figures/level-fit.ts';
import { levelTallies } from '../../../core/figures/level-tallies.ts';
import { pairShare } from '../../../core/figures/pair-share.ts';
import { adviseSize } from '../../../core/figures/setsize.ts';
import { sizeFits } from '../../../core/figures/size-fit.ts';
import type { Summary } from '../../../core/ledger/summary.ts';
import { fittingSize } from '../../../core/planning/fitting-size.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const success = (consistency: number) => ({ success: { consistency, consistencySd: 0.03 } });
const played = (consistency: number, size: number, drill = 'rally', players = ['a', 'b']) =>
  estimatedRound(
    roundWith(0, termsWith({ size, drill }), [[players, 3]]),
    estimateWith(50, 5, success(consistency)),
  );
const days = (...rounds: ReturnType<typeof played>[][]): Summary[] =>
  rounds.map((own, day) => practiceWith(`2026-03-0${day + 1}`, own));
const fitOf = (summaries: Summary[]) => fitLevels(levelTallies(summaries, false)!)!;
const fitsOf = (summaries: Summary[]) =>
  sizeFits(fitOf(summaries), summaries, 120, () => undefined);

describe('too hard or too easy', () => {
  test('is said of a size that gives less than two, or more than six sets', () => {
    const summaries = days([
      played(0.8, 20, 'long'),
      played(0.95, 3, 'short'),
      played(0.9, 7, 'right'),
    ]);
    expect(fitsOf(summaries).map(({ terms, verdict }) => [terms.drill, verdict])).toEqual([
      ['long', 'hard'],
      ['short', 'easy'],
      ['right', 'fits'],
    ]);
  });

  test('comes with the size that every other advice gives of the pair', () => {
    const summaries = days([played(0.8, 20)]);
    const [fit] = fitsOf(summaries);
    const share = pairShare(fitOf(summaries), termsWith(), ['a', 'b'])!;
    const advice = adviseSize({
      ...carriedOver(share),
      ...{ seconds: 120, tempo: 1.53, refeed: 5.66 },
    });
    expect(fit?.size).toBe(advice.size);
    expect(fit?.fitting).toBeCloseTo(advice.expected, 10);
    expect(fit!.expected).toBeLessThan(2);
  });

  test('is judged by the size of the last day, and by those who played it then', () => {
    const summaries = days([played(0.8, 20)], [played(0.8, 6, 'rally', ['c', 'd'])]);
    const fits = fitsOf(summaries);
    expect(fits).toHaveLength(1);
    expect(fits[0]).toMatchObject({ date: '2026-03-02', pairs: 1, terms: { size: 6 } });
  });

  test('is not asked of drills whose sets have a length of their own', () => {
    const rounds = [lobTerms, serveTerms].map((terms) =>
      estimatedRound(roundWith(0, terms, [[['a', 'b'], 3]]), estimateWith(50, 5, success(0.8))),
    );
    const summaries = [practiceWith('2026-03-01', [...rounds, played(0.8, 10)])];
    expect(fitsOf(summaries).map(({ terms }) => terms.drill)).toEqual(['rally']);
  });
});

describe('the size for a group', () => {
  const fit = fitOf(days([played(0.8, 10), played(0.95, 10, 'rally', ['c', 'd'])]));
  const drill = { id: 'rally', family: 'groundstrokes', rule: 'in-a-row' } as const;

  test('is none where the drill’s own suits, and else the one nearest four sets', () => {
    const size = fittingSize(fit, { ...drill, size: 20 }, ['a', 'b'], 120)!;
    expect(size).toBeLessThan(20);
    expect(fittingSize(fit, { ...drill, size }, ['a', 'b'], 120)).toBeUndefined();
    expect(fittingSize(fit, { ...drill, size: 2 }, ['c', 'd'], 120)).toBeGreaterThan(2);
  });

  test('is none where nothing is known, and for sets that are not in a row', () => {
    expect(fittingSize(undefined, { ...drill, size: 20 }, ['a', 'b'], 120)).toBeUndefined();
    expect(fittingSize(fit, { ...drill, size: 20 }, ['x', 'y'], 120)).toBeUndefined();
    const sequence = { ...drill, rule: 'sequence', size: 20 } as const;
    expect(fittingSize(fit, sequence, ['a', 'b'], 120)).toBeUndefined();
  });

  test('rests on a share that is as wide as its pairs differ', () => {
    const alike = groupShare(fit, termsWith(), ['a', 'b'])!;
    const unlike = groupShare(fit, termsWith(), ['a', 'b', 'c', 'd'])!;
    expect(alike.consistency).toBeCloseTo(pairShare(fit, termsWith(), ['a', 'b'])!.consistency, 12);
    expect(unlike.consistency).toBeGreaterThan(alike.consistency);
    expect(groupShare(fit, termsWith(), ['a'])).toBeUndefined();
  });
});
