import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  estimateShots,
  TOUCHES_MODEL_VERSION,
  type TouchesRound,
} from '../../../core/figures/touches.ts';

const four: TouchesRound = { rule: 'in-a-row', size: 10, sets: 4, seconds: 120 };

/** Any round that can be told, the absurd ones too. */
const rounds: fc.Arbitrary<TouchesRound> = fc
  .record({
    rule: fc.constantFrom(
      'in-a-row' as const,
      'in-total' as const,
      'sequence' as const,
      'on-target' as const,
    ),
    size: fc.integer({ min: 1, max: 25 }),
    sets: fc.integer({ min: 0, max: 40 }),
    seconds: fc.double({ min: 5, max: 200, noNaN: true }),
    showing: fc.option(fc.double({ min: 0, max: 0.999, noNaN: true })),
    best: fc.option(fc.double({ min: 0, max: 0.999, noNaN: true })),
    bestTolerance: fc.integer({ min: 0, max: 3 }),
    misses: fc.option(fc.integer({ min: 0, max: 60 })),
    playedOut: fc.boolean(),
    tempo: fc.option(fc.double({ min: 0.6, max: 4, noNaN: true })),
    marks: fc.option(fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { maxLength: 8 })),
  })
  .map(({ showing, best, misses, tempo, marks, ...told }) => {
    const size = told.rule === 'on-target' ? 1 : told.size;
    const times = [...new Set(marks?.map((part) => part * told.seconds))].sort((a, b) => a - b);
    return {
      ...told,
      size,
      ...(showing !== null && { showing: Math.floor(showing * size) }),
      ...(best !== null && { best: Math.floor(best * size) }),
      ...(misses !== null && { misses }),
      ...(tempo !== null && { tempo }),
      ...(marks && { times, sets: times.length }),
    };
  });

describe('an estimate of touches', () => {
  it('of any round is made of finite numbers, in order, and never below what was counted', () => {
    fc.assert(
      fc.property(rounds, (round) => {
        const found = estimateShots(round);
        const { shots, sd, low, high, consistency, consistencySd, misses } = found;
        for (const value of [shots, sd, low, high, consistency, consistencySd, misses])
          expect(Number.isFinite(value)).toBe(true);
        const counted = round.size * round.sets;
        expect(low).toBeGreaterThanOrEqual(counted);
        expect(shots).toBeGreaterThanOrEqual(counted);
        expect(high).toBeGreaterThanOrEqual(low);
        // A long tail may pull the mean a little past a quantile.
        expect(shots).toBeGreaterThan(low - 1);
        expect(shots).toBeLessThan(high + 1 + sd);
        expect(consistency).toBeGreaterThan(0);
        expect(consistency).toBeLessThan(1);
        expect(misses).toBeGreaterThanOrEqual(0);
        expect(misses).toBeLessThanOrEqual(shots + 1e-9);
      }),
      { numRuns: 250, seed: 1 },
    );
  });

  it('does not fall as the seconds of the round grow', () => {
    // Where misses were counted, a longer round may also mean slower re-feeds.
    const counts = rounds.map(({ times, misses, showing, ...told }) => told);
    fc.assert(
      fc.property(counts, (round) => {
        const found = estimateShots(round);
        const longer = estimateShots({ ...round, seconds: round.seconds + 20 });
        fc.pre(!found.implausible && !longer.implausible);
        expect(longer.shots).toBeGreaterThan(found.shots - 0.05);
      }),
      { numRuns: 150, seed: 2 },
    );
  });

  it('keeps the misses that were counted', () => {
    expect(estimateShots({ ...four, misses: 3 }).misses).toBeCloseTo(3, 12);
    expect(estimateShots({ ...four, rule: 'in-total', misses: 0 }).misses).toBe(0);
  });

  it('of a set that was seen to go on ends inside it', () => {
    const atRest = estimateShots({ ...four, showing: 0, misses: 0 });
    expect(atRest).toMatchObject({ low: 40, high: 40 + 0.4 });
    const seven = estimateShots({ ...four, showing: 7, misses: 0 });
    expect(seven.shots).toBeCloseTo(47, 9);
  });

  it('is narrower where more was seen', () => {
    const width = (round: TouchesRound) => {
      const { low, high } = estimateShots(round);
      return high - low;
    };
    const none = { ...four, size: 20, sets: 0 };
    expect(width({ ...none, best: 9 })).toBeLessThan(width(none));
    expect(width({ ...none, best: 9, bestTolerance: 0 })).toBeLessThan(width({ ...none, best: 9 }));
    expect(width({ ...four, misses: 3 })).toBeLessThan(width(four));
    expect(width({ ...four, tempo: 1.5 })).toBeLessThan(width(four));
  });

  it('takes a measured tempo with its own precision and the usual one with its', () => {
    const usual = 1 / 0.127 ** 2;
    const measured = 1 / 0.06 ** 2;
    const joined = (usual * Math.log(1.53) + measured * Math.log(1.3)) / (usual + measured);
    const prior: [number, number] = [Math.exp(joined), (usual + measured) ** -0.5];
    const found = estimateShots({ ...four, tempo: 1.3 });
    expect(found.shots).toBeCloseTo(estimateShots({ ...four, priors: { tempo: prior } }).shots, 9);
  });

  it('leaves a tempo without any spread as it is', () => {
    const known = { ...four, priors: { tempo: [1.5, 0] as const } };
    expect(estimateShots({ ...known, tempo: 3 })).toEqual(estimateShots(known));
  });

  it('passes over the longest run where a set was completed or where a miss does not start again', () => {
    expect(estimateShots({ ...four, best: 9 })).toEqual(estimateShots(four));
    const total: TouchesRound = { ...four, rule: 'in-total', sets: 0 };
    expect(estimateShots({ ...total, best: 99 })).toEqual(estimateShots(total));
  });

  it('passes over the times of one set, and of a round with counted misses', () => {
    const one = { ...four, sets: 1 };
    expect(estimateShots({ ...one, times: [60] })).toEqual(estimateShots(one));
    const missed = { ...four, misses: 3 };
    expect(estimateShots({ ...missed, times: [20, 40, 60, 80] })).toEqual(estimateShots(missed));
  });

  it('finds more misses in sets that took longer', () => {
    const slow = estimateShots({ ...four, times: [30, 60, 90, 120] });
    const quick = estimateShots({ ...four, seconds: 80, times: [20, 40, 60, 80] });
    expect(slow.misses).toBeGreaterThan(2 * quick.misses);
    expect(slow.consistency).toBeLessThan(quick.consistency);
    expect(slow.shots).toBeGreaterThan(quick.shots);
  });

  it('sees at the horn what the times leave open', () => {
    const five = { ...four, sets: 5, times: [20, 40, 60, 80, 100] };
    const open = estimateShots(five).shots;
    expect(estimateShots({ ...five, showing: 0 }).shots).toBeLessThan(open);
    expect(estimateShots({ ...five, showing: 9 }).shots).toBeGreaterThan(open);
  });

  it('counts a last rally that was played to its end', () => {
    const played = estimateShots({ ...four, playedOut: true });
    expect(played.shots).toBeGreaterThan(40);
    expect(estimateShots({ ...four, playedOut: true, showing: 3 })).toEqual(played);
  });

  it('on target takes the tempo for all and the Beta(1, 1) for the share', () => {
    const found = estimateShots({ rule: 'on-target', size: 1, sets: 30, seconds: 120 });
    // 120 s over 1.53 s a ball, and 31 of one more than those and its two.
    expect(found.shots).toBeCloseTo(77.3, 1);
    expect(found.consistency).toBeGreaterThan(31 / 80);
    expect(found.consistency).toBeLessThan(0.41);
  });

  it('has a version that is kept beside it', () => {
    expect(TOUCHES_MODEL_VERSION).toBe(1);
  });
});

