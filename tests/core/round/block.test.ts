import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  comesAgain,
  emptyPlan,
  nextStep,
  Plan,
  partnersChange,
  plannedMinutes,
  plannedRounds,
  roundsOfSteps,
  roundsToPlay,
  Step,
  type StepPlayed,
  standsToUsual,
  withNames,
  withoutNames,
  withSize,
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

describe('what is left of a block', () => {
  const named: Plan = {
    ...plan,
    steps: [
      { id: 'one', drill: 'rally', rounds: 2, partners: 'keep' },
      { id: 'two', drill: 'lob', rounds: 3, partners: 'turn' },
      { id: 'three', drill: 'rally', rounds: 1, partners: 'keep' },
    ],
  };
  const rally = { step: 'one', drill: 'rally' };
  const lob = { step: 'two', drill: 'lob' };

  test('is played in its order, each round with its turn in its step', () => {
    expect(nextStep(named, [])).toEqual({ step: named.steps[0], turn: 0 });
    expect(nextStep(named, [rally])).toEqual({ step: named.steps[0], turn: 1 });
    expect(nextStep(named, [rally, rally, lob])).toEqual({ step: named.steps[1], turn: 1 });
    expect(roundsToPlay(named, [rally, rally, lob])).toBe(3);
  });

  test('is the other drills, once a drill is taken out after its rounds', () => {
    const without = { ...named, steps: named.steps.slice(1) };
    expect(nextStep(without, [rally, rally])).toEqual({ step: named.steps[1], turn: 0 });
    expect(roundsToPlay(without, [rally, rally])).toBe(4);
  });

  test('is all of a block that was taken anew, though its drills were played before', () => {
    const anew = withNames(
      withoutNames(named),
      (
        (drawn) => () =>
          `new-${drawn++}`
      )(0),
    );
    expect(roundsToPlay(anew, [rally, rally, lob])).toBe(6);
    expect(nextStep(anew, [rally, rally, lob])?.turn).toBe(0);
  });

  test('is all of a drill that was taken out and put in again', () => {
    const again = { ...named, steps: [{ ...named.steps[0]!, id: 'again' }] };
    expect(roundsToPlay(again, [rally, rally])).toBe(2);
  });

  test('is nothing where a step has fewer rounds now than were played of it', () => {
    const fewer = { ...named, steps: [{ ...named.steps[0]!, rounds: 1 }] };
    expect(nextStep(fewer, [rally, rally])).toBeUndefined();
    expect(roundsToPlay(fewer, [rally, rally])).toBe(0);
  });

  test('takes rounds that name no step for the first of their drill with rounds left', () => {
    // As an earlier version wrote them.
    expect(roundsOfSteps(plan, [{ drill: 'rally' }, { drill: 'lob' }])).toEqual([1, 1]);
    const rallies = [1, 2, 3].map(() => ({ drill: 'rally' }));
    expect(roundsOfSteps(named, rallies)).toEqual([2, 0, 1]);
    expect(nextStep(emptyPlan, rallies)).toBeUndefined();
  });

  test('walks through every step for as many rounds as it has', () => {
    const step = fc.record({
      drill: fc.constantFrom('rally', 'lob'),
      rounds: fc.integer({ min: 1, max: 10 }),
      partners: fc.constantFrom('keep' as const, 'turn' as const),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 8 }), fc.boolean(), (steps, names) => {
        let drawn = 0;
        const bare = { ...plan, steps };
        const long = names ? withNames(bare, () => `step-${drawn++}`) : bare;
        const played: StepPlayed[] = [];
        for (let next = nextStep(long, played); next; next = nextStep(long, played)) {
          const { id, drill } = next.step;
          played.push({ ...(id !== undefined && { step: id }), drill });
        }
        const spelt = steps.flatMap(({ drill, rounds }) => Array<string>(rounds).fill(drill));
        expect(played.map(({ drill }) => drill)).toEqual(spelt);
        expect(roundsToPlay(long, played)).toBe(0);
      }),
    );
  });
});

describe('a set size for a drill of the block', () => {
  test('goes to every step of that drill, and to no other', () => {
    expect(withSize(plan, 'rally', 8).steps.map(({ size }) => size)).toEqual([8, 4]);
    expect(withSize(plan, 'volley', 8)).toEqual(plan);
  });

  test('leaves the plan that was given as it is', () => {
    withSize(plan, 'rally', 8);
    expect(plan.steps[0]).not.toHaveProperty('size');
  });
});

describe('a drill', () => {
  test('comes again while a round of the block is still to be played of it', () => {
    const rallies = (count: number) => Array(count).fill({ drill: 'rally' });
    expect([0, 1, 2].map((count) => comesAgain(plan, rallies(count), 'rally'))).toEqual([
      true,
      true,
      false,
    ]);
    expect(comesAgain(plan, [], 'volley')).toBe(false);
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
