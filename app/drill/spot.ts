import type { Side } from '../../core/court/court.ts';
import type { Place } from '../../core/court/place.ts';

/** Metres as they are typed: the text while it stands, and the last number that it gave. */
export interface Metres {
  value: number;
  text?: string;
}

/** A place as a player says it who stands there and faces the net. */
export interface Spot {
  side: Side;
  net: Metres;
  hand: 'left' | 'right';
  centre: Metres;
}

/** Places are put in steps of this, in metres: no foot stands more exactly. */
const STEP = 0.1;

/** To the nearest tenth of a metre. */
export const snap = (metres: number) => Math.round(metres / STEP) / 10;

/** `by` steps of 0.1 m more, from the nearest tenth, and not below 0. */
export const stepped = ({ value }: Metres, by: number): Metres => ({
  value: Math.max(0, snap(value + by * STEP)),
});

/** What was typed, with a point or a comma; the number before it where it is none. */
export function typed(before: Metres, text: string): Metres {
  return { value: isMetres(text) ? Number(text.trim().replace(',', '.')) : before.value, text };
}

const isMetres = (text: string) => /^\s*(\d+([.,]\d*)?|[.,]\d+)\s*$/.test(text);

/** Whether what was typed is no number of metres. */
export const isUnread = ({ text }: Metres) => text !== undefined && !isMetres(text);

/** A place in a player's own terms; `side` is asked for only of a place on the net line. */
export function spotOf({ x, y }: Place, side: Side = 'near'): Spot {
  const on = y > 0 ? 'far' : y < 0 ? 'near' : side;
  return {
    side: on,
    net: { value: Math.abs(y) },
    hand: (on === 'far' ? -x : x) < 0 ? 'left' : 'right',
    centre: { value: Math.abs(x) },
  };
}

export function placeOf({ side, net, hand, centre }: Spot): Place {
  const isRight = (hand === 'right') === (side === 'near');
  // 0 − 0 is 0, where −0 would be another number.
  return {
    x: isRight ? centre.value : 0 - centre.value,
    y: side === 'far' ? net.value : 0 - net.value,
  };
}
