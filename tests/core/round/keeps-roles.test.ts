import { describe, expect, test } from 'vitest';
import { termsOf } from '../../../core/drill/drill.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';
import { keepsRoles } from '../../../core/round/keeps-roles.ts';

const terms = (id: string) => {
  const drill = starterDrills.find((each) => each.id === id);
  if (!drill) throw new RangeError(id);
  return termsOf(drill);
};

describe('a player keeps a role', () => {
  test('in a pair, where a lob is one’s and the overhead the other’s', () => {
    expect(keepsRoles(terms('lob-and-overhead'), ['pip', 'juno'])).toBe(true);
  });

  test('in a pair that rallies: one of them begins', () => {
    expect(keepsRoles(terms('half-court-rally'), ['pip', 'juno'])).toBe(true);
  });

  test('never in a trio, which turns', () => {
    for (const drill of starterDrills) {
      expect(keepsRoles(drill, ['pip', 'juno', 'suki']), drill.id).toBe(false);
    }
  });

  test('not where balls on target count for the player and both strike the same', () => {
    expect(keepsRoles(terms('wide-past-the-markers'), ['pip', 'juno'])).toBe(false);
  });

  test('on target too, where the two strike different strokes', () => {
    const { shots } = terms('lob-and-overhead');
    expect(keepsRoles({ rule: 'on-target', shots }, ['pip', 'juno'])).toBe(true);
  });
});
