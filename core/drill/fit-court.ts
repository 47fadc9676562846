import { COURT, type Court, type CourtSize, courtSizes } from '../court/court.ts';
import type { Place } from '../court/place.ts';
import type { Drill } from './drill.ts';
import { clearLanes } from './lanes.ts';

/**
 * A drill, which is set out for the full court, on a court of another size: a place between two
 * lines keeps its share of the way from one to the other, a place outside the singles court its
 * metres from the line.
 */
export function fitDrill(drill: Drill, size: CourtSize): Drill {
  if (size === 'full') return drill;
  const court = courtSizes[size];
  const fit = ({ x, y }: Place): Place => ({
    x: between(x, [COURT.singlesWidth / 2], [court.singlesWidth / 2]),
    y: between(y, depths(COURT), depths(court)),
  });
  const [first, second] = drill.roles;
  const role = ({ start, recover }: typeof first) => ({ start: fit(start), recover: fit(recover) });
  return {
    ...drill,
    shots: drill.shots.map((shot) => ({
      ...shot,
      ...(shot.from && { from: fit(shot.from) }),
      ...(shot.to && { to: fit(shot.to) }),
    })),
    roles: [role(first), role(second)],
    markers: drill.markers.map((marker) => ({ ...marker, at: fit(marker.at) })),
    ...(drill.target && { target: fitTarget(drill.target, fit) }),
  };
}

/**
 * The drill in each lane of a court of this size in which a pair can play. A smaller court takes
 * one pair: two would swing too near to each other.
 */
export const lanesOn = (drill: Drill, size: CourtSize): Drill[] =>
  size === 'full' ? clearLanes(drill) : [fitDrill(drill, size)];

function fitTarget(
  target: NonNullable<Drill['target']>,
  fit: (place: Place) => Place,
): NonNullable<Drill['target']> {
  const { x, y, width, length } = target;
  const low = fit({ x: x - width / 2, y: y - length / 2 });
  const high = fit({ x: x + width / 2, y: y + length / 2 });
  return {
    x: (low.x + high.x) / 2,
    y: (low.y + high.y) / 2,
    width: high.x - low.x,
    length: high.y - low.y,
  };
}

const depths = ({ serviceLine, length }: Court): number[] => [serviceLine, length / 2];

/** A distance with its sign, moved from lines at these distances to lines at those. */
function between(value: number, from: readonly number[], to: readonly number[]): number {
  const distance = Math.abs(value);
  const next = from.findIndex((line) => distance <= line);
  const [low, high] = [from[next - 1] ?? 0, from[next]];
  const moved =
    high === undefined
      ? distance - from.at(-1)! + to.at(-1)!
      : (to[next - 1] ?? 0) + ((distance - low) / (high - low)) * (to[next]! - (to[next - 1] ?? 0));
  return value < 0 ? 0 - moved : moved;
}
