import { type Plan, plannedRounds, stepAt } from './block.ts';

/** The block with sets of this size in all its rounds of a drill. */
export const withSize = (plan: Plan, drill: string, size: number): Plan => ({
  ...plan,
  steps: plan.steps.map((step) => (step.drill === drill ? { ...step, size } : step)),
});

/** Whether the block has a further round of a drill after its round number `ordinal` (from 0). */
export function comesAgain(plan: Plan, drill: string, ordinal: number): boolean {
  for (let next = ordinal + 1; next < plannedRounds(plan); next++) {
    if (stepAt(plan, next)?.step.drill === drill) return true;
  }
  return false;
}
