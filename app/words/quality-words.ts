import { computed } from '@preact/signals';
import { quality as en } from './quality.en.ts';
import { language } from './words.ts';

/** The texts of foci, looks, care and effort: in English they are loaded with their screens. */
export type QualityWords = typeof en;

/** Those of the language in use. */
export const qualityWords = computed<QualityWords>(() => language.value.quality ?? en);
