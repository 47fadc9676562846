import * as z from 'zod/mini';
import { LARGEST_SIZE } from '../drill/drill.ts';
import { Id } from '../id.ts';
import { LONGEST_SECONDS, SHORTEST_SECONDS, USUAL_SECONDS } from './clock.ts';

/** One drill's place in a block. */
export const Step = z.object({
  drill: Id,
  rounds: z.number().check(z.int(), z.minimum(1), z.maximum(10)),
  /** Whether the pairs stay together or turn before each of its rounds. */
  partners: z.enum(['keep', 'turn']),
  /** Whether they turn before its first round, though they stay together for the others. */
  renew: z.optional(z.boolean()),
  /** A set size other than the drill's own. */
  size: z.optional(z.number().check(z.int(), z.minimum(1), z.maximum(LARGEST_SIZE))),
});
export type Step = z.infer<typeof Step>;

/** The 20 to 30 minutes of timed drills inside a practice. */
export const Plan = z.object({
  steps: z.array(Step).check(z.maxLength(30)),
  /** Length of a round. */
  seconds: z.number().check(z.int(), z.minimum(SHORTEST_SECONDS), z.maximum(LONGEST_SECONDS)),
  /** From one horn to the next start. */
  changeover: z.number().check(z.int(), z.minimum(0), z.maximum(300)),
});
export type Plan = z.infer<typeof Plan>;

/** Common practice, no source: a block of live-ball drills takes 20 to 30 minutes of a practice. */
export const USUAL_MINUTES = { least: 20, most: 30 } as const;

export const emptyPlan: Plan = { steps: [], seconds: USUAL_SECONDS, changeover: 45 };

/** Whether partners change before a round of a step, counted from 0. */
export const partnersChange = ({ partners, renew }: Step, turn: number): boolean =>
  partners === 'turn' || (renew === true && turn === 0);

/** How many rounds are in the block. */
export const plannedRounds = (plan: Plan): number =>
  plan.steps.reduce((sum, step) => sum + step.rounds, 0);

/** Length of the block in minutes, the changeovers between its rounds included. */
export function plannedMinutes(plan: Plan): number {
  const rounds = plannedRounds(plan);
  return (rounds * plan.seconds + Math.max(0, rounds - 1) * plan.changeover) / 60;
}

/** Where a length stands to the usual 20 to 30 minutes. */
export function standsToUsual(minutes: number): 'short' | 'usual' | 'long' {
  if (minutes < USUAL_MINUTES.least) return 'short';
  return minutes > USUAL_MINUTES.most ? 'long' : 'usual';
}

/**
 * The step of the block's round number `ordinal` (from 0), and its turn (from 0) among the rounds
 * of that step; undefined where the block has no such round.
 */
export function stepAt(plan: Plan, ordinal: number): { step: Step; turn: number } | undefined {
  let before = 0;
  for (const step of plan.steps) {
    if (ordinal < before + step.rounds) return { step, turn: ordinal - before };
    before += step.rounds;
  }
  return undefined;
}
