import { describe, expect, test } from 'vitest';
import { changeOver, weeklyChange } from '../../../core/figures/level-change.ts';
import { differenceFromSquad } from '../../../core/figures/level-difference.ts';
import { fitLevels } from '../../../core/figures/level-fit.ts';
import { changeWord } from '../../../core/figures/level-word.ts';
import { dataOf, tallyOf } from './levels-made.ts';

/** Ann's share goes from one value to another, everyone else's stays; all meet. */
function squad(days: readonly number[], from: number, to: number, seen = 60) {
  const tallies = days.flatMap((day, i) => {
    const ann = from + ((to - from) * i) / Math.max(1, days.length - 1);
    return (['volleys', 'groundstrokes'] as const).flatMap((kind) =>
      [
        ['ann bob', (ann + 85) / 2],
        ['ann cat', (ann + 85) / 2],
        ['bob cat', 85],
        ['cat dan', 85],
        ['dan bob', 85],
      ].map(([who, percent]) =>
        tallyOf(day, `${who}`, Number(percent), { kind, drill: kind, seen }),
      ),
    );
  });
  return fitLevels(dataOf(tallies))!;
}

const weeks = (many: number) => Array.from({ length: many }, (_, i) => 7 * i);

describe('the word for a change', () => {
  test('is rising or falling for whoever clearly changes, of each kind and of all', () => {
    for (const [from, to, word] of [
      [60, 97, 'rising'],
      [97, 60, 'falling'],
    ] as const) {
      const fit = squad(weeks(12), from, to);
      expect(changeWord(fit, 'ann')).toBe(word);
      expect(changeWord(fit, 'ann', 'volleys')).toBe(word);
      expect(changeOver(fit, 8, 'ann')!.mean > 0).toBe(word === 'rising');
    }
  });

  test('is steady only where much was seen of one who does not change', () => {
    expect(changeWord(squad(weeks(12), 85, 85, 400), 'dan')).toBe('steady');
    expect(changeWord(squad(weeks(12), 85, 85, 4), 'dan')).toBe('unclear');
  });

  test('is too few below six practices, of whatever kind', () => {
    expect(changeWord(squad(weeks(5), 60, 97), 'ann')).toBe('too-few');
    expect(changeWord(squad(weeks(6), 60, 97), 'ann')).not.toBe('too-few');
  });

  test('is too few in less than three weeks', () => {
    const days = [0, 1, 2, 3, 4, 20];
    expect(changeWord(squad(days, 85, 85), 'ann')).toBe('too-few');
    expect(changeWord(squad([...days.slice(0, 5), 21], 85, 85), 'ann')).not.toBe('too-few');
  });

  test('is too few of a kind with less than three rounds, though there is one over all', () => {
    const rounds = (many: number) =>
      fitLevels(
        dataOf([
          ...weeks(8).map((day) => tallyOf(day, 'ann bob', 85)),
          ...weeks(many).map((day) => tallyOf(day, 'ann bob', 85, { kind: 'groundstrokes' })),
        ]),
      )!;
    expect(changeWord(rounds(2), 'ann', 'groundstrokes')).toBe('too-few');
    expect(changeWord(rounds(3), 'ann', 'groundstrokes')).not.toBe('too-few');
    expect(changeWord(rounds(2), 'ann')).not.toBe('too-few');
  });

  test('is too few for one who was not seen at all, or not at the kind', () => {
    const fit = squad(weeks(12), 85, 85);
    expect(changeWord(fit, 'zoe')).toBe('too-few');
    expect(changeWord(fit, 'ann', 'serves-and-returns')).toBe('too-few');
  });
});

describe('a change', () => {
  test('over some weeks is undefined where the tallies do not reach back to within one of them', () => {
    const reach = (days: number) => squad([0, days], 80, 90);
    expect(changeOver(reach(48), 8, 'ann')).toBeUndefined();
    expect(changeOver(reach(49), 8, 'ann')).toBeDefined();
    expect(changeOver(reach(20), 4, 'ann', 'volleys')).toBeUndefined();
    expect(changeOver(reach(21), 4, 'ann', 'volleys')).toBeDefined();
  });

  test('over four weeks is half of that over eight, and as surely one upwards', () => {
    const fit = squad(weeks(12), 70, 90);
    const [four, eight] = [changeOver(fit, 4, 'ann')!, changeOver(fit, 8, 'ann')!];
    expect(eight.mean).toBeCloseTo(2 * four.mean, 12);
    expect(eight.sd).toBeCloseTo(2 * four.sd, 12);
    expect(eight.rise).toBe(four.rise);
  });

  test('is undefined for one who was not seen, and over no weeks', () => {
    const fit = squad(weeks(12), 85, 85);
    expect(weeklyChange(fit, 'zoe')).toBeUndefined();
    expect(weeklyChange(fit, 'ann', 'serves-and-returns')).toBeUndefined();
    expect(() => changeOver(fit, 0, 'ann')).toThrow(RangeError);
  });
});

test('who was away for twelve weeks is not in the fit', () => {
  const fit = fitLevels(
    dataOf([tallyOf(0, 'eve bob', 90), ...weeks(12).map((day) => tallyOf(day + 7, 'ann bob', 90))]),
  )!;
  expect([...fit.players.keys()]).toEqual(['ann', 'bob']);
});

test('after four practices there are differences with wide limits, and no word', () => {
  const fit = squad([0, 3, 5, 7], 95, 95, 30);
  expect(differenceFromSquad(fit, 'ann', 'volleys')!.sd).toBeGreaterThan(0.25);
  expect(changeWord(fit, 'ann')).toBe('too-few');
});
