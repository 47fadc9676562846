import { describe, expect, test } from 'vitest';
import { tellOwnDay } from '../../../core/figures/own-day-told.ts';
import type { OwnWork } from '../../../core/figures/usual.ts';
import { termsWith } from '../made.ts';

const work = (drill: string, sets: number, usual?: number, best?: number): OwnWork => ({
  ...{ drill, terms: termsWith({ drill }), sets, touches: 10 * sets, seconds: 120 },
  ...(usual !== undefined && { usual, best: best ?? usual, beaten: sets > (best ?? usual) }),
});
const told = (...works: OwnWork[]) => {
  const { well, goal, works: order } = tellOwnDay(works);
  return {
    well: well && `${well.why} ${well.work.drill}`,
    goal: goal && `${goal.work.drill} ${goal.sets}`,
    order: order.map(({ drill }) => drill),
  };
};

describe('an own day is told', () => {
  test('with a new best first, whatever lies farther over its usual', () => {
    expect(told(work('double', 4, 2, 5), work('best', 6, 5, 5.5))).toMatchObject({
      well: 'best best',
      order: ['double', 'best'],
    });
  });

  test('with what lies farthest over the own usual, and the goal where it lies lowest', () => {
    expect(told(work('low', 2, 4.2, 6), work('well', 6, 4, 9), work('even', 3, 3, 5))).toEqual({
      well: 'usual well',
      goal: 'low 5',
      order: ['well', 'even', 'low'],
    });
  });

  test('with something that was good on a day on which all lies under its usual', () => {
    expect(told(work('one', 2, 4), work('two', 3, 8)).well).toBe('made two');
    expect(told(work('one', 2, 4), work('new', 1)).well).toBe('first new');
  });

  test('without anything that went well where not one set was completed, and with a goal all the same', () => {
    expect(told(work('one', 0, 4), work('new', 0))).toEqual({
      well: undefined,
      goal: 'one 4',
      order: ['one', 'new'],
    });
  });

  test('with one more than today for a goal where every usual was reached', () => {
    expect(told(work('one', 5, 4, 9)).goal).toBe('one 6');
    expect(told(work('one', 0, 0)).goal).toBe('one 1');
  });

  test('of a first day without a goal to reach for', () => {
    expect(told(work('new', 3))).toEqual({ well: 'first new', goal: undefined, order: ['new'] });
    expect(told()).toEqual({ well: undefined, goal: undefined, order: [] });
  });
});
