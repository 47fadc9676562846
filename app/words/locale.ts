/** What a language is written like where the phone names no country for it: British, as the words are. */
const USUAL: Readonly<Record<string, string>> = { en: 'en-GB' };

/**
 * The locale for dates, numbers and lists: a language of the app with the country that the phone has
 * beside that language ("en-US"), without whatever else the phone's setting says.
 *
 * @param phone the phone's languages, most wanted first
 */
export function localeOf(language: string, phone: readonly string[]): string {
  for (const tag of phone) {
    const own = read(tag);
    if (own?.language === language && own.region) return `${language}-${own.region}`;
  }
  return USUAL[language] ?? language;
}

/** Some phones give tags that are none. */
function read(tag: string): Intl.Locale | undefined {
  try {
    return new Intl.Locale(tag);
  } catch {
    return undefined;
  }
}
