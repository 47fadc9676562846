import { computed, effect, signal } from '@preact/signals';
import { prefs } from '../device/prefs.ts';
import type { en } from './en.ts';
import { english, type Language, languages, type Spoken, spokenOf } from './languages.ts';

/** Every text that comes with the app; a language is one file of this type. */
export type Words = typeof en;

/** What the phone speaks; it may change while the app is open. */
const ofPhone = signal<Spoken>('en');

const chosen = computed<Spoken>(() => {
  const { language } = prefs.value;
  return language === 'phone' ? ofPhone.value : language;
});

/** The language in use. */
export const language = signal<Language>(english);

/** The texts of the language in use. */
export const words = computed(() => language.value.words);

/**
 * Loads the language that the coach or the phone chose, and from then on every other as soon as it
 * is chosen. The app starts when the first is there; one that cannot be loaded leaves English.
 */
export async function loadWords(): Promise<void> {
  const listen = () => {
    ofPhone.value = spokenOf(navigator.languages);
  };
  listen();
  addEventListener('languagechange', listen);
  let first: Promise<void> | undefined;
  effect(() => {
    const loading = load(chosen.value);
    first ??= loading;
  });
  await first;
}

async function load(code: Spoken): Promise<void> {
  const loaded = await languages[code].load().catch(() => english);
  if (code !== chosen.peek()) return; // Another one was chosen meanwhile.
  language.value = loaded;
  document.documentElement.lang = words.value.language;
  document.documentElement.dir = words.value.direction;
}
