/*
 * Spain plays on a pista and answers a serve with a resto where Latin America has a cancha and a
 * devolución. Cancha and pista have the same gender, devolución and resto have not.
 */
const SAID: readonly (readonly [RegExp, string])[] = [
  [/\bcancha/g, 'pista'],
  [/\bCancha/g, 'Pista'],
  [/\bla devolución profunda/g, 'el resto profundo'],
  [/\b(a|de) la devolución\b/g, '$1l resto'],
  [/\bla devolución\b/g, 'el resto'],
  [/\bLa devolución\b/g, 'El resto'],
  [/\bdevoluciones\b/g, 'restos'],
  [/\bdevolución\b/g, 'resto'],
  [/\bDevolución\b/g, 'Resto'],
];

/** A text in the Spanish of any country, as it is said in Spain. */
export const inSpain = (text: string): string =>
  SAID.reduce((said, [there, here]) => said.replace(there, here), text);

/** The same words, each text of them said in another way. */
export function saidBy<T>(say: (text: string) => string, words: T): T {
  const over = (value: unknown): unknown => {
    if (typeof value === 'string') return say(value);
    if (typeof value === 'function') return (...given: unknown[]) => over(value(...given));
    if (Array.isArray(value)) return value.map(over);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, over(each)]));
  };
  return over(words) as T;
}
