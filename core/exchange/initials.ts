import { VISIBLE } from '../ledger/squad.ts';

/**
 * Short names for a table that leaves names out: the first letter of a name, or where another
 * player of the squad has it already that letter and a number from 2. No two are the same, whatever
 * the case and the accents; none is the whole name of anybody; and whoever joins the squad later
 * changes nobody's. A name of one letter has no initial that is not all of it: it gets a number alone.
 *
 * @param names the players' names by id, in the order in which the players joined
 */
export function initials(names: ReadonlyMap<string, string>): Map<string, string> {
  const used = new Set([...names.values()].map(folded));
  return new Map(
    [...names].map(([id, name]) => {
      const [first = '', ...more] = lettersOf(name);
      const taken = (short: string) =>
        used.has(folded(short)) || folded(short).includes(folded(name));
      let number = 1;
      const short = () =>
        more.length === 0 ? `${number}` : number === 1 ? first : `${first}${number}`;
      while (taken(short())) number += 1;
      used.add(folded(short()));
      return [id, short()];
    }),
  );
}

/**
 * What a reader sees as one letter: a character with its accents and vowel signs, a flag, an emoji
 * with its tone or one that is joined of several. Written out, since Intl.Segmenter is missing from
 * browsers that the app serves.
 */
const LETTER = /(?:\p{RI}{2}|.)(?:\p{M}|\p{Emoji_Modifier}|[\u{E0020}-\u{E007F}]|\u200D.)*/gsu;

/** The letters of a name that can be seen. */
const lettersOf = (name: string): string[] =>
  (name.normalize('NFC').match(LETTER) ?? []).filter((letter) => VISIBLE.test(letter));

/** What two short names must not share: the same letters, whatever their case and their accents. */
function folded(text: string): string {
  const letters = text.trim().normalize('NFKD');
  return (letters.replace(/\p{M}/gu, '') || letters).toUpperCase().toLowerCase();
}
