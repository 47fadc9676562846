import { computed } from '@preact/signals';
import { planning as en } from './planning.en.ts';
import { language } from './words.ts';

/** The texts that only screens that plan need: in English they are loaded with those screens. */
export type PlanningWords = typeof en;

/** Those of the language in use. */
export const planningWords = computed<PlanningWords>(() => language.value.planning ?? en);
