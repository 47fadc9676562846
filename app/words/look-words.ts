import { computed } from '@preact/signals';
import { look as en } from './look.en.ts';
import { language } from './words.ts';

/** The texts of the screens on which a coach looks back: in English they are loaded with those screens. */
export type LookWords = typeof en;

/** Those of the language in use. */
export const lookWords = computed<LookWords>(() => language.value.look ?? en);
