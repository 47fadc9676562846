import { computed } from '@preact/signals';
import { desk as en } from './desk.en.ts';
import { language } from './words.ts';

/** The texts of screens away from the court: in English they are loaded with those screens. */
export type DeskWords = typeof en;

/** Those of the language in use. */
export const deskWords = computed<DeskWords>(() => language.value.desk ?? en);
