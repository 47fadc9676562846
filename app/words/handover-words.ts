import { computed } from '@preact/signals';
import { handover as en } from './handover.en.ts';
import { language } from './words.ts';

/** The texts of what passes between phones: in English they are loaded with those screens. */
export type HandoverWords = typeof en;

/** Those of the language in use. */
export const handoverWords = computed<HandoverWords>(() => language.value.handover ?? en);
