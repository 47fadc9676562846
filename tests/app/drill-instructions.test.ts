import { describe, expect, test } from 'vitest';
import { instructionsOf, rolesLines, wholeTextOf } from '../../app/words/drill-instructions.ts';
import { instructions } from '../../app/words/instructions.en.ts';
import type { DrillText } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';

const starter = starterDrills.find(({ id }) => id === 'third-ball-down-the-line')!;

describe('how a drill is run', () => {
  test('is told of every starter drill by the language', () => {
    for (const drill of starterDrills) {
      expect(instructionsOf(drill)).toBe(instructions[drill.id as keyof typeof instructions]);
    }
  });

  test('is the coach’s own of a drill that the coach changed, and nothing where nothing was written', () => {
    const text: DrillText = { name: 'Mine', intention: '', cue: '', roles: ['', ''] };
    const own = instructionsOf({ ...starter, text });
    expect([own.feed, own.counts, own.tasks, own.setup]).toEqual([
      ...[undefined, undefined, undefined, undefined],
    ]);
    expect(rolesLines(own)).toEqual([]);
  });

  test('goes into the form with the rest of the words, but for the places of the markers', () => {
    const { feed, counts, tasks, roles } = instructions['third-ball-down-the-line'];
    expect(wholeTextOf(starter)).toEqual({
      name: 'Third ball down the line',
      intention: expect.any(String),
      cue: expect.any(String),
      ...{ feed, counts, tasks, roles },
    });
  });
});

describe('the roles of a drill', () => {
  test('are told in words that need no drill to be known', () => {
    expect(rolesLines(instructions['third-ball-down-the-line'])).toEqual([
      '1: hits ball one cross-court and ball three down the line',
      '2: hits only cross-court',
    ]);
  });

  test('that are alike are told once', () => {
    expect(rolesLines(instructions['half-court-rally'])).toEqual([
      'Both: at the baseline, only straight, inside your own half',
    ]);
    expect(rolesLines({ roles: ['Baseline', ' Baseline'] })).toEqual(['Both: Baseline']);
  });

  test('are told by their names where the coach did not say what they do', () => {
    expect(rolesLines({ roles: ['Lob', 'Overhead'], tasks: ['', 'smashes'] })).toEqual([
      '1: Lob',
      '2: smashes',
    ]);
    expect(rolesLines({ roles: ['', 'Overhead'] })).toEqual(['2: Overhead']);
  });
});
