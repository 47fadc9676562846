import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Place } from '../../../core/court/place.ts';
import { type Drill, flight, roleNumbers, targetOf } from '../../../core/drill/drill.ts';
import { clearLanes, courtMarkers, flightsCross, laneOf } from '../../../core/drill/lanes.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';
import { check } from '../../reference/values.ts';

// The court's lengths come from the ITF rules, not from core/court.ts.
const metres = (element: string): number => check(`I.${element}`).expected.metres_exact;
const baseline = metres('derived.baseline_to_net');
const doubles = metres('doubles_width') / 2;

const drillNamed = (id: string) => starterDrills.find((drill) => drill.id === id)!;
const lanesOf = (drill: Drill) =>
  Array.from({ length: drill.perCourt }, (_, lane) => laneOf(drill, lane));
const eachLane = test.each(
  starterDrills.flatMap((drill) => lanesOf(drill).map((lane, at) => [drill.id, at, lane] as const)),
);
const eachShared = test.each(
  starterDrills.filter(({ perCourt }) => perCourt > 1).map((drill) => [drill.id, drill] as const),
);
const flights = (drill: Drill) => drill.shots.map((shot) => flight(drill, shot));

describe('a lane', () => {
  eachLane('of %s, number %i, has its players on the court and its run-off', (_, _at, drill) => {
    const stands = [
      ...drill.roles.flatMap(({ start, recover }) => [start, recover]),
      ...flights(drill).map(({ from }) => from),
    ];
    for (const { x, y } of stands) {
      expect(Math.abs(x)).toBeLessThan(doubles);
      expect(Math.abs(y)).toBeLessThan(baseline + 3);
    }
  });

  eachLane('of %s, number %i, has its balls, targets and markers in court', (_, _at, drill) => {
    for (const { to } of flights(drill)) {
      expect(Math.abs(to.x)).toBeLessThan(doubles);
      expect(Math.abs(to.y)).toBeLessThan(baseline);
    }
    for (const role of roleNumbers) {
      const target = targetOf(drill, role);
      if (!target) continue;
      expect(Math.abs(target.x) + target.width / 2).toBeLessThan(doubles);
      expect(Math.abs(target.y) + target.length / 2).toBeLessThanOrEqual(baseline + 1e-9);
    }
    for (const { at } of drill.markers) {
      expect(Math.abs(at.x)).toBeLessThanOrEqual(doubles + 1e-9);
      expect(Math.abs(at.y)).toBeLessThan(baseline + 3);
    }
  });

  eachLane('of %s, number %i, keeps every length and depth of the first', (id, _at, drill) => {
    const first = drillNamed(id);
    const depths = (of: Drill) => flights(of).map(({ from, to }) => [from.y, to.y]);
    const reach = (of: Drill) =>
      flights(of).map(({ from, to }) => Math.abs(from.x - to.x).toFixed(9));
    expect(depths(drill)).toEqual(depths(first));
    expect(reach(drill)).toEqual(reach(first));
    expect(drill.markers.map(({ at }) => at.y)).toEqual(first.markers.map(({ at }) => at.y));
    expect(drill.target?.width).toBe(first.target?.width);
  });

  test('number 0 is the drill as it stands', () => {
    for (const drill of starterDrills) expect(laneOf(drill, 0)).toBe(drill);
  });

  const starts = (drill: Drill) => lanesOf(drill).map(({ roles }) => roles[0].start.x);

  test('number 1 of four mirrors it, and the outer two are the inner two moved out by a quarter', () => {
    const quarter = doubles / 2;
    const role = (y: number) => ({ start: { x: quarter / 2, y }, recover: { x: quarter / 2, y } });
    const four: Drill = { ...drillNamed('soft-volleys'), perCourt: 4, roles: [role(-2), role(2)] };
    expect(starts(four)).toEqual([
      expect.closeTo(quarter / 2, 9),
      expect.closeTo(-quarter / 2, 9),
      expect.closeTo((3 * quarter) / 2, 9),
      expect.closeTo((-3 * quarter) / 2, 9),
    ]);
  });

  test('of three is the middle one, then the one to its right and the one to its left', () => {
    const third = (2 * doubles) / 3;
    expect(starts(drillNamed('soft-volleys'))).toEqual([
      0,
      expect.closeTo(third, 9),
      expect.closeTo(-third, 9),
    ]);
  });

  test('shares its marker with the lane beside it where three pairs play', () => {
    const places = courtMarkers(clearLanes(drillNamed('mini-rally')));
    expect(places.map(({ x }) => Math.abs(x))).toEqual(
      places.map(() => expect.closeTo(doubles / 3, 9)),
    );
    expect(places).toHaveLength(4);
  });

  test('mirrors targets and every place that a shot names', () => {
    const mirrored = laneOf(drillNamed('closing-in'), 1);
    expect(mirrored.shots.at(-1)).toMatchObject({ from: { x: -2, y: 4 }, to: { x: -2, y: -4 } });
    const target = laneOf(drillNamed('deep-past-the-markers'), 1).target!;
    expect(target.x).toBe(-drillNamed('deep-past-the-markers').target!.x);
  });

  test('leaves no place at a 0 with a sign', () => {
    for (const { at } of laneOf(drillNamed('half-court-rally'), 1).markers)
      expect(Object.is(at.x, -0)).toBe(false);
  });

  test.each([-1, 2, 0.5, Number.NaN])('number %d of two is an error that names it', (lane) => {
    expect(() => laneOf(drillNamed('half-court-rally'), lane)).toThrow(/^lane/);
  });
});

