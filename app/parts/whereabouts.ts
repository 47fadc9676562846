import { type Between, type CourtSize, describe, toFeet } from '../../core/court/court.ts';
import { nearerLine } from '../../core/court/nearer-line.ts';
import type { Place } from '../../core/court/place.ts';
import { squadSettings } from '../ledger.ts';
import { cardWords } from '../words/card-words.ts';
import { words } from '../words/words.ts';

/** Metres that a tape measure at the court cannot tell from none. */
const NOTHING = 0.005;

/** A share of the way between two lines that the eye takes for the half of it. */
const HALF = { least: 0.48, most: 0.52 };

/** A length in the squad's units. */
export const lengthOf = (metres: number): string =>
  squadSettings.value.units === 'feet'
    ? words.value.lengths.feet(toFeet(metres))
    : words.value.lengths.metres(metres);

/** Where a place is, in words to set it out by: from the net, the centre and the nearest lines. */
export function whereabouts(place: Place, size: CourtSize): string {
  const t = cardWords.value.place;
  const { side, fromNet, depth, hand, fromCentre, breadth } = describe(size, place);
  const isMiddle = hand === 'centre' || fromCentre < NOTHING;
  return [
    t.side[side],
    side === 'net' ? undefined : t.fromNet(lengthOf(fromNet)),
    halfWay(depth) ?? fromLine(depth),
    isMiddle ? t.inTheMiddle : t.hand[hand](lengthOf(fromCentre)),
    fromLine(breadth),
  ]
    .filter((part) => part !== undefined)
    .join(', ');
}

function halfWay({ next }: Between<Line | 'net'>): string | undefined {
  const t: Partial<Record<string, string>> = cardWords.value.place.halfWay;
  if (!next || next.share < HALF.least || next.share > HALF.most) return undefined;
  return t[next.line];
}

type Line = keyof typeof cardWords.value.place.on;

/** From the nearer line, where that is not the net or the centre line, which is told anyway. */
function fromLine(between: Between<Line | 'net' | 'centre-line'>): string | undefined {
  const t = cardWords.value.place;
  const { line, beyond } = nearerLine(between);
  if (line === 'net' || line === 'centre-line') return undefined;
  if (Math.abs(beyond) < NOTHING) return t.on[line];
  const far = lengthOf(Math.abs(beyond));
  return beyond > 0 ? t.beyond[line](far) : t.short[line](far);
}
