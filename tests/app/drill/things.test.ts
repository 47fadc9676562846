import { describe, expect, test } from 'vitest';
import {
  type Draft,
  draftOf,
  drawnOf,
  emptyDraft,
  withMarker,
  withTarget,
} from '../../../app/drill/draft.ts';
import { placeOf, spotOf } from '../../../app/drill/spot.ts';
import { type Thing, thingsOf, touched } from '../../../app/drill/things.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';

const thing = (draft: Draft, key: string): Thing => {
  const found = thingsOf(draft).find((each) => each.key === key);
  if (!found) throw new Error(`no ${key}`);
  return found;
};
const text = { name: 'Mine', intention: '', cue: '', roles: ['', ''] as [string, string] };
const lob = draftOf(starterDrills.find(({ id }) => id === 'lob-and-overhead')!, text);
const near = { x: 1, y: -3 };

describe('the things of a drill that have a place', () => {
  test('are both roles, then markers, the target and both ends of each ball', () => {
    expect(thingsOf(withTarget(withMarker(emptyDraft()))).map(({ key }) => key)).toEqual([
      'start-0',
      'recover-0',
      'start-1',
      'recover-1',
      'marker-0',
      'target',
      'struck-0',
      'lands-0',
      'struck-1',
      'lands-1',
    ]);
  });

  test('are each put without moving another', () => {
    const draft = withTarget(withMarker(lob));
    for (const { key, put } of thingsOf(draft)) {
      const moved = thingsOf(put(spotOf(near)));
      expect(moved.map((each) => each.key)).toEqual(thingsOf(draft).map((each) => each.key));
      const before = new Map(thingsOf(draft).map((each) => [each.key, placeOf(each.at)]));
      // A ball goes along with the player whose place it was given by.
      const others = moved.filter((each) => each.key !== key && !/^(struck|lands)/.test(each.key));
      expect(placeOf(moved.find((each) => each.key === key)!.at), key).toEqual(near);
      for (const each of others) {
        if (key.startsWith('start') && each.key === key.replace('start', 'recover')) continue;
        expect(placeOf(each.at), `${each.key} after ${key}`).toEqual(before.get(each.key));
      }
    }
  });

  test('take the recovery along with a start until the two are put apart', () => {
    const along = thing(emptyDraft(), 'start-0').put(spotOf(near));
    expect(placeOf(along.roles[0].recover)).toEqual(near);
    const apart = thing(along, 'recover-0').put(spotOf({ x: 0, y: -9 }));
    const moved = thing(apart, 'start-0').put(spotOf({ x: 2, y: -12 }));
    expect(placeOf(moved.roles[0].recover)).toEqual({ x: 0, y: -9 });
  });

  test('have a ball from the striker to the partner until it is put, and again after', () => {
    const far = { x: 1, y: 8 };
    const draft = emptyDraft();
    expect(placeOf(thing(draft, 'lands-0').at)).toEqual({ x: 0, y: 12.4 });
    expect(thing(draft, 'lands-0').without).toBeUndefined();
    const put = thing(draft, 'lands-0').put(spotOf(far));
    expect(drawnOf(put).shots[0]).toEqual({ role: 0, stroke: 'groundstroke', to: far });
    expect(thing(put, 'lands-0').without!()).toEqual(draft);
  });

  test('can be taken out again where a drill can be without', () => {
    const draft = withTarget(withMarker(emptyDraft()));
    expect(thing(draft, 'marker-0').without!().markers).toEqual([]);
    expect(thing(draft, 'target').without!()).not.toHaveProperty('target');
    expect(thing(draft, 'start-0').without).toBeUndefined();
  });
});

describe('a touch on the court', () => {
  const start = thing(emptyDraft(), 'start-0');

  test('puts a thing to the tenth of a metre', () => {
    expect(touched(start, { x: 1.2345, y: -11.96 })).toEqual({ spot: spotOf({ x: 1.2, y: -12 }) });
  });

  test('is refused outside the run-off', () => {
    expect(touched(start, { x: 0, y: -15.5 })).toEqual({ refused: 'off' });
    expect(touched(start, { x: 9, y: -3 })).toEqual({ refused: 'off' });
  });

  test('is refused on the side where the role does not play, and not for a marker', () => {
    expect(touched(start, { x: 0, y: 3 })).toEqual({ refused: 'side' });
    expect(touched(thing(lob, 'lands-0'), { x: 0, y: -3 })).toEqual({ refused: 'side' });
    expect(touched(thing(lob, 'marker-0'), { x: 0, y: 3 })).toEqual({
      spot: spotOf({ x: 0, y: 3 }),
    });
  });
});
