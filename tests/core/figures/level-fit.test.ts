import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { families } from '../../../core/drill/drill.ts';
import { levelOf } from '../../../core/figures/level.ts';
import { weeklyChange } from '../../../core/figures/level-change.ts';
import { differenceFromSquad, differenceOfTwo } from '../../../core/figures/level-difference.ts';
import { fitLevels, type LevelFit } from '../../../core/figures/level-fit.ts';
import type { LevelData, LevelTally } from '../../../core/figures/level-tallies.ts';
import { untold } from '../../../core/figures/level-untold.ts';
import { changeWord } from '../../../core/figures/level-word.ts';
import { dataOf, tallyOf } from './levels-made.ts';

/** Everything that a fit says, by player and kind. */
function saidBy(fit: LevelFit) {
  const said = new Map<string, number>([['dispersion', fit.dispersion]]);
  const put = (key: string, numbers: object | undefined) => {
    for (const [name, value] of Object.entries(numbers ?? {})) {
      if (typeof value === 'number') said.set(`${key} ${name}`, value);
    }
  };
  for (const player of fit.players.keys()) {
    put(`${player} week`, weeklyChange(fit, player));
    for (const [kind, { players }] of fit.kinds) {
      put(`${player} ${kind} level`, levelOf(fit, player, kind));
      put(`${player} ${kind} difference`, differenceFromSquad(fit, player, kind));
      put(`${player} ${kind} week`, weeklyChange(fit, player, kind));
      for (const other of players.keys()) {
        put(`${player} ${other} ${kind}`, differenceOfTwo(fit, player, other, kind));
      }
    }
  }
  return said;
}

function expectSame(one: ReadonlyMap<string, number>, other: ReadonlyMap<string, number>) {
  expect([...other.keys()].toSorted()).toEqual([...one.keys()].toSorted());
  const off = [...one].filter(([key, value]) => !(Math.abs(value - other.get(key)!) < 1e-7));
  expect(off).toEqual([]);
}

const round = (days: readonly number[]) =>
  days.flatMap((day) => [
    tallyOf(day, 'ann bob', 90),
    tallyOf(day, 'cat dan', 80),
    tallyOf(day, 'ann cat', 85, { kind: 'groundstrokes', drill: 'g' }),
    tallyOf(day, 'bob dan', 70, { kind: 'groundstrokes', drill: 'g' }),
  ]);

describe('a fit of levels', () => {
  test('of nothing is undefined', () => {
    expect(fitLevels({ onTarget: false, tallies: [], end: 0 })).toBeUndefined();
    expect(fitLevels(dataOf(round([0]), 84))).toBeUndefined();
  });

  test('reaches back 83 days and not a day more', () => {
    const recent = round([20, 60, 100]);
    const fit = fitLevels(dataOf([...recent, tallyOf(17, 'ann eve', 10)], 100))!;
    expect(fit.age).toBe(83 / 7);
    expect(fit.players.has('eve')).toBe(true);
    const older = [tallyOf(16, 'ann eve', 10), tallyOf(-400, 'fay gus', 10)];
    expectSame(
      saidBy(fitLevels(dataOf(recent, 100))!),
      saidBy(fitLevels(dataOf([...older, ...recent], 100))!),
    );
  });

  test('passes over a tally later than the last practice, of nobody, of one player twice, or without evidence', () => {
    const good = round([0, 10, 20]);
    const bad = [
      tallyOf(21, 'ann bob', 10),
      tallyOf(20, '', 10),
      tallyOf(20, 'ann ann', 10),
      { ...tallyOf(20, 'ann bob', 10), success: { consistency: 0.5, consistencySd: 0.4 } },
    ];
    const fit = fitLevels(dataOf([...good, ...bad], 20))!;
    expect(fit.tallies).toEqual(good);
    expectSame(saidBy(fitLevels(dataOf(good, 20))!), saidBy(fit));
  });

  test('refuses a share of exactly 1, which no estimate says', () => {
    const wrong = { ...tallyOf(0, 'ann bob', 10), success: { consistency: 1, consistencySd: 0.1 } };
    expect(() => fitLevels(dataOf([wrong]))).toThrow(RangeError);
  });

  test('sees a harder drill as a drill, once it was played before, and nobody as falling', () => {
    // The harder one at first and at last: with the same name it looks as if all had become worse.
    const harder = [0, 56, 63, 70, 77];
    const season = (drill: string) =>
      fitLevels(
        dataOf([
          ...round([7, 14, 21, 28, 35, 42, 49]),
          ...harder.flatMap((day) => [
            tallyOf(day, 'ann bob', 70, { drill }),
            tallyOf(day, 'cat dan', 55, { drill }),
          ]),
        ]),
      )!;
    const [one, own] = [season('v'), season('harder')];
    for (const player of ['ann', 'dan']) {
      const [fall, change] = [one, own].map((fit) => weeklyChange(fit, player, 'volleys')!.mean);
      expect(fall).toBeLessThan(-0.02);
      expect(Math.abs(change!)).toBeLessThan(0.5 * Math.abs(fall!));
      expect(changeWord(own, player)).not.toBe('falling');
    }
  });

  test('says more of a squad that varies more than chance only where it is so, and with wider limits', () => {
    const even = round([0, 7, 14, 21, 28, 35]);
    const uneven = even.map((tally, i) => ({
      ...tallyOf(tally.day, tally.players.join(' '), i % 3 === 0 ? 98 : i % 3 === 1 ? 60 : 80),
      kind: tally.kind,
      drill: tally.drill,
    }));
    const [calm, wild] = [fitLevels(dataOf(even))!, fitLevels(dataOf(uneven))!];
    expect(calm.dispersion).toBe(1);
    expect(wild.dispersion).toBeGreaterThan(2);
    const known = fitLevels(dataOf(uneven), { dispersion: 1 })!;
    expect(levelOf(wild, 'ann', 'volleys')!.sd).toBeGreaterThan(
      levelOf(known, 'ann', 'volleys')!.sd,
    );
  });
});