describe('pairs beside each other', () => {
  eachShared('at %s never have a ball of theirs crossed by another pair', (_, drill) => {
    const lanes = lanesOf(drill);
    for (const [at, lane] of lanes.entries()) {
      for (const other of lanes.slice(at + 1)) expect(flightsCross(lane, other)).toBe(false);
    }
    expect(clearLanes(drill)).toEqual(lanes);
  });

  test('are as few as the flights allow, whatever a drill says of itself', () => {
    const cross = { ...drillNamed('cross-court-deuce'), perCourt: 2 };
    expect(flightsCross(laneOf(cross, 0), laneOf(cross, 1))).toBe(true);
    expect(clearLanes(cross)).toEqual([cross]);
    const wide: Drill = {
      ...drillNamed('half-court-rally'),
      perCourt: 4,
      shots: [
        { role: 0, stroke: 'groundstroke', from: { x: 0.5, y: -12 }, to: { x: 5, y: 9 } },
        { role: 1, stroke: 'groundstroke', from: { x: 0.5, y: 12 }, to: { x: 5, y: -9 } },
      ],
    };
    expect(clearLanes(wide)).toEqual([wide, laneOf(wide, 1)]);
  });

  test('are told to be in the way also by a ball that runs on after its bounce', () => {
    const at = (x: number, y: number): Place => ({ x, y });
    const straight = (x: number, strike: Place): Drill => ({
      ...drillNamed('half-court-rally'),
      shots: [
        { role: 0, stroke: 'groundstroke', from: at(x, -12), to: at(x, 9) },
        { role: 1, stroke: 'groundstroke', from: strike, to: at(x, -9) },
      ],
    });
    expect(flightsCross(straight(2, at(2, 12)), straight(-2, at(-2, 12)))).toBe(false);
    expect(flightsCross(straight(2, at(-3, 12)), straight(-2, at(-2, 12)))).toBe(true);
  });

  test('are in the way where their flights only touch, or run along one line', () => {
    const along = (x: number): Drill => ({
      ...drillNamed('volley-to-volley'),
      shots: [{ role: 0, stroke: 'volley', from: { x, y: -3 }, to: { x, y: 3 } }],
    });
    const across: Drill = {
      ...along(0),
      shots: [{ role: 0, stroke: 'volley', from: { x: -2, y: -3 }, to: { x: 0, y: 0 } }],
    };
    expect(flightsCross(along(0), across)).toBe(true);
    expect(flightsCross(along(0), along(0))).toBe(true);
    expect(flightsCross(along(0), along(1))).toBe(false);
  });

  test('are in the way of one another or not whichever is asked first', () => {
    const any = fc.constantFrom(...starterDrills.flatMap(lanesOf));
    fc.assert(
      fc.property(any, any, (one, other) => {
        expect(flightsCross(one, other)).toBe(flightsCross(other, one));
      }),
    );
  });
});

describe('the markers of a court', () => {
  test('are those of its lanes, and one that two lanes share is laid once', () => {
    const lane = drillNamed('half-court-rally');
    expect(courtMarkers([lane])).toEqual(lane.markers.map(({ at }) => at));
    expect(courtMarkers(clearLanes(lane))).toHaveLength(2);
    const volleys = drillNamed('volley-to-volley');
    expect(courtMarkers([volleys])).toHaveLength(2);
    expect(courtMarkers(clearLanes(volleys))).toHaveLength(4);
    expect(courtMarkers([])).toEqual([]);
  });
});
