import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  emptyPlan,
  Plan,
  partnersChange,
  plannedMinutes,
  plannedRounds,
  Step,
  standsToUsual,
  stepAt,
} from '../../../core/round/block.ts';

const plan: Plan = {
  steps: [
    { drill: 'rally', rounds: 2, partners: 'keep' },
    { drill: 'lob', rounds: 3, partners: 'turn', size: 4 },
  ],
  seconds: 120,
  changeover: 45,
};

describe('a block', () => {
  test('is read as it was planned, the empty one too', () => {
    expect(Plan.parse(plan)).toEqual(plan);
    expect(Plan.parse(emptyPlan)).toEqual(emptyPlan);
  });

  test.each([
    { ...plan, seconds: 29 },
    { ...plan, seconds: 601 },
    { ...plan, changeover: -1 },
    { ...plan, steps: [{ drill: '', rounds: 1, partners: 'keep' }] },
    { ...plan, steps: [{ drill: 'lob', rounds: 0, partners: 'keep' }] },
    { ...plan, steps: [{ drill: 'lob', rounds: 1, partners: 'swap' }] },
    { ...plan, steps: [{ drill: 'lob', rounds: 1, partners: 'keep', size: 51 }] },
  ])('is not %j', (wrong) => {
    expect(Plan.safeParse(wrong).success).toBe(false);
  });

  test('has as many rounds as its steps together', () => {
    expect(plannedRounds(emptyPlan)).toBe(0);
    expect(plannedRounds(plan)).toBe(5);
  });

  test('takes its rounds and the changeovers between them, none after the last', () => {
    expect(plannedMinutes(emptyPlan)).toBe(0);
    expect(plannedMinutes({ ...plan, steps: plan.steps.slice(0, 1) })).toBe((2 * 120 + 45) / 60);
    expect(plannedMinutes(plan)).toBe((5 * 120 + 4 * 45) / 60);
  });

  test('of 20 to 30 minutes is as usual, its ends included', () => {
    expect([19.99, 20, 30, 30.01].map(standsToUsual)).toEqual(['short', 'usual', 'usual', 'long']);
  });
});

describe('the step of a round', () => {
  test('is told with the turn of that round in it', () => {
    const [rally, lob] = plan.steps;
    expect([0, 1, 2, 3, 4].map((ordinal) => stepAt(plan, ordinal))).toEqual([
      { step: rally, turn: 0 },
      { step: rally, turn: 1 },
      { step: lob, turn: 0 },
      { step: lob, turn: 1 },
      { step: lob, turn: 2 },
    ]);
  });

  test('is undefined beyond the end of the block', () => {
    expect(stepAt(plan, 5)).toBeUndefined();
    expect(stepAt(emptyPlan, 0)).toBeUndefined();
  });

  test('walks through every step for as many rounds as it has', () => {
    const step = fc.record({
      drill: fc.constantFrom('rally', 'lob'),
      rounds: fc.integer({ min: 1, max: 10 }),
      partners: fc.constantFrom('keep' as const, 'turn' as const),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 8 }), (steps) => {
        const long = { ...plan, steps };
        const walked = Array.from({ length: plannedRounds(long) }, (_, at) => stepAt(long, at));
        const spelt = steps.flatMap((each) =>
          Array.from({ length: each.rounds }, (_, turn) => ({ step: each, turn })),
        );
        expect(walked).toEqual(spelt);
      }),
    );
  });
});

describe('partners', () => {
  const changes = (step: Partial<Step>) =>
    [0, 1, 2].map((turn) =>
      partnersChange({ drill: 'lob', rounds: 3, partners: 'keep', ...step }, turn),
    );

  test('change before every round where they turn, and never where they stay', () => {
    expect(changes({ partners: 'turn' })).toEqual([true, true, true]);
    expect(changes({})).toEqual([false, false, false]);
  });

  test('change before the first round only where they are new and then stay', () => {
    expect(changes({ renew: true })).toEqual([true, false, false]);
    expect(changes({ renew: false })).toEqual([false, false, false]);
  });

  test('that are new are read as they were planned', () => {
    const step: Step = { drill: 'lob', rounds: 2, partners: 'keep', renew: true };
    expect(Step.parse(step)).toEqual(step);
  });
});
