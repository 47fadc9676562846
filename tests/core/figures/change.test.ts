import { describe, expect, test } from 'vitest';
import { changeOf, changeWord, squadPace } from '../../../core/figures/change.ts';
import { rateRatio } from '../../../core/figures/interval.ts';
import { playerStints } from '../../../core/figures/stints.ts';
import { practiceWith, roundWith, termsWith } from '../made.ts';

const ten = termsWith();
const four = termsWith({ size: 4 });
type Played = readonly [terms: typeof ten, sets: number, others: number];
/** A span in which a plays with b, and c with d. */
const span = (...rounds: Played[]) =>
  playerStints([
    practiceWith(
      '2026-03-02',
      rounds.map(([terms, sets, others], ordinal) =>
        roundWith(ordinal, terms, [
          [['a', 'b'], sets],
          [['c', 'd'], others],
        ]),
      ),
    ),
  ]);
const change = (before: Played[], after: Played[]) => {
  const [earlier, later] = [span(...before), span(...after)];
  const all = [...earlier.values(), ...later.values()].flat();
  return changeOf(earlier.get('a') ?? [], later.get('a') ?? [], squadPace(all));
};

describe('the change of a player from one span to another', () => {
  test('at one drill and size is the plain ratio of the rates', () => {
    const found = change(
      [[ten, 4, 3]],
      [
        [ten, 5, 3],
        [ten, 7, 4],
      ],
    );
    const plain = rateRatio(12, 4, 4, 2)!;
    expect(found?.ratio).toBeCloseTo(plain.ratio, 12);
    expect(found?.low).toBeCloseTo(plain.low, 9);
    expect(found?.high).toBeCloseTo(plain.high, 9);
    expect(found?.p).toBeCloseTo(plain.p, 9);
  });

  test('is no progress where only the sets became smaller', () => {
    // Everyone makes three times as many sets of four as of ten.
    expect(change([[ten, 4, 4]], [[four, 12, 12]])?.ratio).toBeCloseTo(1, 12);
  });

  test('is progress where the player makes more of the same than the squad', () => {
    const found = change(
      [
        [ten, 4, 4],
        [four, 12, 12],
      ],
      [
        [ten, 8, 4],
        [four, 24, 12],
      ],
    );
    expect(found?.ratio).toBeCloseTo(2, 12);
  });

  test('passes over minutes in which nobody made a set', () => {
    const found = change(
      [
        [ten, 4, 4],
        [four, 0, 0],
      ],
      [[ten, 4, 4]],
    );
    expect(found?.ratio).toBeCloseTo(1, 12);
  });

  test('from no set at all is without bound', () => {
    expect(change([[ten, 0, 4]], [[ten, 3, 4]])).toMatchObject({ ratio: Infinity, high: Infinity });
  });

  test('is undefined without a round in one span, without a set in both, or without a clock', () => {
    expect(change([], [[ten, 3, 3]])).toBeUndefined();
    expect(change([[ten, 3, 3]], [])).toBeUndefined();
    expect(change([[ten, 0, 5]], [[ten, 0, 5]])).toBeUndefined();
    expect(changeOf([], [], squadPace([]))).toBeUndefined();
    const still = playerStints([
      practiceWith('2026-03-02', [roundWith(0, ten, [[['a', 'b'], 2]], 0)]),
    ]);
    expect(changeOf(still.get('a')!, still.get('a')!, squadPace(still.get('a')!))).toBeUndefined();
  });

  test('is more or fewer only where the whole interval says so', () => {
    const word = (low: number, high: number) => changeWord({ ratio: 1, low, high, p: 0.5 });
    expect([word(1.01, 2), word(0.4, 0.99), word(0.9, 1.2), word(1, 1.2)]).toEqual([
      'more',
      'fewer',
      'open',
      'open',
    ]);
  });

  test('is too little to compare where the upper limit is more than four times the lower one', () => {
    const word = (low: number, high: number) => changeWord({ ratio: 1, low, high, p: 0.5 });
    expect([word(0.5, 2), word(0.5, 2.01), word(1.42, 394.65), word(1.2, Infinity)]).toEqual([
      'open',
      'too-little',
      'too-little',
      'too-little',
    ]);
    expect(word(0, 0.4)).toBe('too-little');
  });

  // For equal counts n in equal times the limits of the odds are Clopper and Pearson's of n in 2n: of
  // 18 in 36 they are 0.329 and 0.671, of 19 in 38 0.334 and 0.666, so (0.671 / 0.329)² = 4.15 and
  // (0.666 / 0.334)² = 3.98.
  test('of nineteen sets in each of two equal spans can be told, of eighteen it cannot', () => {
    const of = (sets: number) => changeWord(change([[ten, sets, sets]], [[ten, sets, sets]])!);
    expect([of(18), of(19)]).toEqual(['too-little', 'open']);
  });
});
