import type { Plan, Step } from '../core/round/block.ts';

/** The rounds of a block in their order: each with its step, and its turn (from 0) in that step. */
export const turnsOf = (plan: Plan): { step: Step; turn: number }[] =>
  plan.steps.flatMap((step) => Array.from({ length: step.rounds }, (_, turn) => ({ step, turn })));
