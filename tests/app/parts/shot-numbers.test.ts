import { describe, expect, test } from 'vitest';
import { scaledDrill } from '../../../app/parts/scaled-drill.ts';
import { shotNumbers } from '../../../app/parts/shot-numbers.ts';
import { courtSizeNames } from '../../../core/court/court.ts';
import type { Place } from '../../../core/court/place.ts';
import { type Drill, flight } from '../../../core/drill/drill.ts';
import { lanesOn } from '../../../core/drill/fit-court.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';
import { check } from '../../reference/values.ts';

/** Every court is drawn as long as the full one: ITF rules. */
const FULL = 2 * check('I.derived.baseline_to_net').expected.metres_exact;
const lengths = { small: 36 * 0.3048, middle: 60 * 0.3048, full: FULL };

/**
 * What is drawn, in metres of the drawing, by court-drawing.tsx and its styles: a digit of 1.15 is at
 * most 0.65 wide and 0.85 high, with an outline of 0.17 round it; a start mark is 0.85 round its
 * middle, a ring 0.84 with its stroke, a marker 0.6. A browser measures the letters itself in
 * tests/browser/drill-card.test.ts.
 */
const DIGIT = { width: 0.65, height: 0.85 };
const DIAGONAL = Math.hypot(DIGIT.width, DIGIT.height) / 2;
const SOLID = { start: 0.85, ring: 0.84, marker: 0.6 };

const away = (a: Place, b: Place) => Math.hypot(a.x - b.x, a.y - b.y);
/** By small steps along the flight, so that the test shares no formula with what it tests. */
function awayFromFlight(place: Place, { from, to }: { from: Place; to: Place }): number {
  const shares = Array.from({ length: 501 }, (_, n) => n / 500);
  return Math.min(
    ...shares.map((share) =>
      away(place, {
        x: from.x + share * (to.x - from.x),
        y: from.y + share * (to.y - from.y),
      }),
    ),
  );
}

const drawn = starterDrills.flatMap((drill) =>
  courtSizeNames.map((size) => {
    const lanes = lanesOn(drill, size).map((lane) => scaledDrill(lane, FULL / lengths[size]));
    return [drill.id, size, lanes[0]!, lanes.slice(1)] as const;
  }),
);
const each = test.each(drawn);

describe('the number of a shot', () => {
  each('of %s on the %s court stands at the start of its own flight', (_, _size, drill, others) => {
    const numbers = shotNumbers(drill, others);
    expect(numbers).toHaveLength(drill.shots.length);
    for (const [index, at] of numbers.entries()) {
      const { from, to } = flight(drill, drill.shots[index]!);
      expect(away(at, from), `shot ${index + 1}`).toBeLessThan(away(at, to));
      expect(away(at, from), `shot ${index + 1}`).toBeLessThan(away(from, to) / 2);
    }
  });

  each('of %s on the %s court lies on no flight, and none is nearer than its own', (...at) => {
    const [, , drill, others] = at;
    const flightsOf = (one: Pick<Drill, 'shots' | 'roles'>) =>
      one.shots.map((shot) => flight(one, shot));
    const own = flightsOf(drill);
    for (const [index, place] of shotNumbers(drill, others).entries()) {
      const mine = awayFromFlight(place, own[index]!);
      expect(mine).toBeGreaterThan(DIAGONAL);
      for (const other of [...own.toSpliced(index, 1), ...others.flatMap(flightsOf)]) {
        expect(awayFromFlight(place, other), `shot ${index + 1}`).toBeGreaterThan(mine - 0.01);
      }
    }
  });

  each('of %s on the %s court lies on no other number, mark, ring or marker', (...at) => {
    const [, , drill, others] = at;
    const numbers = shotNumbers(drill, others);
    for (const [index, place] of numbers.entries()) {
      for (const other of numbers.slice(index + 1)) {
        expect(away(place, other)).toBeGreaterThan(2 * DIAGONAL);
      }
      for (const { roles, markers } of [drill, ...others]) {
        for (const { start, recover } of roles) {
          expect(away(place, start)).toBeGreaterThan(SOLID.start + DIAGONAL);
          expect(away(place, recover)).toBeGreaterThan(SOLID.ring + DIAGONAL);
        }
        for (const marker of markers) {
          expect(away(place, marker.at)).toBeGreaterThan(SOLID.marker + DIAGONAL);
        }
      }
    }
  });

  test('has a place of its own also in a drill that is too crowded for room', () => {
    const drill: Drill = {
      ...starterDrills[0]!,
      rule: 'sequence',
      size: 12,
      shots: Array.from({ length: 12 }, (_, n) => ({
        role: n % 2 === 0 ? 0 : 1,
        stroke: 'volley',
      })),
    };
    const numbers = shotNumbers(drill);
    expect(new Set(numbers.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`)).size).toBe(12);
  });
});
