import type { Place } from '../../core/court/place.ts';
import { type Drill, flight } from '../../core/drill/drill.ts';

type Drawn = Pick<Drill, 'shots' | 'roles' | 'markers'>;

/*
 * All in metres of the drawing, which shows every court as long as the full one: see court-drawing.css
 * for the sizes of the letters.
 */

/** Between a ball's path and the middle of its number: to the right, to the left, and closer. */
const ASIDES = [0.85, -0.85, 0.65, -0.65];
/** Half of a number's height and of its diagonal, by its digits. */
const radiusOf = (index: number): number => (index < 9 ? 0.6 : 0.85);
/** What a number keeps clear of, round their middles: start marks, rings and markers. */
const START = 0.85;
const RING = 0.85;
const MARKER = 0.65;
/** Where the first place is tried, along the flight from where it is struck; and from one to the next. */
const FIRST = -0.6;
const STEP = 0.1;

/**
 * Where the numbers of a drill's shots stand: beside the start of each flight, to the right of the
 * ball on its way where there is room, and so that no other flight is nearer, nor any number, start
 * mark, ring or marker under it. Where a drill is too crowded for that, where there is most room.
 *
 * @param others what other lanes of the same drawing show
 */
export function shotNumbers(drill: Drawn, others: readonly Drawn[] = []): Place[] {
  const own = drill.shots.map((shot) => flight(drill, shot));
  const ways = [...own, ...others.flatMap((other) => other.shots.map((s) => flight(other, s)))];
  const taken = [drill, ...others].flatMap(({ roles, markers }) => [
    ...roles.flatMap(({ start, recover }) => [
      { at: start, radius: START },
      { at: recover, radius: RING },
    ]),
    ...markers.map(({ at }) => ({ at, radius: MARKER })),
  ]);
  return own.map((way, index) => {
    const radius = radiusOf(index);
    const roomAt = (place: Place): number =>
      Math.min(
        ...ways
          .filter((other) => other !== way)
          .map((other) => awayFrom(place, other) - awayFrom(place, way)),
        ...taken.map(({ at, radius: its }) => between(place, at) - its - radius),
      );
    const places = beside(way);
    const rooms = places.map(roomAt);
    const free = rooms.findIndex((room) => room > -1e-9);
    const at = places[free < 0 ? rooms.indexOf(Math.max(...rooms)) : free] ?? way.from;
    taken.push({ at, radius });
    return at;
  });
}

/** The places beside a flight, from just behind its start on. */
function beside({ from, to }: { from: Place; to: Place }): Place[] {
  const far = between(from, to) || 1;
  const [dx, dy] = [(to.x - from.x) / far, (to.y - from.y) / far];
  const steps = Math.floor((far - FIRST) / STEP);
  return Array.from({ length: steps }, (_, step) => FIRST + step * STEP).flatMap((along) =>
    ASIDES.map((aside) => ({
      x: from.x + along * dx + aside * dy,
      y: from.y + along * dy - aside * dx,
    })),
  );
}

const between = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);

/** From a place to the nearest point of a flight. */
function awayFrom(place: Place, { from, to }: { from: Place; to: Place }): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = ((place.x - from.x) * dx + (place.y - from.y) * dy) / (dx * dx + dy * dy || 1);
  const nearest = Math.min(1, Math.max(0, share));
  return between(place, { x: from.x + nearest * dx, y: from.y + nearest * dy });
}
