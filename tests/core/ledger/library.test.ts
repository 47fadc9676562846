import { describe, expect, test } from 'vitest';
import type { Drill } from '../../../core/drill/drill.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';
import type { Saying } from '../../../core/ledger/entry.ts';
import { drillsOn, foldLibrary, isStarter } from '../../../core/ledger/library.ts';
import type { Plan } from '../../../core/round/block.ts';
import { teller } from '../told.ts';

const starter = starterDrills[0]!;
const text = { name: 'Mine', intention: '', cue: '', roles: ['', ''] as [string, string] };
const changed: Drill = { ...starter, size: 7, text };
const own: Drill = { ...starter, id: 'own', text };

const write = (drill: Drill): Saying => ({ kind: 'drill-written', drill });
const drop = (drill: string): Saying => ({ kind: 'drill-dropped', drill });
const fold = (...sayings: Saying[]) => {
  const tell = teller();
  return foldLibrary(sayings.map((saying) => tell(saying)));
};

describe('the library', () => {
  test('holds the starter drills as they came, before anything was written', () => {
    expect([...fold().drills.values()]).toEqual(starterDrills);
    expect(isStarter(starter.id)).toBe(true);
    expect(isStarter('own')).toBe(false);
  });

  test("takes in the coach's own drills after the starter ones", () => {
    expect([...fold(write(own)).drills.values()]).toEqual([...starterDrills, own]);
  });

  test('has a drill that was written anew in the place of the old one', () => {
    const { drills } = fold(write(changed));
    expect(drills.get(starter.id)).toEqual(changed);
    expect([...drills.keys()]).toEqual(starterDrills.map(({ id }) => id));
  });

  test('loses an own drill that is dropped', () => {
    expect(fold(write(own), drop('own')).drills.has('own')).toBe(false);
  });

  test('has the original of a starter drill back where the version of it is dropped', () => {
    const { drills } = fold(write(changed), drop(starter.id));
    expect([...drills.values()]).toEqual(starterDrills);
  });

  test('never loses a starter drill, also where two phones dropped the version of it', () => {
    const { drills } = fold(write(changed), drop(starter.id), drop(starter.id));
    expect(drills.get(starter.id)).toEqual(starter);
  });

  test('has a version that was written after the original was put back', () => {
    expect(fold(write(changed), drop(starter.id), write(changed)).drills.get(starter.id)).toEqual(
      changed,
    );
  });

  test('proposes every drill until it is switched off, and again once it is switched on', () => {
    const turn = (on: boolean): Saying => ({ kind: 'drill-switched', drill: starter.id, on });
    expect(drillsOn(fold())).toEqual(starterDrills);
    expect(drillsOn(fold(write(own), turn(false)))).toEqual([...starterDrills.slice(1), own]);
    expect(drillsOn(fold(turn(false), turn(true)))).toEqual(starterDrills);
    expect(drillsOn(fold(turn(false), write(changed)))).toEqual(starterDrills.slice(1));
  });

  test('holds a drill that is switched off', () => {
    const { drills, off } = fold({ kind: 'drill-switched', drill: starter.id, on: false });
    expect(off).toEqual(new Set([starter.id]));
    expect(drills.has(starter.id)).toBe(true);
  });

  test('keeps blocks by name, without the steps whose drill is gone', () => {
    const plan: Plan = {
      steps: [
        { drill: 'own', rounds: 1, partners: 'keep' },
        { drill: starter.id, rounds: 2, partners: 'turn' },
      ],
      seconds: 120,
      changeover: 45,
    };
    const keep: Saying = { kind: 'block-kept', block: 'b1', name: 'Tuesday', plan };
    expect(fold(write(own), keep).blocks.get('b1')?.plan).toEqual(plan);
    expect(fold(write(own), keep, drop('own')).blocks.get('b1')?.plan).toEqual({
      ...plan,
      steps: plan.steps.slice(1),
    });
    expect(fold(keep, { kind: 'block-dropped', block: 'b1' }).blocks.size).toBe(0);
  });

  test('keeps a focus that was dropped, since older looks name it, and says that it was', () => {
    const focus = { id: 'f1', question: 'Racket up?', yes: '', told: '' };
    const written: Saying = { kind: 'focus-written', focus };
    expect([...fold(written).foci.values()]).toEqual([focus]);
    const dropped = fold(written, { kind: 'focus-dropped', focus: 'f1' });
    expect([...dropped.foci.values()]).toEqual([{ ...focus, dropped: true }]);
    expect([...fold({ kind: 'focus-dropped', focus: 'f1' }).foci]).toEqual([]);
  });

  test('gives a drill the focus that was chosen last, and none once that is taken back', () => {
    const chosen = (focus?: string): Saying => ({
      kind: 'drill-focused',
      drill: 'own',
      ...(focus !== undefined && { focus }),
    });
    expect(fold(chosen('stance'), chosen('depth')).focusOf.get('own')).toBe('depth');
    expect(fold(chosen('stance'), chosen()).focusOf.has('own')).toBe(false);
  });
});
