import { type Between, describe } from '../../core/court.ts';
import type { Place } from '../../core/drill.ts';
import { nearerLine } from '../../core/nearer-line.ts';
import { words } from '../words/words.ts';

/** Metres that a tape measure at the court cannot tell from none. */
const NOTHING = 0.005;

/** Where a place is, in words to set it out by: from the net, the centre and the nearest lines. */
export function whereabouts(place: Place): string {
  const t = words.value.drill.place;
  const { side, fromNet, depth, hand, fromCentre, breadth } = describe('full', place);
  const isMiddle = hand === 'centre' || fromCentre < NOTHING;
  return [
    t.side[side],
    side === 'net' ? undefined : t.fromNet(fromNet),
    fromLine(depth),
    isMiddle ? t.inTheMiddle : t.hand[hand](fromCentre),
    fromLine(breadth),
  ]
    .filter((part) => part !== undefined)
    .join(', ');
}

type Line = keyof typeof words.value.drill.place.on;

/** From the nearer line, where that is not the net or the centre line, which is told anyway. */
function fromLine(between: Between<Line | 'net' | 'centre-line'>): string | undefined {
  const t = words.value.drill.place;
  const { line, beyond } = nearerLine(between);
  if (line === 'net' || line === 'centre-line') return undefined;
  if (Math.abs(beyond) < NOTHING) return t.on[line];
  return beyond > 0 ? t.beyond[line](beyond) : t.short[line](-beyond);
}
