import type { CardWords } from './card-words.ts';
import type { DeskWords } from './desk-words.ts';
import { en } from './en.ts';
import type { FigureWords } from './figure-words.ts';
import type { HandoverWords } from './handover-words.ts';
import type { LookWords } from './look-words.ts';
import type { PlanningWords } from './planning-words.ts';
import type { QualityWords } from './quality-words.ts';
import type { Words } from './words.ts';

/** A language as a whole: what screens bring along in English comes with every other language. */
export interface Language {
  words: Words;
  figures?: FigureWords;
  planning?: PlanningWords;
  desk?: DeskWords;
  card?: CardWords;
  handover?: HandoverWords;
  quality?: QualityWords;
  look?: LookWords;
}

export const english: Language = { words: en };

/**
 * The languages of the app, by their codes; one more is its own file and a line here. Each is called
 * as it calls itself, so that whoever reads no other finds it.
 */
export const languages = {
  en: { name: 'English', load: async () => english },
  fr: { name: 'Français', load: () => import('./fr.ts').then((file) => file.language) },
  es: { name: 'Español', load: () => import('./es.ts').then((file) => file.language) },
} satisfies Record<string, { name: string; load: () => Promise<Language> }>;

export type Spoken = keyof typeof languages;
export const spoken = Object.keys(languages) as Spoken[];

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
