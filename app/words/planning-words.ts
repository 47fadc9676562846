import { computed } from '@preact/signals';
import { planning as en } from './planning.en.ts';
import { words } from './words.ts';

/** The texts that only screens that plan need: they are loaded with those screens. */
export type PlanningWords = typeof en;

const languages: Record<string, PlanningWords> = { en };

/** Those of the language in use. */
export const planningWords = computed<PlanningWords>(() => languages[words.value.language] ?? en);
