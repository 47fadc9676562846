import { describe, expect, test } from 'vitest';
import { emptyPlan, type Plan } from '../../../core/round/block.ts';
import { comesAgain, withSize } from '../../../core/round/set-sizes.ts';

const plan: Plan = {
  ...emptyPlan,
  steps: [
    { drill: 'rally', rounds: 2, partners: 'keep' },
    { drill: 'lob', rounds: 1, partners: 'turn' },
    { drill: 'rally', rounds: 1, partners: 'keep', size: 4 },
  ],
};

describe('a set size for a drill of the block', () => {
  test('goes to every step of that drill, and to no other', () => {
    expect(withSize(plan, 'rally', 8).steps.map(({ size }) => size)).toEqual([8, undefined, 8]);
    expect(withSize(plan, 'volley', 8)).toEqual(plan);
  });

  test('leaves the plan that was given as it is', () => {
    withSize(plan, 'rally', 8);
    expect(plan.steps[0]).not.toHaveProperty('size');
  });
});

describe('a drill', () => {
  test('comes again while a later round of the block is one of it', () => {
    expect([0, 1, 2, 3].map((ordinal) => comesAgain(plan, 'rally', ordinal))).toEqual([
      true,
      true,
      true,
      false,
    ]);
    expect(comesAgain(plan, 'lob', 2)).toBe(false);
    expect(comesAgain(emptyPlan, 'rally', 0)).toBe(false);
  });
});
