import { isInside, type Side } from '../../core/court/court.ts';
import type { Place } from '../../core/court/place.ts';
import { flight, RUN_OFF, roleNumbers } from '../../core/drill/drill.ts';
import {
  across,
  type Draft,
  type DraftShot,
  drawnOf,
  type Standing,
  shotsOf,
  sideOf,
  withShots,
} from './draft.ts';
import { placeOf, type Spot, snap, spotOf } from './spot.ts';

/** Something of a drill that has a place on the court. */
export interface Thing {
  /** What faults call it too. */
  key: string;
  what: 'start' | 'recover' | 'marker' | 'target' | 'struck' | 'lands';
  /** The role, the marker or the shot, from 0. */
  number: number;
  /** The one side where it can be; left out where it can be on both. */
  side?: Side;
  at: Spot;
  put: (at: Spot) => Draft;
  /** The draft without it; left out where a drill must have it, or where it is not put yet. */
  without?: () => Draft;
}

/** Everything that can be put on the court, in the order in which a coach would set it out. */
export function thingsOf(draft: Draft): Thing[] {
  const { target } = draft;
  const drawn = drawnOf(draft);
  const things: Thing[] = [];
  for (const role of roleNumbers) {
    const { start, recover } = draft.roles[role];
    const stand = (standing: Standing): Draft => ({
      ...draft,
      roles: role === 0 ? [standing, draft.roles[1]] : [draft.roles[0], standing],
    });
    const side = sideOf(role);
    things.push(
      {
        key: `start-${role}`,
        what: 'start',
        number: role,
        side,
        at: start,
        // Who recovers where the shot is played from keeps doing so.
        put: (at) => stand({ start: at, recover: isSame(start, recover) ? at : recover }),
      },
      {
        key: `recover-${role}`,
        what: 'recover',
        number: role,
        side,
        at: recover,
        put: (at) => stand({ start, recover: at }),
      },
    );
  }
  draft.markers.forEach((marker, number) => {
    things.push({
      key: `marker-${number}`,
      what: 'marker',
      number,
      at: marker.at,
      put: (at) => ({ ...draft, markers: draft.markers.with(number, { ...marker, at }) }),
      without: () => ({ ...draft, markers: draft.markers.toSpliced(number, 1) }),
    });
  });
  if (target) {
    things.push({
      key: 'target',
      what: 'target',
      number: 0,
      at: target.at,
      put: (at) => ({ ...draft, target: { ...target, at } }),
      without: () => {
        const { target: _, ...rest } = draft;
        return rest;
      },
    });
  }
  const shots = shotsOf(draft);
  shots.forEach((shot, number) => {
    const change = (changed: DraftShot) => withShots(draft, shots.with(number, changed));
    const { from, to } = flight(drawn, drawn.shots[number]!);
    const { from: ownFrom, ...fromless } = shot;
    const { to: ownTo, ...toless } = shot;
    const side = sideOf(shot.role);
    things.push(
      {
        key: `struck-${number}`,
        what: 'struck',
        number,
        side,
        at: ownFrom ?? spotOf(from, side),
        put: (at) => change({ ...shot, from: at }),
        ...(ownFrom && { without: () => change(fromless) }),
      },
      {
        key: `lands-${number}`,
        what: 'lands',
        number,
        side: across(side),
        at: ownTo ?? spotOf(to, across(side)),
        put: (at) => change({ ...shot, to: at }),
        ...(ownTo && { without: () => change(toless) }),
      },
    );
  });
  return things;
}

const isSame = (a: Spot, b: Spot) => {
  const [one, two] = [placeOf(a), placeOf(b)];
  return one.x === two.x && one.y === two.y;
};

/** Where a touch puts a thing, or why it cannot be there. */
export function touched(thing: Thing, at: Place): { spot: Spot } | { refused: 'off' | 'side' } {
  const place = { x: snap(at.x), y: snap(at.y) };
  if (!isInside('full', place, RUN_OFF)) return { refused: 'off' };
  const spot = spotOf(place, thing.side);
  return thing.side && spot.side !== thing.side ? { refused: 'side' } : { spot };
}
