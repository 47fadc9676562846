import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  countingRules,
  Drill,
  families,
  familyOf,
  flight,
  LARGEST_SIZE,
  strokes,
  type Target,
  Terms,
  targetOf,
  termsOf,
} from '../../../core/drill/drill.ts';

const rally: Drill = {
  id: 'rally',
  family: 'groundstrokes',
  rule: 'in-a-row',
  size: 10,
  shots: [
    { role: 0, stroke: 'groundstroke' },
    { role: 1, stroke: 'groundstroke', from: { x: 3, y: 11 }, to: { x: -3, y: -11 } },
  ],
  roles: [
    { start: { x: 0, y: -12 }, recover: { x: 0, y: -12 } },
    { start: { x: 0, y: 12 }, recover: { x: 0, y: 12 } },
  ],
  markers: [],
  perCourt: 2,
};
const sequence: Drill = { ...rally, rule: 'sequence', size: 2 };
const onTarget: Drill = {
  ...rally,
  rule: 'on-target',
  size: 1,
  shots: [{ role: 0, stroke: 'serve' }],
};
const fits = (drill: unknown) => Drill.safeParse(drill).success;

describe('a drill', () => {
  test.each([rally, sequence, onTarget])('of the rule $rule is read as it was written', (drill) => {
    expect(Drill.parse(drill)).toEqual(drill);
  });

  test('every stroke belongs to one of the families, and every family has a stroke', () => {
    expect(strokes.every((stroke) => families.includes(familyOf[stroke]))).toBe(true);
    expect(new Set(Object.values(familyOf))).toEqual(new Set(families));
  });

  test('has a size from 1 to the largest that anyone counts', () => {
    expect(fits({ ...rally, size: 1 })).toBe(true);
    expect(fits({ ...rally, size: LARGEST_SIZE })).toBe(true);
    for (const size of [0, -1, 2.5, LARGEST_SIZE + 1, '10', Number.NaN]) {
      expect(fits({ ...rally, size })).toBe(false);
    }
  });

  test('that is a sequence is as long as its shots, a ball on target is one', () => {
    expect(fits({ ...sequence, size: 3 })).toBe(false);
    expect(fits({ ...onTarget, size: 2 })).toBe(false);
  });

  test('has at least one shot', () => {
    expect(fits({ ...rally, shots: [] })).toBe(false);
  });

  test('knows only the rules, strokes and roles there are', () => {
    expect(fits({ ...rally, rule: 'by-feel' })).toBe(false);
    expect(fits({ ...rally, shots: [{ role: 0, stroke: 'smash' }] })).toBe(false);
    expect(fits({ ...rally, shots: [{ role: 2, stroke: 'lob' }] })).toBe(false);
  });

  test('has its places where a court can be', () => {
    const at = (x: number) => ({ ...rally, markers: [{ at: { x, y: 0 }, use: 'target' }] });
    expect(fits(at(20))).toBe(true);
    expect(fits(at(20.1))).toBe(false);
    expect(fits(at(Number.NaN))).toBe(false);
  });

  test('of the coach has a name', () => {
    const text = { name: ' Ten ', intention: '', cue: '', roles: ['', ''] };
    expect(Drill.parse({ ...rally, text }).text?.name).toBe('Ten');
    expect(fits({ ...rally, text: { ...text, name: '  ' } })).toBe(false);
  });
});

describe('the words of a drill', () => {
  const old = { name: 'Ten', intention: 'Keep it low.', cue: 'Knees.', roles: ['A', 'B'] };

  test('of an earlier version, without a word on how it is run, are read as they were', () => {
    expect(Drill.parse({ ...rally, text: old }).text).toEqual(old);
  });

  test('say how it is run where the coach wrote it, up to what fits a card', () => {
    const run = { tasks: ['feeds', 'volleys'], feed: '1 feeds.', counts: 'Volleys only.' };
    expect(Drill.parse({ ...rally, text: { ...old, ...run } }).text).toEqual({ ...old, ...run });
    expect(fits({ ...rally, text: { ...old, feed: 'f'.repeat(241) } })).toBe(false);
    expect(fits({ ...rally, text: { ...old, counts: 'c'.repeat(241) } })).toBe(false);
    expect(fits({ ...rally, text: { ...old, tasks: ['t'.repeat(161), ''] } })).toBe(false);
    expect(fits({ ...rally, text: { ...old, tasks: ['one alone'] } })).toBe(false);
  });
});

