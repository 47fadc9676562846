import { computed, effect, signal } from '@preact/signals';
import { prefs } from '../device/prefs.ts';
import type { DeskWords } from './desk-words.ts';
import { en } from './en.ts';
import type { FigureWords } from './figure-words.ts';
import type { PlanningWords } from './planning-words.ts';
import { type Spoken, spokenOf } from './spoken.ts';

/** Every text that comes with the app; a language is one file of this type. */
export type Words = typeof en;

/** A language as a whole: what screens bring along in English comes with every other language. */
interface Language {
  words: Words;
  figures?: FigureWords;
  planning?: PlanningWords;
  desk?: DeskWords;
}

const english: Language = { words: en };

const languages: Record<Spoken, () => Promise<Language>> = {
  en: async () => english,
  fr: async () => {
    const [{ fr }, { figures }, { planning }, { desk }] = await Promise.all([
      import('./fr.ts'),
      import('./figures.fr.ts'),
      import('./planning.fr.ts'),
      import('./desk.fr.ts'),
    ]);
    return { words: fr, figures, planning, desk };
  },
  es: async () => {
    const [{ es }, { figures }, { planning }, { desk }] = await Promise.all([
      import('./es.ts'),
      import('./figures.es.ts'),
      import('./planning.es.ts'),
      import('./desk.es.ts'),
    ]);
    return { words: es, figures, planning, desk };
  },
};

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
  const loaded = await languages[code]().catch(() => english);
  if (code !== chosen.peek()) return; // Another one was chosen meanwhile.
  language.value = loaded;
  document.documentElement.lang = words.value.language;
  document.documentElement.dir = words.value.direction;
}
