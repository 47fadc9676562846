import { computed } from '@preact/signals';
import { card as en } from './card.en.ts';
import { language } from './words.ts';

/** The texts of a drill's card and its form: in English they are loaded with these. */
export type CardWords = typeof en;

/** Those of the language in use. */
export const cardWords = computed<CardWords>(() => language.value.card ?? en);
