import { describe, expect, test } from 'vitest';
import {
  type Draft,
  draftOf,
  drawnOf,
  emptyDraft,
  sizeOf,
  strokeOf,
  withMarker,
  withOneMore,
  withoutShot,
  withShot,
  withStroke,
  withTarget,
  withUse,
} from '../../../app/drill/draft.ts';
import { readDraft } from '../../../app/drill/read-draft.ts';
import { placeOf } from '../../../app/drill/spot.ts';
import type { Drill } from '../../../core/drill/drill.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';

const text = { name: 'Mine', intention: 'Keep it low.', cue: 'Knees.', roles: ['A', 'B'] } as const;
const textOf = () => ({ ...text, roles: [...text.roles] as [string, string] });
const written = (draft: Draft): Drill => {
  const read = readDraft(draft, 'own');
  if ('faults' in read) throw new Error(JSON.stringify(read.faults));
  return read.drill;
};
const named = (over: Partial<Draft> = {}): Draft => ({ ...emptyDraft(), name: 'Mine', ...over });
const starter = (id: string) => starterDrills.find((drill) => drill.id === id)!;

describe('a draft of a drill', () => {
  test.each(starterDrills.map((drill) => [drill.id, drill] as const))(
    'gives %s back to the last digit where nothing was changed',
    (id, drill) => {
      const read = readDraft(draftOf(drill, textOf()), id);
      expect(read).toEqual({ drill: { ...drill, text: textOf() } });
    },
  );

  test('gives back how a drill is run, and nothing where that is left empty', () => {
    const run = {
      tasks: ['feeds', 'volleys'] as [string, string],
      feed: '1 feeds.',
      counts: 'Volleys only.',
    };
    const draft = draftOf(starter('soft-volleys'), { ...textOf(), ...run });
    expect(written(draft).text).toEqual({ ...textOf(), ...run });
    const emptied = { ...draft, tasks: [' ', ''] as const, feed: ' ', counts: '' };
    expect(written(emptied).text).toEqual(textOf());
  });

  test('that is new is ten in a row from the baselines once it has a name', () => {
    const drill = written(named());
    expect(drill).toMatchObject({ id: 'own', rule: 'in-a-row', size: 10, perCourt: 1 });
    expect(drill.shots).toEqual([
      { role: 0, stroke: 'groundstroke' },
      { role: 1, stroke: 'groundstroke' },
    ]);
    expect(drill.roles[0].start).toEqual({ x: 0, y: -12.4 });
    expect(drill.roles[1].start).toEqual({ x: 0, y: 12.4 });
  });

  test('gives a role without a shot the same stroke as its partner', () => {
    const serve: Drill = {
      ...starter('serves-to-the-middle'),
      shots: [{ role: 0, stroke: 'serve' }],
    };
    const drill = written(draftOf(serve, textOf()));
    expect(drill.shots).toEqual([
      { role: 0, stroke: 'serve' },
      { role: 1, stroke: 'serve' },
    ]);
  });
});

describe('the set of a draft', () => {
  test('is as long as its shots in a sequence, and one ball on target', () => {
    const draft = withOneMore(withOneMore(withOneMore(named({ rule: 'sequence' }))));
    expect(sizeOf(draft)).toBe(3);
    expect(sizeOf({ ...draft, rule: 'on-target' })).toBe(1);
    expect(sizeOf({ ...draft, rule: 'in-total' })).toBe(10);
    expect(written(draft).size).toBe(3);
  });

  test('loses nothing of a rule while another is chosen', () => {
    const rally = withStroke(named({ size: 6 }), 1, 'volley');
    const sequence = withOneMore(withOneMore({ ...rally, rule: 'sequence' as const }));
    const target = { ...sequence, rule: 'on-target' as const };
    expect(written({ ...target, rule: 'in-a-row' })).toEqual(written(rally));
    expect(written({ ...target, rule: 'sequence' })).toEqual(written(sequence));
  });

  test('is of one stroke on target, since each ball counts the same', () => {
    const draft = withStroke(withStroke(named({ rule: 'on-target' }), 1, 'lob'), 0, 'serve');
    expect(written(draft).shots.map(({ stroke }) => stroke)).toEqual(['serve', 'serve']);
  });

  test('takes the strokes of a sequence along where it is counted otherwise', () => {
    const draft = draftOf(starter('lob-and-overhead'), textOf());
    expect(strokeOf(draft, 0)).toBe('lob');
    expect(strokeOf(draft, 1)).toBe('overhead');
    expect(written({ ...draft, rule: 'in-total' })).toMatchObject({ size: 10, rule: 'in-total' });
  });

  test('changes every ball of a role in a longer pattern, and leaves the balls their way', () => {
    const before = starter('volleys-left-and-right');
    const drill = written(withStroke(draftOf(before, textOf()), 0, 'lob'));
    expect(drill.shots).toEqual(
      before.shots.map((shot) => (shot.role === 0 ? { ...shot, stroke: 'lob' } : shot)),
    );
  });
});

describe('the shots of a sequence', () => {
  const three = withOneMore(withOneMore(withOneMore(named({ rule: 'sequence' }))));

  test('are added in turn and taken out one by one', () => {
    expect(three.sequence.map(({ role }) => role)).toEqual([0, 1, 0]);
    expect(withoutShot(three, 0).sequence.map(({ role }) => role)).toEqual([1, 0]);
  });

  test('keep their places with another stroke, and let them go with another striker', () => {
    const draft = draftOf(starter('lob-and-overhead'), textOf());
    const [lob] = draft.sequence;
    expect(withShot(draft, 0, { role: 0, stroke: 'volley' }).sequence[0]).toEqual({
      ...lob,
      stroke: 'volley',
    });
    expect(withShot(draft, 0, { role: 1, stroke: 'lob' }).sequence[0]).toEqual({
      role: 1,
      stroke: 'lob',
    });
    expect(withShot(draft, 9, { role: 1, stroke: 'lob' })).toBe(draft);
  });
});

describe('what is set out', () => {
  test('grows by a marker, which can be for something else', () => {
    const draft = withUse(withMarker(withMarker(named())), 1, 'lane');
    expect(draft.markers.map(({ use }) => use)).toEqual(['recovery', 'lane']);
    expect(placeOf(draft.markers[0]!.at)).toEqual({ x: 0, y: -6.4 });
    expect(withUse(draft, 5, 'lane')).toBe(draft);
  });

  test('has a target on the far side at first, inside the lines', () => {
    const drill = written(withTarget(named({ rule: 'on-target' })));
    expect(drill.target).toEqual({ x: 0, y: 10, width: 3, length: 3 });
  });

  test('is drawn while the draft is not a drill yet', () => {
    expect(drawnOf({ ...emptyDraft(), rule: 'sequence' })).toMatchObject({
      shots: [],
      roles: [{ start: { x: 0, y: -12.4 } }, { start: { x: 0, y: 12.4 } }],
    });
  });
});
