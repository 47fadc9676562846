import type { Side } from './sides.ts';

/** What a key does at the court. */
export type Deed = { readonly do: 'count' | 'take-back'; readonly side: Side } | { do: 'clock' };

type KeyPress = Pick<
  KeyboardEvent,
  'key' | 'code' | 'shiftKey' | 'ctrlKey' | 'altKey' | 'metaKey' | 'repeat'
>;

/** As many tiles have a digit. */
const DIGITS = 9;

/** The key that is shown on the tile at this place of the order; undefined where it has none. */
export function keyOf(sides: readonly Side[], side: Side): string | undefined {
  const index = sides.findIndex(
    ({ letter, player }) => letter === side.letter && player === side.player,
  );
  if (index >= 0 && index < DIGITS) return String(index + 1);
  return index >= 0 && side.player === undefined ? side.letter : undefined;
}

/**
 * What a press of a key does where these tiles are shown. Digits count for the tiles in their
 * order; a letter counts for the pair of that letter, but not where its tile is split: it would not
 * say which player struck. Shift takes back. Undefined where the key means nothing here, is held
 * down, or belongs to the phone.
 */
export function deedOf(press: KeyPress, sides: readonly Side[]): Deed | undefined {
  if (press.ctrlKey || press.altKey || press.metaKey || press.repeat) return undefined;
  if (press.key === ' ') return press.shiftKey ? undefined : { do: 'clock' };
  const digit = digitOf(press);
  const side =
    digit === undefined
      ? sides.find(
          ({ letter, player }) => player === undefined && letter === press.key.toUpperCase(),
        )
      : sides[digit - 1];
  return side && { do: press.shiftKey ? 'take-back' : 'count', side };
}

/** By its place on the keyboard: with Shift, and on a French one without it, a digit's key writes a sign. */
function digitOf({ key, code }: KeyPress): number | undefined {
  const digit = /^Digit([1-9])$/.exec(code)?.[1] ?? /^[1-9]$/.exec(key)?.[0];
  return digit === undefined ? undefined : Number(digit);
}
