import { describe, expect, test } from 'vitest';
import { levelOf } from '../../../core/figures/level.ts';
import { differenceFromSquad, differenceOfTwo } from '../../../core/figures/level-difference.ts';
import { fitLevels } from '../../../core/figures/level-fit.ts';
import type { LevelTally } from '../../../core/figures/level-tallies.ts';
import { untold } from '../../../core/figures/level-untold.ts';
import { dataOf, tallyOf } from './levels-made.ts';

const fitOf = (...tallies: LevelTally[]) => fitLevels(dataOf(tallies))!;
const WEEKS = [0, 7, 14, 21, 28, 35];
/** The sd of the difference of two of whom nothing is known: √2 · √(0.7² + 0.35²). */
const BEFOREHAND = 1.107;

describe('two who only ever play together', () => {
  const fit = fitOf(
    ...Array.from({ length: 400 }, (_, i) => tallyOf(i % 80, 'ann bob', 95)),
    ...WEEKS.flatMap((day) =>
      ['cat dan', 'dan eve', 'eve cat'].map((who) => tallyOf(day, who, 70)),
    ),
  );

  test('are never told apart, however often they played', () => {
    const two = differenceOfTwo(fit, 'ann', 'bob', 'volleys')!;
    expect(two.mean).toBeCloseTo(0, 6);
    expect(two.sd).toBeGreaterThanOrEqual(BEFOREHAND);
    expect(two).toMatchObject({ toldApart: false, untold: true });
    expect(two.above).toBeCloseTo(0.5, 6);
  });

  test('are named, alone among all pairs', () => {
    expect(untold(fit, 'volleys')).toMatchObject({
      pairs: [['ann', 'bob']],
      neverParted: [['ann', 'bob']],
    });
  });

  test('have a level all the same, for theirs together is seen', () => {
    expect(levelOf(fit, 'ann', 'volleys')!.share).toBeGreaterThan(
      levelOf(fit, 'cat', 'volleys')!.share,
    );
  });

  test('are told apart at one kind by what they do with others at another', () => {
    const parted = fitOf(
      ...WEEKS.flatMap((day) => [
        tallyOf(day, 'ann bob', 80),
        ...['ann cat', 'bob cat', 'cat dan', 'dan ann', 'dan bob'].map((who) =>
          tallyOf(day, who, who.includes('ann') ? 95 : 60, { kind: 'groundstrokes', drill: 'g' }),
        ),
      ]),
    );
    expect(untold(parted, 'volleys')).toMatchObject({ pairs: [], neverParted: [] });
    expect(differenceOfTwo(parted, 'ann', 'bob', 'volleys')).toMatchObject({
      toldApart: true,
      untold: false,
    });
  });
});

test('two of whom next to nothing was seen are untold, though they parted', () => {
  const fit = fitOf(tallyOf(0, 'ann cat', 80, { seen: 1 }), tallyOf(0, 'bob cat', 80, { seen: 1 }));
  expect(untold(fit, 'volleys')?.pairs).toContainEqual(['ann', 'bob']);
  expect(untold(fit, 'volleys')?.neverParted).toEqual([]);
});

describe('one who is alone at a kind of work', () => {
  const fit = fitOf(
    ...WEEKS.map((day) => tallyOf(day, 'ann', 90)),
    ...WEEKS.map((day) => tallyOf(day, 'ann bob', 80, { kind: 'groundstrokes' })),
  );

  test('has a level there, and nobody to be compared with', () => {
    expect(untold(fit, 'volleys')).toMatchObject({ alone: 'ann', groups: [['ann']] });
    expect(levelOf(fit, 'ann', 'volleys')).toBeDefined();
    expect(differenceFromSquad(fit, 'ann', 'volleys')).toBeUndefined();
    expect(differenceOfTwo(fit, 'ann', 'bob', 'volleys')).toBeUndefined();
    expect(differenceOfTwo(fit, 'ann', 'ann', 'volleys')).toBeUndefined();
  });

  test('leaves whoever never played it without a level of it', () => {
    expect(levelOf(fit, 'bob', 'volleys')).toBeUndefined();
    expect(differenceFromSquad(fit, 'bob', 'volleys')).toBeUndefined();
    expect(levelOf(fit, 'zoe', 'groundstrokes')).toBeUndefined();
  });

  test('is nobody where two were seen, and nothing is said of a kind that was not played', () => {
    expect(untold(fit, 'groundstrokes')).not.toHaveProperty('alone');
    expect(untold(fit, 'serves-and-returns')).toBeUndefined();
  });
});

describe('groups that never met', () => {
  const trios = (first: string, second: string) =>
    fitOf(
      ...WEEKS.flatMap((day) => [
        ...['ann bob', 'bob cat', 'cat ann'].map((who) => tallyOf(day, who, 95, { drill: first })),
        ...['dan eve', 'eve fay', 'fay dan'].map((who) => tallyOf(day, who, 60, { drill: second })),
      ]),
    );

  test('are named, and compared through a drill that both played', () => {
    const fit = trios('v', 'v');
    expect(untold(fit, 'volleys')).toMatchObject({
      groups: [
        ['ann', 'bob', 'cat'],
        ['dan', 'eve', 'fay'],
      ],
      classes: [['ann', 'bob', 'cat', 'dan', 'eve', 'fay']],
    });
    expect(differenceOfTwo(fit, 'ann', 'dan', 'volleys')).toMatchObject({ toldApart: true });
  });

  test('are less surely compared, and so said, where no drill is shared', () => {
    const [shared, apart] = [trios('v', 'v'), trios('v', 'w')];
    expect(untold(apart, 'volleys')?.classes).toEqual([
      ['ann', 'bob', 'cat'],
      ['dan', 'eve', 'fay'],
    ]);
    const across = (fit: typeof apart) => differenceOfTwo(fit, 'ann', 'dan', 'volleys')!;
    expect(across(apart).sd).toBeGreaterThan(across(shared).sd);
    expect(across(apart).mean).toBeLessThan(across(shared).mean);
  });

  test('are one where a trio joins them', () => {
    const fit = fitOf(
      tallyOf(0, 'ann bob', 90),
      tallyOf(0, 'cat dan', 80),
      tallyOf(0, 'bob cat eve', 80),
    );
    expect(untold(fit, 'volleys')?.groups).toEqual([['ann', 'bob', 'cat', 'dan', 'eve']]);
  });
});