const NAMES = ['ann', 'bob', 'cat', 'dan', 'eve', 'fay'];

/** Small ledgers of all sorts: few or many rounds, shares near 0 and 1, sure and unsure. */
const anyTally = fc
  .record({
    day: fc.integer({ min: 0, max: 90 }),
    kind: fc.constantFrom(...families),
    drill: fc.constantFrom('x', 'y', 'z'),
    players: fc.uniqueArray(fc.constantFrom(...NAMES), { minLength: 1, maxLength: 3 }),
    logit: fc.double({ min: -9, max: 9, noNaN: true }),
    surer: fc.double({ min: 0.5, max: 1e5, noNaN: true }),
  })
  .map(({ day, kind, drill, players, logit, surer }): LevelTally => {
    const consistency = 1 / (1 + Math.exp(-logit));
    const consistencySd = Math.sqrt((consistency * (1 - consistency)) / (1 + 5 * surer));
    const success = { consistency, consistencySd };
    return { practice: `${day}`, day, kind, drill, players, success };
  });
const anyData = fc
  .record({
    tallies: fc.array(anyTally, { minLength: 1, maxLength: 25 }),
    onTarget: fc.boolean(),
    end: fc.integer({ min: 60, max: 90 }),
  })
  .map((data): LevelData => data);
const exactly = { enough: 1e-10 };
/** No likelihood is so pointed in real tallies; here it costs digits that the order of sums decides. */
const usualData = anyData.filter(({ tallies }) =>
  tallies.every(({ success }) => success.consistencySd > 0.01),
);

describe('whatever the tallies, a fit', () => {
  test('says only numbers, shares inside their limits and chances from 0 to 1', () => {
    fc.assert(
      fc.property(anyData, (data) => {
        const fit = fitLevels(data);
        if (!fit) return;
        expect(fit.dispersion).toBeGreaterThanOrEqual(1);
        expect([...saidBy(fit)].filter(([, value]) => !Number.isFinite(value))).toEqual([]);
        for (const [kind, { players }] of fit.kinds) {
          expect(untold(fit, kind)?.groups.flat().toSorted()).toEqual([...players.keys()]);
          for (const player of players.keys()) {
            const { low, share, high, sd } = levelOf(fit, player, kind)!;
            expect(0 <= low && low <= share && share <= high && high <= 1 && sd > 0).toBe(true);
            const { rise } = weeklyChange(fit, player, kind)!;
            expect(0 <= rise && rise <= 1).toBe(true);
            expect(changeWord(fit, player, kind)).toEqual(expect.any(String));
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('is the same in whatever order tallies and their players come', () => {
    fc.assert(
      fc.property(usualData, fc.integer(), (data, seed) => {
        const keyed = data.tallies.map((tally, i) => ({ tally, key: Math.sin(seed + 7 * i) }));
        const tallies = keyed
          .toSorted((a, b) => a.key - b.key)
          .map(({ tally }) => ({ ...tally, players: tally.players.toReversed() }));
        const [one, other] = [fitLevels(data, exactly), fitLevels({ ...data, tallies }, exactly)];
        expect(one === undefined).toBe(other === undefined);
        if (one && other) expectSame(saidBy(one), saidBy(other));
      }),
      { numRuns: 60 },
    );
  });

  test('is the same under whatever names, and on whatever day it begins', () => {
    const renamed = new Map(NAMES.map((name, i) => [name, `z${NAMES.length - i}`]));
    const back = new Map([...renamed].map(([name, other]) => [other, name]));
    fc.assert(
      fc.property(usualData, fc.integer({ min: -20_000, max: 20_000 }), (data, later) => {
        const other = fitLevels(
          {
            ...data,
            end: data.end + later,
            tallies: data.tallies.map((tally) => ({
              ...tally,
              day: tally.day + later,
              players: tally.players.map((name) => renamed.get(name)!),
            })),
          },
          exactly,
        );
        const one = fitLevels(data, exactly);
        expect(one === undefined).toBe(other === undefined);
        if (!one || !other) return;
        const named = [...saidBy(other)].map(
          ([key, value]) => [key.replace(/z\d/g, (name) => back.get(name)!), value] as const,
        );
        expectSame(saidBy(one), new Map(named));
      }),
      { numRuns: 60 },
    );
  });

  test('sees one above another as far as the other below, and a squad that is level in itself', () => {
    fc.assert(
      fc.property(anyData, (data) => {
        const fit = fitLevels(data);
        for (const [kind, { players }] of fit?.kinds ?? []) {
          const names = [...players.keys()];
          const differences = names.map((name) => differenceFromSquad(fit!, name, kind)?.mean ?? 0);
          expect(differences.reduce((sum, mean) => sum + mean, 0)).toBeCloseTo(0, 8);
          for (const one of names) {
            for (const other of names.filter((name) => name !== one)) {
              const there = differenceOfTwo(fit!, one, other, kind)!;
              const back = differenceOfTwo(fit!, other, one, kind)!;
              expect(there.mean).toBeCloseTo(-back.mean, 8);
              expect(there.above + back.above).toBeCloseTo(1, 8);
              expect(there.toldApart).toBe(back.toldApart);
            }
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});
