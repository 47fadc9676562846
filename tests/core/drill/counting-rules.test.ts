import { describe, expect, test } from 'vitest';
import {
  countsByPlayer,
  hasOwnSize,
  ruleMeanings,
  takesAdvice,
} from '../../../core/drill/counting-rules.ts';
import { countingRules } from '../../../core/drill/drill.ts';

describe('the table of counting rules', () => {
  test('has a line for every rule and no other', () => {
    expect(Object.keys(ruleMeanings).toSorted()).toEqual([...countingRules].toSorted());
  });

  test('says of each who counts, what a miss does, and who chooses the size', () => {
    const told = countingRules.map((rule) => [
      rule,
      countsByPlayer(rule),
      ruleMeanings[rule].startsAgain,
      hasOwnSize(rule),
      takesAdvice(rule),
    ]);
    expect(told).toEqual([
      ['in-a-row', false, true, true, true],
      ['in-total', false, false, true, false],
      ['sequence', false, true, false, false],
      ['on-target', true, false, false, false],
    ]);
  });

  test('takes four of five balls to come back before anything is known, and nothing of a target', () => {
    // The priors of the model of touches: Beta(4, 1), on target Beta(1, 1).
    for (const rule of countingRules) {
      const { a, b } = ruleMeanings[rule].prior;
      expect(a / (a + b)).toBe(countsByPlayer(rule) ? 0.5 : 0.8);
    }
  });
});
