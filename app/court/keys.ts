import type { Place } from './places.ts';

/** What a key does at the court. */
export type Deed = { readonly do: 'count' | 'take-back'; readonly place: Place } | { do: 'clock' };

type Stroke = Pick<
  KeyboardEvent,
  'key' | 'code' | 'shiftKey' | 'ctrlKey' | 'altKey' | 'metaKey' | 'repeat'
>;

/** As many tiles have a digit. */
const DIGITS = 9;

/** The key that is shown on the tile at this place of the order; undefined where it has none. */
export function keyOf(places: readonly Place[], place: Place): string | undefined {
  const index = places.findIndex(
    ({ letter, player }) => letter === place.letter && player === place.player,
  );
  if (index >= 0 && index < DIGITS) return String(index + 1);
  return index >= 0 && place.player === undefined ? place.letter : undefined;
}

/**
 * What a stroke of a key does where these tiles are shown. Digits count for the tiles in their
 * order; a letter counts for the pair of that letter, but not where its tile is split: it would not
 * say which player struck. Shift takes back. Undefined where the key means nothing here, is held
 * down, or belongs to the phone.
 */
export function deedOf(stroke: Stroke, places: readonly Place[]): Deed | undefined {
  if (stroke.ctrlKey || stroke.altKey || stroke.metaKey || stroke.repeat) return undefined;
  if (stroke.key === ' ') return stroke.shiftKey ? undefined : { do: 'clock' };
  const digit = digitOf(stroke);
  const place =
    digit === undefined
      ? places.find(
          ({ letter, player }) => player === undefined && letter === stroke.key.toUpperCase(),
        )
      : places[digit - 1];
  return place && { do: stroke.shiftKey ? 'take-back' : 'count', place };
}

/** By its place on the keyboard: with Shift, and on a French one without it, a digit's key writes a sign. */
function digitOf({ key, code }: Stroke): number | undefined {
  const digit = /^Digit([1-9])$/.exec(code)?.[1] ?? /^[1-9]$/.exec(key)?.[0];
  return digit === undefined ? undefined : Number(digit);
}
