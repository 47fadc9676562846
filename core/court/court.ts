import type { Place } from './place.ts';

/**
 * The court in metres. (0, 0) is on the ground under the middle of the net; x runs along the net,
 * positive to the right of a player on the near side who faces it; y is positive on the far side
 * and negative on the near side. Distances are to the outside of the lines, the centre line's to
 * its middle, as the rules measure them.
 */

/** One foot in metres, exactly (international foot of 1959). */
const FOOT = 0.3048;

/** Lengths of one court, all in metres. */
export interface Court {
  length: number;
  singlesWidth: number;
  /** Left out where the court has no lines for doubles. */
  doublesWidth?: number;
  /** From the net to each service line. */
  serviceLine: number;
  netWidth: number;
  netHeightCentre: number;
  netHeightPosts: number;
}

/**
 * The full court: ITF Rules of Tennis, Rule 1, from the figures in feet, which are exact. The
 * metres that the rules print beside them are rounded. The posts stand 3 ft outside the doubles
 * lines, and the net fills the space between.
 */
export const COURT = {
  length: 78 * FOOT,
  singlesWidth: 27 * FOOT,
  doublesWidth: 36 * FOOT,
  serviceLine: 21 * FOOT,
  netWidth: 42 * FOOT,
  netHeightCentre: 3 * FOOT,
  netHeightPosts: 3.5 * FOOT,
} as const satisfies Court;

export const courtSizeNames = ['small', 'middle', 'full'] as const;
export type CourtSize = (typeof courtSizeNames)[number];

/**
 * The courts that children grow through. For the two smaller ones the ITF gives ranges; these are
 * values from inside them, not the only right ones:
 *
 * - small, for the red ball (36 to 42 ft by 14 to 20 ft, net 31.5 to 33 in at the centre): 36 by
 *   18 ft with a level net of 0.8 m as wide as the court. The service line 4 m from the net is from
 *   a sports shop's guide to setting such a court out; no federation's figure was found.
 * - middle, for the orange ball (58 to 60 ft by 20 to 27 ft, net 31.5 to 36 in): 60 by 21 ft on the
 *   full court's net and with the full court's service line, since it is mostly chalked onto one;
 *   that choice is ours.
 *
 * The ranges: ITF, page on smaller courts for players aged 10 and under.
 */
export const courtSizes: Readonly<Record<CourtSize, Court>> = {
  small: {
    length: 36 * FOOT,
    singlesWidth: 18 * FOOT,
    serviceLine: 4,
    netWidth: 18 * FOOT,
    netHeightCentre: 0.8,
    netHeightPosts: 0.8,
  },
  middle: {
    length: 60 * FOOT,
    singlesWidth: 21 * FOOT,
    serviceLine: COURT.serviceLine,
    netWidth: COURT.netWidth,
    netHeightCentre: COURT.netHeightCentre,
    netHeightPosts: COURT.netHeightPosts,
  },
  full: COURT,
};

export type LineKind =
  | 'net'
  | 'baseline'
  | 'singles-sideline'
  | 'doubles-sideline'
  | 'service-line'
  | 'centre-line'
  | 'centre-mark';

/** A straight line on the ground from one end [x, y] to the other, in metres. */
export interface Line {
  kind: LineKind;
  ends: readonly [readonly [number, number], readonly [number, number]];
}

/** Length of the centre mark, which points into the court from the baseline: 4 in (Rule 1). */
const CENTRE_MARK = FOOT / 3;

/** Every painted line of a court, and the net, for drawing. */
export function lines(size: CourtSize): Line[] {
  const court = courtSizes[size];
  const end = court.length / 2;
  const side = court.singlesWidth / 2;
  const outer = outerWidth(court) / 2;
  const drawn: Line[] = [
    { kind: 'net', ends: along(court.netWidth / 2, 0) },
    { kind: 'centre-line', ends: away(0, -court.serviceLine, court.serviceLine) },
  ];
  for (const sign of [-1, 1]) {
    drawn.push(
      { kind: 'baseline', ends: along(outer, sign * end) },
      { kind: 'service-line', ends: along(side, sign * court.serviceLine) },
      { kind: 'centre-mark', ends: away(0, sign * end, sign * (end - CENTRE_MARK)) },
      { kind: 'singles-sideline', ends: away(sign * side, -end, end) },
    );
    if (court.doublesWidth !== undefined) {
      drawn.push({ kind: 'doubles-sideline', ends: away(sign * outer, -end, end) });
    }
  }
  return drawn;
}

