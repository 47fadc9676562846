/** A name in three parts: what others begin with as well, the letter that tells it apart, and the rest. */
export interface NameParts {
  head: string;
  apart: string;
  rest: string;
}

/** So many letters of a name are read wherever it stands: two short lines of a narrow tile. */
const ALWAYS_READ = 6;

/**
 * Where a name is told from the others, if that lies further on than a narrow place shows. Undefined
 * where its first letters tell it apart, or where another's name only goes on after it.
 *
 * @param others names of everyone else
 */
export function partsOf(name: string, others: readonly string[]): NameParts | undefined {
  const own = [...name];
  const alike = Math.max(
    0,
    ...others.map((other) => {
      const letters = [...other];
      const at = own.findIndex((letter, place) => letter !== letters[place]);
      return at < 0 ? own.length : at;
    }),
  );
  if (alike < ALWAYS_READ || alike >= own.length) return undefined;
  return {
    head: own.slice(0, alike).join(''),
    apart: own[alike] ?? '',
    rest: own.slice(alike + 1).join(''),
  };
}
