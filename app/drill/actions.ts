import type { Drill } from '../../core/drill/drill.ts';
import { currentPlan } from '../actions.ts';
import { append, library } from '../ledger.ts';
import { textOf } from '../words/drill-text.ts';
import { words } from '../words/words.ts';

/** What a person can do to the library of drills, each as the entries that say so. */

/** A new drill, or a drill as it is from now on; rounds keep the terms they were played by. */
export function writeDrill(drill: Drill): void {
  append({ kind: 'drill-written', drill });
}

/** An own drill leaves the library; of a starter drill the original comes back. */
export function dropDrill(drill: string): void {
  append({ kind: 'drill-dropped', drill });
}

/** Whether today's block asks for a drill. */
export const isPlanned = (drill: string): boolean =>
  currentPlan().steps.some((step) => step.drill === drill);

/**
 * The names of all drills but this one as people read them: also those that the language gives to
 * drills that came with the app, for of a drill that was changed the original may come back.
 */
export function namesBeside(drill: string | undefined): string[] {
  const starters = Object.entries(words.value.drills).map(([id, { name }]) => ({ id, name }));
  const inUse = [...library.value.drills.values()].map((each) => ({
    id: each.id,
    name: textOf(each).name,
  }));
  return [...starters, ...inUse].filter(({ id }) => id !== drill).map(({ name }) => name);
}