export type Side = 'near' | 'far';

/**
 * Whether a place is inside the outermost lines (a line is inside, as for a ball), or not more than
 * `runoff` metres outside them.
 *
 * @throws RangeError for a place or runoff that is not finite, or a negative runoff.
 */
export function isInside(size: CourtSize, point: Place, runoff = 0): boolean {
  if (!(runoff >= 0 && Number.isFinite(runoff))) {
    throw new RangeError(`runoff must be metres from 0 up, not ${runoff}`);
  }
  const { x, y } = checked(point);
  const court = courtSizes[size];
  return Math.abs(x) <= outerWidth(court) / 2 + runoff && Math.abs(y) <= court.length / 2 + runoff;
}

/** Between which two lines something lies, counted away from the net or from the centre. */
export interface Between<Kind> {
  /** The last line before it, and how many metres it lies beyond that (0: on the line). */
  past: Kind;
  by: number;
  /** The next line and the metres left to it, and the share of the way done, 0 to 1. */
  next?: { line: Kind; in: number; share: number };
}

type Depth = 'net' | 'service-line' | 'baseline';
type Breadth = 'centre-line' | 'singles-sideline' | 'doubles-sideline';

/** Where a place is, in what can be paced out or said: metres from lines and shares between them. */
export interface Whereabouts {
  side: Side | 'net';
  fromNet: number;
  depth: Between<Depth>;
  /** As a player on that side sees it who faces the net; on the net line as the near player does. */
  hand: 'left' | 'centre' | 'right';
  fromCentre: number;
  breadth: Between<Breadth>;
}

/**
 * Where a place is on a court. Behind the baseline and outside the sidelines there is no next line.
 *
 * @throws RangeError for a place that is not finite.
 */
export function describe(size: CourtSize, point: Place): Whereabouts {
  const { x, y } = checked(point);
  const court = courtSizes[size];
  const right = y > 0 ? -x : x;
  const breadths: [Breadth, number][] = [
    ['centre-line', 0],
    ['singles-sideline', court.singlesWidth / 2],
  ];
  if (court.doublesWidth !== undefined) breadths.push(['doubles-sideline', court.doublesWidth / 2]);
  return {
    side: y > 0 ? 'far' : y < 0 ? 'near' : 'net',
    fromNet: Math.abs(y),
    depth: between(
      Math.abs(y),
      depths.map((line) => [line, depthOf(court, line)]),
    ),
    hand: right > 0 ? 'right' : right < 0 ? 'left' : 'centre',
    fromCentre: Math.abs(x),
    breadth: between(Math.abs(x), breadths),
  };
}

/**
 * Metres in feet, for coaches who pace in feet.
 *
 * @throws RangeError for a length that is not finite.
 */
export function toFeet(metres: number): number {
  if (!Number.isFinite(metres)) throw new RangeError(`metres must be finite, not ${metres}`);
  return metres / FOOT;
}

const depths = ['net', 'service-line', 'baseline'] as const;

function depthOf(court: Court, line: Depth): number {
  if (line === 'net') return 0;
  return line === 'service-line' ? court.serviceLine : court.length / 2;
}

function between<Kind>(distance: number, all: readonly (readonly [Kind, number])[]): Between<Kind> {
  const index = all.findLastIndex(([, at]) => at <= distance);
  const [past, from] = all[index]!;
  const next = all[index + 1];
  if (!next) return { past, by: distance - from };
  const [line, to] = next;
  const share = (distance - from) / (to - from);
  return { past, by: distance - from, next: { line, in: to - distance, share } };
}

const outerWidth = (court: Court) => court.doublesWidth ?? court.singlesWidth;

const along = (half: number, y: number): Line['ends'] => [
  [-half, y],
  [half, y],
];

const away = (x: number, from: number, to: number): Line['ends'] => [
  [x, from],
  [x, to],
];

/** The point itself without the -0 that mirroring can leave, which is no other place. */
function checked({ x, y }: Place): Place {
  if (!Number.isFinite(x)) throw new RangeError(`x must be finite, not ${x}`);
  if (!Number.isFinite(y)) throw new RangeError(`y must be finite, not ${y}`);
  return { x: x + 0, y: y + 0 };
}
