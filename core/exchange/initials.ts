/** More letters than this would give the name away. */
const MOST_LETTERS = 3;

/**
 * Initials for a table that leaves names out: the fewest letters, up to three, that no other name
 * begins with, case aside; where three do not do, a number after them, in the order given. No two
 * players get the same, and the same names in the same order always get the same.
 *
 * @param names the players' names by id
 */
export function initials(names: ReadonlyMap<string, string>): Map<string, string> {
  const beginnings = new Map<string, number>();
  for (const name of names.values()) {
    for (const key of new Set(startsOf(name).map(folded))) {
      beginnings.set(key, (beginnings.get(key) ?? 0) + 1);
    }
  }
  const alone = (start: string) => beginnings.get(folded(start)) === 1;
  const unique = new Map([...names].map(([id, name]) => [id, startsOf(name).find(alone)] as const));

  const used = new Set([...unique.values()].map((start) => folded(start ?? '')));
  const numbered = (name: string) => {
    const start = startsOf(name).at(-1) ?? '';
    let number = 1;
    while (used.has(folded(`${start}${number}`))) number += 1;
    used.add(folded(`${start}${number}`));
    return `${start}${number}`;
  };
  return new Map([...names].map(([id, name]) => [id, unique.get(id) ?? numbered(name)]));
}

/** The first letter of a name, the first two, the first three. */
function startsOf(name: string): string[] {
  const letters = [...name.trim().normalize('NFC')].slice(0, MOST_LETTERS);
  return letters.map((_, last) => letters.slice(0, last + 1).join(''));
}

const folded = (text: string) => text.normalize('NFKC').toLowerCase();
