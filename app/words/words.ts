import { computed, signal } from '@preact/signals';
import { prefs } from '../device/prefs.ts';
import { en } from './en.ts';

/** Every text of the app; a language is one file of this type. */
export type Words = typeof en;

const languages = { en: async () => en } as const;
export type Language = keyof typeof languages;

const chosen = computed<Language>(() => (prefs.value.language === 'phone' ? 'en' : 'en'));

/** The texts of the language in use. */
export const words = signal<Words>(en);

/** Loads the language that the coach or the phone chose; the app starts when it is there. */
export async function loadWords(): Promise<void> {
  words.value = await languages[chosen.value]();
  document.documentElement.lang = words.value.language;
}
