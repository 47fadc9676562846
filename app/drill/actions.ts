import type { Drill } from '../../core/drill/drill.ts';
import { currentPlan } from '../actions.ts';
import { append } from '../ledger.ts';

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
