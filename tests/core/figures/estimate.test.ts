import { describe, expect, test } from 'vitest';
import { estimateTally, isCurrent } from '../../../core/figures/estimate.ts';
import { estimateShots, TOUCHES_MODEL_VERSION } from '../../../core/figures/touches.ts';
import { joined, USUAL_REFEED } from '../../../core/figures/touches-round.ts';
import type { Tally } from '../../../core/round/tally.ts';
import { lobTerms, serveTerms, termsWith } from '../made.ts';

const tallyWith = (over: Partial<Tally> = {}): Tally => ({
  pair: { letter: 'A', players: ['a', 'b'] },
  sets: 3,
  times: [24, 58, 83],
  late: 0,
  doubtful: 0,
  open: 0,
  ...over,
});
const round = { rule: 'in-a-row', size: 10, sets: 3, seconds: 120 } as const;
const told = (over: Partial<Tally> = {}, terms = termsWith()) =>
  estimateTally(terms, 120, tallyWith(over), undefined);

describe('the estimate of a tally', () => {
  test('is that of the model, from the times of its marks, with its version', () => {
    const { consistency, consistencySd, shots, sd, low, high } = estimateShots({
      ...round,
      times: [24, 58, 83],
    });
    expect(told()).toEqual({
      model: TOUCHES_MODEL_VERSION,
      ...{ shots, sd, low, high },
      success: { consistency, consistencySd },
    });
  });

  const byCounts = estimateShots(round).shots;
  test.each([
    ['a corrected count', { times: [24, 58] }],
    ['a mark after the horn that counts', { times: [24, 58, 121] }],
    ['two marks in less time than a set takes', { times: [24, 27, 83] }],
    ['a first mark sooner than a set can be struck', { times: [4, 58, 83] }],
  ])('takes the count alone where there is %s', (_, over) => {
    expect(told(over).shots).toBe(byCounts);
  });

  test('takes how far an unfinished set had come, and the longest run where there was no set', () => {
    expect(told({ times: [], showing: 7 }).shots).toBe(
      estimateShots({ ...round, showing: 7 }).shots,
    );
    expect(told({ sets: 0, times: [], best: 6 }).shots).toBe(
      estimateShots({ ...round, sets: 0, times: [], best: 6 }).shots,
    );
  });

  test('passes over shots that a set of this size cannot show', () => {
    expect(told({ times: [], showing: 10 }).shots).toBe(byCounts);
    expect(told({ sets: 0, times: [], best: 12 }).shots).toBe(
      estimateShots({ ...round, sets: 0 }).shots,
    );
  });

  test('without any live clock is what the marks prove, and says nothing of consistency', () => {
    const still = estimateTally(lobTerms, 0, tallyWith({ sets: 0, times: [] }), undefined);
    expect(still).toEqual({ model: TOUCHES_MODEL_VERSION, shots: 0, sd: 0, low: 0, high: 0 });
    expect(estimateTally(lobTerms, 0, tallyWith(), undefined)).toMatchObject({
      shots: 6,
      implausible: true,
    });
  });

  test('of more sets than the clock allows is doubted, and says nothing of consistency', () => {
    const doubted = told({ sets: 30, times: [] });
    expect(doubted.implausible).toBe(true);
    expect(doubted.success).toBeUndefined();
    expect(doubted.low).toBeGreaterThanOrEqual(300);
  });

  test('of plausible sets carries no word of doubt', () => {
    expect(told()).not.toHaveProperty('implausible');
  });

  test('on target is the pair’s touches, and each player’s own share of balls that meet it', () => {
    const { own, success, shots, low, high } = told(
      { sets: 12, byPlayer: { a: 10, b: 2 }, times: [] },
      serveTerms,
    );
    const model = estimateShots({ rule: 'on-target', size: 1, sets: 12, seconds: 120 });
    expect([shots, low, high]).toEqual([model.shots, model.low, model.high]);
    expect(success?.consistency).toBe(model.consistency);
    // Each of two strikes every other ball, some 39 of 78: 10 of them are a quarter, 2 a twentieth.
    expect(own?.a?.consistency).toBeCloseTo(11 / 41, 1);
    expect(own?.b?.consistency).toBeCloseTo(3 / 41, 1);
  });

  test('on target gives a player of a trio every third ball', () => {
    const pair = { letter: 'A', players: ['a', 'b', 'c'] };
    const { own } = told({ pair, sets: 13, byPlayer: { a: 13 }, times: [] }, serveTerms);
    expect(own?.a?.consistency).toBeCloseTo(14 / 28, 1);
    expect(own?.c?.consistency).toBeCloseTo(1 / 28, 1);
  });
});

describe('what was measured of a drill', () => {
  const counted = tallyWith({ times: [] });
  const usual = estimateTally(termsWith(), 120, counted, undefined);

  test('narrows the estimate, and is kept with it', () => {
    const pace = { tempo: 1.53 };
    const measured = estimateTally(termsWith(), 120, counted, pace);
    expect(measured.pace).toEqual(pace);
    expect(measured.sd).toBeLessThan(usual.sd);
    expect(measured.shots).toBe(estimateShots({ ...round, tempo: 1.53 }).shots);
  });

  test('of a re-feed is joined to the usual one with an sd of the logarithm of 0.18', () => {
    const measured = estimateTally(termsWith(), 120, counted, { refeed: 4 });
    const refeed = joined(USUAL_REFEED, 4, 0.18);
    expect(measured.shots).toBe(estimateShots({ ...round, priors: { refeed } }).shots);
    // Precisions of 1 / 0.27² and 1 / 0.18² weigh 4 to 9.
    expect(refeed[0]).toBeCloseTo(5.66 ** (4 / 13) * 4 ** (9 / 13), 12);
    expect(refeed[1]).toBeCloseTo((1 / 0.27 ** 2 + 1 / 0.18 ** 2) ** -0.5, 12);
  });

  test('counts on target for every ball, and for a player’s own as many times as there are players', () => {
    const tally = tallyWith({ sets: 12, byPlayer: { a: 10, b: 2 }, times: [] });
    const { shots, own } = estimateTally(serveTerms, 120, tally, { tempo: 3 });
    const slow = { rule: 'on-target', size: 1, seconds: 120 } as const;
    expect(shots).toBe(estimateShots({ ...slow, sets: 12, tempo: 3 }).shots);
    expect(own?.a?.consistency).toBe(
      estimateShots({ ...slow, sets: 10, tempo: 6, priors: { tempo: [3.06, 0.127] } }).consistency,
    );
  });
});

describe('an estimate', () => {
  const kept = estimateTally(termsWith(), 120, tallyWith(), { tempo: 1.5 });

  test('is current for the pace and the model that made it', () => {
    expect(isCurrent(kept, { tempo: 1.5 })).toBe(true);
    expect(isCurrent(told(), undefined)).toBe(true);
    expect(isCurrent(told(), {})).toBe(true);
  });

  test('is not where there is none, or another check, or another model', () => {
    expect(isCurrent(undefined, undefined)).toBe(false);
    expect(isCurrent(kept, { tempo: 1.6 })).toBe(false);
    expect(isCurrent(kept, undefined)).toBe(false);
    expect(isCurrent(kept, { tempo: 1.5, refeed: 5 })).toBe(false);
    expect(isCurrent({ ...kept, model: TOUCHES_MODEL_VERSION - 1 }, { tempo: 1.5 })).toBe(false);
  });
});
