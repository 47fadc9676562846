/** The languages of the app, as they are called in codes. */
export const spoken = ['en', 'fr', 'es'] as const;
export type Spoken = (typeof spoken)[number];

/**
 * The first of a phone's languages that the app speaks, whatever its country: "fr-CA" is "fr".
 * English where there is none.
 */
export function spokenOf(phone: readonly string[]): Spoken {
  const codes = phone.map((tag) => tag.split('-')[0]?.toLowerCase());
  for (const code of codes) {
    const found = spoken.find((each) => each === code);
    if (found) return found;
  }
  return 'en';
}