describe('the terms of a round', () => {
  test('keep what is counted and leave the court out', () => {
    expect(termsOf(rally)).toEqual({
      drill: 'rally',
      family: 'groundstrokes',
      rule: 'in-a-row',
      size: 10,
      shots: [
        { role: 0, stroke: 'groundstroke' },
        { role: 1, stroke: 'groundstroke' },
      ],
    });
  });

  test("keep the name that the coach gave, so that a drill's record outlives it", () => {
    const text = { name: 'Ten', intention: '', cue: '', roles: ['', ''] as [string, string] };
    expect(termsOf({ ...rally, text }).name).toBe('Ten');
  });

  test('take another size where a set can have one, and not where it is fixed', () => {
    expect(termsOf(rally, 4).size).toBe(4);
    expect(termsOf({ ...rally, rule: 'in-total' }, 4).size).toBe(4);
    expect(termsOf(sequence, 4).size).toBe(2);
    expect(termsOf(onTarget, 4).size).toBe(1);
  });

  test('of any drill are terms that the ledger takes', () => {
    const anyDrill = fc
      .record({
        rule: fc.constantFrom(...countingRules),
        size: fc.integer({ min: 1, max: LARGEST_SIZE }),
        shots: fc.array(
          fc.record({
            role: fc.constantFrom(0 as const, 1 as const),
            stroke: fc.constantFrom(...strokes),
          }),
          { minLength: 1, maxLength: 12 },
        ),
      })
      .map(({ rule, size, shots }): Drill => {
        const fixed = rule === 'sequence' ? shots.length : rule === 'on-target' ? 1 : size;
        return { ...rally, rule, shots, size: fixed };
      });
    fc.assert(
      fc.property(anyDrill, fc.integer({ min: 1, max: LARGEST_SIZE }), (drill, size) => {
        expect(fits(drill)).toBe(true);
        const terms = termsOf(drill, size);
        expect(Terms.parse(terms)).toEqual(terms);
      }),
    );
  });
});

describe('the flight of a shot', () => {
  test("goes from the role's start to the partner's", () => {
    expect(flight(rally, rally.shots[0]!)).toEqual({ from: { x: 0, y: -12 }, to: { x: 0, y: 12 } });
  });

  test('goes where the shot says, if it does', () => {
    expect(flight(rally, rally.shots[1]!)).toEqual({
      from: { x: 3, y: 11 },
      to: { x: -3, y: -11 },
    });
  });
});

describe('the target of a role', () => {
  const target: Target = { x: 2, y: 9, width: 1, length: 3 };
  const aimed: Drill = { ...onTarget, target, perCourt: 1 };

  test('is undefined in a drill without one', () => {
    expect(targetOf(onTarget, 0)).toBeUndefined();
    expect(targetOf(onTarget, 1)).toBeUndefined();
  });

  test('is the one on the side that the role plays to', () => {
    expect(targetOf(aimed, 0)).toEqual(target);
    const near = { ...target, y: -9 };
    expect(targetOf({ ...aimed, target: near }, 1)).toEqual(near);
  });

  test('is turned about the middle of the net for the partner on a court of one pair', () => {
    expect(targetOf(aimed, 1)).toEqual({ ...target, x: -2, y: -9 });
    expect(targetOf({ ...aimed, target: { ...target, x: 0 } }, 1)).toEqual({
      ...target,
      x: 0,
      y: -9,
    });
  });

  test('is mirrored in the net for the partner where pairs share a court', () => {
    expect(targetOf({ ...aimed, perCourt: 2 }, 1)).toEqual({ ...target, y: -9 });
  });

  test("is the other role's alone where balls on target are not counted", () => {
    expect(targetOf({ ...rally, target }, 0)).toEqual(target);
    expect(targetOf({ ...rally, target }, 1)).toBeUndefined();
  });
});
