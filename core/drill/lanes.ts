import { COURT } from '../court/court.ts';
import type { Place } from '../court/place.ts';
import { ruleMeanings } from './counting-rules.ts';
import { type Drill, flight } from './drill.ts';

/**
 * The drill as the pair in a lane of a court plays it. What a drill says is its first lane, number
 * 0. Of three, this is the middle one, a third of the doubles court wide: lane 1 is its mirror image
 * to the right, lane 2 the same as it to the left. Of any other number it is on the side of x > 0, lane 1
 * mirrors it (−x), and lanes 2 and 3 are these moved out by a quarter of the doubles court. Words,
 * strokes and depths stay as they are.
 *
 * @param lane a whole number from 0, below `drill.perCourt`
 * @throws RangeError for a lane that the drill does not have
 */
export function laneOf(drill: Drill, lane: number): Drill {
  if (!(Number.isInteger(lane) && lane >= 0 && lane < drill.perCourt)) {
    throw new RangeError(
      `lane must be a whole number from 0 to ${drill.perCourt - 1}, not ${lane}`,
    );
  }
  if (lane === 0) return drill;
  const move = <P extends Place>(place: P): P => ({
    ...place,
    x: drill.perCourt === 3 ? ofThree(place.x, lane) : ofHalves(place.x, lane),
  });
  const [first, second] = drill.roles;
  const role = ({ start, recover }: typeof first) => ({
    start: move(start),
    recover: move(recover),
  });
  return {
    ...drill,
    shots: drill.shots.map((shot) => ({
      ...shot,
      ...(shot.from && { from: move(shot.from) }),
      ...(shot.to && { to: move(shot.to) }),
    })),
    roles: [role(first), role(second)],
    markers: drill.markers.map((marker) => ({ ...marker, at: move(marker.at) })),
    ...(drill.target && { target: move(drill.target) }),
  };
}

const ofThree = (x: number, lane: number): number =>
  lane === 1 ? COURT.doublesWidth / 3 - x : x - COURT.doublesWidth / 3;

function ofHalves(x: number, lane: number): number {
  const out = x + (lane >= 2 ? COURT.doublesWidth / 4 : 0);
  return lane % 2 === 0 ? out : 0 - out;
}

/**
 * The drill in each lane in which a pair can play beside the others: as many as it says a court
 * takes, or fewer, so that nobody's ball crosses another pair's. The first lane is always there.
 */
export function clearLanes(drill: Drill): Drill[] {
  const lanes: Drill[] = [];
  for (let lane = 0; lane < drill.perCourt; lane += 1) {
    const next = laneOf(drill, lane);
    if (lanes.some((other) => flightsCross(next, other))) break;
    lanes.push(next);
  }
  return lanes;
}

/** Where the markers of these lanes of one court lie; one that two lanes share is laid once. */
export function courtMarkers(lanes: readonly Drill[]): Place[] {
  const places: Place[] = [];
  for (const { at } of lanes.flatMap(({ markers }) => markers)) {
    if (!places.some((place) => isSame(place, at))) places.push(at);
  }
  return places;
}

/** A marker that would be moved by less than a hand's breadth, along the net or across it, stays. */
const HAND = 0.1;
export const isSame = (a: Place, b: Place): boolean =>
  Math.abs(a.x - b.x) < HAND && Math.abs(a.y - b.y) < HAND;

/** Whether a ball of one drill crosses, or touches, the path of a ball of the other on the ground. */
export const flightsCross = (one: Drill, other: Drill): boolean =>
  paths(one).some((mine) => paths(other).some((theirs) => meet(mine, theirs)));

interface Path {
  from: Place;
  to: Place;
}

/** The ball's ways over the ground: each flight, and on from the bounce to where it is struck next. */
function paths(drill: Drill): Path[] {
  const flights = drill.shots.map((shot) => ({ ...flight(drill, shot), stroke: shot.stroke }));
  return flights.flatMap(({ from, to }, at) => {
    const next =
      flights[at + 1] ?? (ruleMeanings[drill.rule].size === 'pattern' ? undefined : flights[0]);
    // A serve is a new ball.
    return !next || next.stroke === 'serve'
      ? [{ from, to }]
      : [
          { from, to },
          { from: to, to: next.from },
        ];
  });
}

/** Whether two straight ways have a point in common. */
function meet(a: Path, b: Path): boolean {
  const sides = [side(a, b.from), side(a, b.to), side(b, a.from), side(b, a.to)] as const;
  if (sides[0] !== sides[1] && sides[2] !== sides[3]) return true;
  return (
    (sides[0] === 0 && spans(a, b.from)) ||
    (sides[1] === 0 && spans(a, b.to)) ||
    (sides[2] === 0 && spans(b, a.from)) ||
    (sides[3] === 0 && spans(b, a.to))
  );
}

/** On which side of a way, seen along it, a place lies: 0 where it lies on its line. */
const side = ({ from, to }: Path, { x, y }: Place): number =>
  Math.sign((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x));

/** Whether a place on the line of a way lies on the way itself. */
const spans = ({ from, to }: Path, { x, y }: Place): boolean =>
  Math.min(from.x, to.x) <= x &&
  x <= Math.max(from.x, to.x) &&
  Math.min(from.y, to.y) <= y &&
  y <= Math.max(from.y, to.y);
