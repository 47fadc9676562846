import { describe, expect, test } from 'vitest';
import { COURT, type CourtSize, courtSizes, isInside } from '../../../core/court/court.ts';
import { Drill, flight, RUN_OFF, targetOf } from '../../../core/drill/drill.ts';
import { fitDrill, lanesOn } from '../../../core/drill/fit-court.ts';
import { clearLanes } from '../../../core/drill/lanes.ts';
import { starterDrills } from '../../../core/drill/starter-drills.ts';

const smaller = ['small', 'middle'] as const satisfies CourtSize[];
const drillOf = (id: string) => starterDrills.find((drill) => drill.id === id)!;

describe('a drill on a court of another size', () => {
  test('is as it was on the full court', () => {
    for (const drill of starterDrills) expect(fitDrill(drill, 'full')).toBe(drill);
  });

  test.each(smaller)('of size %s has every place inside the court or its run-off', (size) => {
    for (const drill of starterDrills) {
      const fitted = fitDrill(drill, size);
      expect(Drill.safeParse(fitted).success, drill.id).toBe(true);
      const places = [
        ...fitted.roles.flatMap(({ start, recover }) => [start, recover]),
        ...fitted.markers.map(({ at }) => at),
        ...fitted.shots.flatMap((shot) => Object.values(flight(fitted, shot))),
      ];
      for (const place of places) {
        expect(isInside(size, place, RUN_OFF), `${drill.id} ${place.x} ${place.y}`).toBe(true);
      }
    }
  });

  test.each(smaller)('of size %s has every target inside its lines', (size) => {
    for (const drill of starterDrills) {
      const fitted = fitDrill(drill, size);
      for (const role of [0, 1] as const) {
        const target = targetOf(fitted, role);
        if (!target) continue;
        for (const sign of [-1, 1]) {
          const corner = {
            x: target.x + (sign * target.width) / 2,
            y: target.y + (sign * target.length) / 2,
          };
          expect(Math.abs(corner.x)).toBeLessThanOrEqual(courtSizes[size].singlesWidth / 2 + 1e-9);
          expect(isInside(size, corner, 1e-9)).toBe(true);
        }
      }
    }
  });

  test('keeps a place on the line it was on, and half way where it was half way', () => {
    const drill = drillOf('half-court-rally');
    const { serviceLine, length, singlesWidth } = COURT;
    const at = (x: number, y: number) => {
      const role = { start: { x, y }, recover: { x, y } };
      return fitDrill({ ...drill, roles: [role, role] }, 'small').roles[0].start;
    };
    const small = courtSizes.small;
    const near = (place: { x: number; y: number }, x: number, y: number) => {
      expect(place.x).toBeCloseTo(x, 9);
      expect(place.y).toBeCloseTo(y, 9);
    };
    near(at(0, 0), 0, 0);
    near(at(singlesWidth / 2, -serviceLine), small.singlesWidth / 2, -small.serviceLine);
    near(at(-singlesWidth / 4, serviceLine / 2), -small.singlesWidth / 4, small.serviceLine / 2);
    near(at(0, -length / 2), 0, -small.length / 2);
    near(at(0, (serviceLine + length / 2) / 2), 0, (small.serviceLine + small.length / 2) / 2);
  });

  test('keeps the metres of a place behind the baseline', () => {
    const [role] = fitDrill(drillOf('half-court-rally'), 'middle').roles;
    expect(-role.recover.y - courtSizes.middle.length / 2).toBeCloseTo(0.5, 9);
  });
});

describe('the lanes of a court', () => {
  test('are those that are clear on the full court', () => {
    for (const drill of starterDrills) expect(lanesOn(drill, 'full')).toEqual(clearLanes(drill));
  });

  test.each(smaller)('of size %s are one', (size) => {
    for (const drill of starterDrills)
      expect(lanesOn(drill, size)).toEqual([fitDrill(drill, size)]);
  });
});
