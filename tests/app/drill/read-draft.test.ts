import { describe, expect, test } from 'vitest';
import {
  type Draft,
  emptyDraft,
  withMarker,
  withOneMore,
  withTarget,
} from '../../../app/drill/draft.ts';
import { readDraft } from '../../../app/drill/read-draft.ts';
import { typed } from '../../../app/drill/spot.ts';

const named: Draft = { ...emptyDraft(), name: 'Mine' };
const faults = (draft: Draft) => {
  const read = readDraft(draft, 'own');
  return 'faults' in read ? read.faults : [];
};
const withNet = (draft: Draft, text: string): Draft => {
  const marker = draft.markers[0]!;
  const at = { ...marker.at, net: typed(marker.at.net, text) };
  return { ...draft, markers: [{ ...marker, at }] };
};
const withWidth = (text: string): Draft => {
  const { target, ...draft } = withTarget(named);
  return { ...draft, target: { ...target!, width: typed(target!.width, text) } };
};

describe('the faults of a draft', () => {
  test('are none where the ledger would take the drill', () => {
    expect(faults(named)).toEqual([]);
    expect(faults(withTarget(withMarker(named)))).toEqual([]);
  });

  test('tell of a name that is not there, also where only blanks are', () => {
    for (const name of ['', '   ']) {
      expect(faults({ ...named, name })).toEqual([{ field: 'name', reason: 'empty' }]);
    }
  });

  test('tell of a name that another drill has, whatever its case and the spaces round it', () => {
    const read = (name: string) => readDraft({ ...named, name }, 'own', ['Mini rally', 'ÉCHANGE']);
    for (const name of ['Mini rally', ' mini RALLY ', 'Échange', 'E\u0301change']) {
      expect(read(name)).toEqual({ faults: [{ field: 'name', reason: 'taken' }] });
    }
    expect(read('Mini rally 2')).toHaveProperty('drill');
  });

  test('tell of words that are too long, and how long they may be', () => {
    const draft: Draft = {
      ...named,
      name: 'n'.repeat(61),
      intention: 'i'.repeat(241),
      cue: 'c'.repeat(121),
      roleNames: ['r'.repeat(41), 'r'.repeat(40)],
      tasks: ['t'.repeat(160), 't'.repeat(161)],
      feed: 'f'.repeat(241),
      counts: 'c'.repeat(241),
    };
    expect(faults(draft)).toEqual([
      { field: 'name', reason: 'long', most: 60 },
      { field: 'intention', reason: 'long', most: 240 },
      { field: 'cue', reason: 'long', most: 120 },
      { field: 'role-0', reason: 'long', most: 40 },
      { field: 'task-1', reason: 'long', most: 160 },
      { field: 'feed', reason: 'long', most: 240 },
      { field: 'counts', reason: 'long', most: 240 },
    ]);
  });

  test('tell of a sequence of fewer than two shots or more than twelve', () => {
    let draft: Draft = { ...named, rule: 'sequence' };
    const fault = [{ field: 'shots', reason: 'shots' }];
    expect(faults(draft)).toEqual(fault);
    expect(faults(withOneMore(draft))).toEqual(fault);
    for (let shots = 0; shots < 12; shots++) draft = withOneMore(draft);
    expect(faults(draft)).toEqual([]);
    expect(faults(withOneMore(draft))).toEqual(fault);
  });

  test('tell of a place off the court and its run-off, and of metres that are no number', () => {
    const draft = withMarker(named);
    expect(faults(withNet(draft, '15.1'))).toEqual([]);
    expect(faults(withNet(draft, '15.3'))).toEqual([{ field: 'marker-0', reason: 'off' }]);
    expect(faults(withNet(draft, '400'))).toEqual([{ field: 'marker-0', reason: 'off' }]);
    expect(faults(withNet(draft, 'far'))).toEqual([{ field: 'marker-0', reason: 'number' }]);
  });

  test('tell of a target that is too large, of no width, or not inside the lines', () => {
    expect(faults(withWidth('12.5'))).toEqual([{ field: 'target-width', reason: 'size' }]);
    expect(faults(withWidth('0'))).toEqual([{ field: 'target-width', reason: 'size' }]);
    expect(faults(withWidth('wide'))).toEqual([{ field: 'target-width', reason: 'number' }]);
    expect(faults(withWidth('11.5'))).toEqual([{ field: 'target', reason: 'outside' }]);
  });

  test('tell of a target that reaches over the net', () => {
    const { target, ...draft } = withTarget(named);
    const at = { ...target!.at, net: { value: 1.4 } };
    expect(faults({ ...draft, target: { ...target!, at } })).toEqual([
      { field: 'target', reason: 'outside' },
    ]);
  });

  test('tell of a draft that no form makes, as a whole', () => {
    expect(faults({ ...named, perCourt: 9 })).toEqual([{ field: 'drill', reason: 'unfit' }]);
  });
});
