import { COURT, type CourtSize, courtSizes } from './court.ts';
import type { Place } from './place.ts';

/**
 * Roughly where a place is, as one says it aloud. Left and right are those of whoever stands on the
 * near side (y < 0) and faces the net, for both sides of it: as in a drawing of the court.
 */
export interface Zone<Depth> {
  depth: Depth;
  hand: 'left' | 'centre' | 'right';
  /** Nearer to the singles sideline than to the centre line by far, or outside it. */
  isWide: boolean;
  /** Nearer to the centre line than to the singles sideline by far. */
  isNarrow: boolean;
}

export type StandDepth = 'net' | 'front' | 'service-line' | 'midcourt' | 'baseline' | 'behind';
export type BounceDepth = 'box' | 'midcourt' | 'deep';

/** Metres on the full court within which one is said to be at a line, or in the middle. */
const AT_LINE = 0.8;
const IN_MIDDLE = 0.4;
/** The shares of the half court's width from which on a place is wide, and up to which it is narrow. */
const WIDE = 0.65;
const NARROW = 0.3;

/** Where a player stands, or a ball is taken in the air. */
export function standZone(size: CourtSize, place: Place): Zone<StandDepth> {
  const { serviceLine, length } = courtSizes[size];
  const fromNet = Math.abs(place.y);
  const near = AT_LINE * shareOf(size);
  const depth = (): StandDepth => {
    if (fromNet > length / 2 + AT_LINE) return 'behind';
    if (fromNet >= length / 2 - near) return 'baseline';
    if (fromNet > serviceLine + near) return 'midcourt';
    if (fromNet >= serviceLine - near) return 'service-line';
    return fromNet > 0.6 * serviceLine ? 'front' : 'net';
  };
  return { depth: depth(), ...across(size, place) };
}

/** Where a ball bounces. */
export function bounceZone(size: CourtSize, place: Place): Zone<BounceDepth> {
  const { serviceLine, length } = courtSizes[size];
  const fromNet = Math.abs(place.y);
  const half = (serviceLine + length / 2) / 2;
  const depth = fromNet <= serviceLine ? 'box' : fromNet < half ? 'midcourt' : 'deep';
  return { depth, ...across(size, place) };
}

function across(size: CourtSize, { x }: Place): Omit<Zone<never>, 'depth'> {
  const isMiddle = Math.abs(x) < IN_MIDDLE * shareOf(size);
  const share = Math.abs(x) / (courtSizes[size].singlesWidth / 2);
  return {
    hand: isMiddle ? 'centre' : x < 0 ? 'left' : 'right',
    isWide: share > WIDE,
    isNarrow: share < NARROW,
  };
}

/** How long a court is beside the full one. */
const shareOf = (size: CourtSize): number => courtSizes[size].length / COURT.length;
