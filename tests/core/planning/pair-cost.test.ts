import { describe, expect, test } from 'vitest';
import { meetingsOf } from '../../../core/planning/meetings.ts';
import { type Pairing, pairCosts, pairWeights } from '../../../core/planning/pair-cost.ts';
import { practiceWith, roundWith, termsWith } from '../made.ts';

const on = (date: string, ...pairs: string[][]) =>
  practiceWith(date, [
    roundWith(
      0,
      termsWith(),
      pairs.map((players) => [players, 1]),
    ),
  ]);
const TODAY = '2026-03-20';
const HERE = ['a', 'b', 'c', 'd'];
const costs = (over: Partial<Pairing> & { history?: ReturnType<typeof on>[] } = {}) =>
  pairCosts({
    here: HERE,
    levels: new Map(),
    meetings: meetingsOf(over.history ?? [], TODAY),
    wishes: [],
    ...over,
  });
/** Everybody has met everybody so long ago that only the table is not due any more. */
const allMet = on(
  '2020-01-01',
  ['a', 'b'],
  ['a', 'c'],
  ['a', 'd'],
  ['b', 'c'],
  ['b', 'd'],
  ['c', 'd'],
);

describe('what it costs to be partners', () => {
  test('is nothing in the round of the table that is due, and a turn outside it', () => {
    const { pair } = costs();
    const cheap = HERE.flatMap((_, a) =>
      HERE.flatMap((__, b) => (a < b && pair[a]![b] === 0 ? [[a, b]] : [])),
    );
    expect(cheap).toHaveLength(2);
    expect(new Set(cheap.flat()).size).toBe(4);
    expect(pair.flat().filter((cost) => cost === pairWeights.turn)).toHaveLength(8);
    expect(
      costs({ history: [allMet] })
        .pair.flat()
        .every((cost) => cost === 0),
    ).toBe(true);
  });

  test('has the round due whose pairs are all new, and of these whose levels are nearest', () => {
    const levels = new Map(Object.entries({ a: 1, b: 8, d: 9 }));
    const first = costs({ levels }).pair;
    expect([first[0]![2], first[1]![3]]).toEqual([0, pairWeights.gap]);
    const { pair } = costs({ levels, history: [on('2020-01-01', ['a', 'c'])] });
    expect([pair[0]![1], pair[2]![3]]).toEqual([7 * pairWeights.gap, 0]);
    expect(pair[1]![3]).toBe(pairWeights.gap + pairWeights.turn);
  });

  test('is less for the round due than any gap of levels could make of another', () => {
    expect(pairWeights.turn).toBeGreaterThan(9 * pairWeights.gap);
  });

  test('grows with rounds together, and fades', () => {
    const met = (date: string) => costs({ history: [allMet, on(date, ['a', 'b'])] }).pair[0]![1];
    expect(met(TODAY)).toBeCloseTo(pairWeights.met, 2);
    expect(met('2026-03-06')).toBeCloseTo(pairWeights.met / 2, 2);
  });

  test('grows with the gap of levels, and not with one that is not known', () => {
    const levels = new Map([
      ['a', 3],
      ['b', 7.5],
    ]);
    const { pair } = costs({ levels, history: [allMet] });
    expect(pair[0]![1]).toBe(4.5 * pairWeights.gap);
    expect(pair[0]![2]).toBe(0);
  });

  test('grows with the difference of rounds today where that is given', () => {
    const played = new Map([
      ['a', 2],
      ['b', 1],
      ['c', 2],
    ]);
    const { pair } = costs({ played, history: [allMet] });
    expect([pair[0]![1], pair[0]![2], pair[1]![2]]).toEqual([
      pairWeights.live,
      0,
      pairWeights.live,
    ]);
  });

  test('goes by wishes before all else, and by those for others not at all', () => {
    const { pair } = costs({
      history: [allMet],
      wishes: [
        { a: 'a', b: 'b', wish: 'together' },
        { a: 'c', b: 'a', wish: 'apart' },
        { a: 'a', b: 'absent', wish: 'apart' },
      ],
    });
    expect([pair[0]![1], pair[1]![0]]).toEqual([-pairWeights.together, -pairWeights.together]);
    expect([pair[0]![2], pair[2]![0]]).toEqual([pairWeights.apart, pairWeights.apart]);
    expect(pair[0]![3]).toBe(0);
  });

  test('is the same both ways, and a whole multiple of 2^-10', () => {
    const history = [on('2026-03-13', ['a', 'b', 'c']), on('2026-03-17', ['b', 'd'])];
    const { pair } = costs({ history });
    for (const [a, row] of pair.entries()) {
      for (const [b, cost] of row.entries()) {
        expect(cost).toBe(pair[b]![a]);
        expect(Number.isInteger(cost * 1024)).toBe(true);
      }
    }
  });
});

describe('what it costs to be a trio', () => {
  test('is a third of each two, and of every wish the whole', () => {
    const levels = new Map(HERE.map((player, at) => [player, 1 + at]));
    const { trio } = costs({ levels, history: [allMet] });
    expect(trio(0, 1, 2)).toBeCloseTo((pairWeights.gap * (1 + 2 + 1)) / 3, 2);
    const wishes = [{ a: 'a', b: 'c', wish: 'apart' as const }];
    expect(costs({ history: [allMet], wishes }).trio(0, 1, 2)).toBe(pairWeights.apart);
    expect(costs({ history: [allMet], wishes }).trio(0, 1, 3)).toBe(0);
  });

  test('grows with the times its players were in one', () => {
    const history = [allMet, on('2026-03-06', ['a', 'b', 'c'])];
    const { trio, pair } = costs({ history });
    const met = pair[0]![1]! / 3;
    expect(trio(0, 1, 3)).toBeCloseTo(2 * 0.5 * pairWeights.trio + met, 2);
    expect(trio(0, 1, 2)).toBeCloseTo(3 * 0.5 * pairWeights.trio + 3 * met, 2);
  });
});