describe('a count that the clock does not allow', () => {
  it('is doubted, and still estimated', () => {
    expect(estimateShots({ ...four, sets: 6 }).implausible).toBe(false);
    const many = estimateShots({ ...four, sets: 14 });
    expect(many.implausible).toBe(true);
    expect(many.low).toBe(140);
    expect(many.shots).toBeLessThan(145);
  });

  it.each<[string, TouchesRound]>([
    ['a thousand sets', { ...four, sets: 1000 }],
    ['sets beyond all memory', { ...four, sets: 1e9 }],
    ['a set a second', { ...four, sets: 4, times: [1, 2, 3, 4] }],
    ['a round of a millisecond', { ...four, seconds: 0.001, misses: 2 }],
    ['a longest run below what shows', { ...four, sets: 0, showing: 7, best: 3, bestTolerance: 0 }],
  ])('is given back as it was counted where no way is left: %s', (_, round) => {
    const found = estimateShots(round);
    const counted = Math.max(1, round.size * round.sets + (round.misses ?? 0));
    expect(found).toMatchObject({
      shots: counted,
      low: counted,
      high: counted,
      misses: round.misses ?? 0,
      implausible: true,
    });
    expect(found.consistency).toBeGreaterThan(0);
    expect(found.consistencySd).toBeGreaterThan(0);
  });
});

describe('a value that makes no sense', () => {
  it.each<[string, Partial<TouchesRound>]>([
    ['rule', { rule: 'other' as 'in-a-row' }],
    ['size', { size: 0 }],
    ['size', { size: 1.5 }],
    ['size', { rule: 'on-target', size: 2 }],
    ['sets', { sets: -1 }],
    ['sets', { sets: Number.NaN }],
    ['seconds', { seconds: 0 }],
    ['seconds', { seconds: Infinity }],
    ['seconds', { seconds: Number.NaN }],
    ['times', { times: [10, 20, 30] }],
    ['times', { times: [10, 30, 20, 40] }],
    ['times', { times: [0, 20, 30, 40] }],
    ['times', { times: [10, 20, 30, 121] }],
    ['times', { times: [10, Number.NaN, 30, 40] }],
    ['showing', { showing: 10 }],
    ['showing', { showing: -1 }],
    ['best', { sets: 0, best: 10 }],
    ['best', { sets: 0, best: 2.5 }],
    ['bestTolerance', { bestTolerance: -1 }],
    ['misses', { misses: Number.NaN }],
    ['misses', { misses: 0.5 }],
    ['tempo', { tempo: 0 }],
    ['priors.a', { priors: { a: 0 } }],
    ['priors.b', { priors: { b: Number.NaN } }],
    ['priors.tempo', { priors: { tempo: [0, 0.1] } }],
    ['priors.tempo', { priors: { tempo: [1.5, Number.NaN] } }],
    ['priors.refeed', { priors: { refeed: [-1, 0.1] } }],
    ['priors.pause', { priors: { pause: [4, Infinity] } }],
  ])('is a RangeError that names it: %s in %o', (name, wrong) => {
    expect(() => estimateShots({ ...four, ...wrong })).toThrow(RangeError);
    expect(() => estimateShots({ ...four, ...wrong })).toThrow(name);
  });
});
