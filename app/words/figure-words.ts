import { computed } from '@preact/signals';
import { figures as en } from './figures.en.ts';
import { language } from './words.ts';

/** The texts that only screens of figures need: in English they are loaded with those screens. */
export type FigureWords = typeof en;

/** Those of the language in use. */
export const figureWords = computed<FigureWords>(() => language.value.figures ?? en);
