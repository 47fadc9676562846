import * as z from 'zod/mini';
import { LARGEST_SIZE } from '../drill/drill.ts';
import { Id } from '../id.ts';
import { LONGEST_SECONDS, SHORTEST_SECONDS, USUAL_SECONDS } from './clock.ts';
import { MOST_CHECKS } from './spot-checks.ts';

/** One drill's place in a block. */
export const Step = z.object({
  /**
   * What its rounds are known by: a drill that is taken out and put in again is another step, and
   * all of it is still to be played. Left out in kept blocks, and by earlier versions.
   */
  id: z.optional(Id),
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

/** How many spot checks a round has. */
export const Checks = z.number().check(z.int(), z.minimum(0), z.maximum(MOST_CHECKS.called));

/** The timed drills inside a practice, in the order of play. */
export const Plan = z.object({
  steps: z.array(Step).check(z.maxLength(30)),
  /** Length of a round. */
  seconds: z.number().check(z.int(), z.minimum(SHORTEST_SECONDS), z.maximum(LONGEST_SECONDS)),
  /** From one horn to the next start. */
  changeover: z.number().check(z.int(), z.minimum(0), z.maximum(300)),
  /** What is looked at in its rounds; the focus of a drill comes before it. */
  focus: z.optional(Id),
  /** Spot checks a round, where they are fewer than there can be. */
  checks: z.optional(Checks),
});
export type Plan = z.infer<typeof Plan>;

/**
 * Shorter, and not every family has its turn; longer, and the rest of the practice is short of time.
 * Common practice, no source.
 */
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

/** A round that was played, as far as the block is concerned. */
export interface StepPlayed {
  /** The id of its step; left out by earlier versions. */
  step?: string;
  drill: string;
}

/**
 * How many rounds of each step were played. A round belongs to its own step, whatever became of the
 * steps around it; one that names none, to the first step of its drill with rounds left.
 */
export function roundsOfSteps(plan: Plan, played: readonly StepPlayed[]): number[] {
  const rounds = plan.steps.map(() => 0);
  for (const { step, drill } of played) {
    const at = plan.steps.findIndex((each, index) =>
      step === undefined
        ? each.drill === drill && (rounds[index] ?? 0) < each.rounds
        : each.id === step,
    );
    if (at >= 0) rounds[at] = (rounds[at] ?? 0) + 1;
  }
  return rounds;
}

/**
 * The step that comes next, the first of the block with rounds left, and its turn (from 0) among
 * the rounds of that step; undefined where nothing of the block is left.
 */
export function nextStep(
  plan: Plan,
  played: readonly StepPlayed[],
): { step: Step; turn: number } | undefined {
  const rounds = roundsOfSteps(plan, played);
  const at = plan.steps.findIndex((step, index) => (rounds[index] ?? 0) < step.rounds);
  const step = plan.steps[at];
  return step && { step, turn: rounds[at] ?? 0 };
}

/** How many rounds of the block are still to be played. */
export function roundsToPlay(plan: Plan, played: readonly StepPlayed[]): number {
  const rounds = roundsOfSteps(plan, played);
  return plan.steps.reduce(
    (sum, step, index) => sum + Math.max(0, step.rounds - (rounds[index] ?? 0)),
    0,
  );
}

/** Whether a round of the block is still to be played at a drill. */
export function comesAgain(plan: Plan, played: readonly StepPlayed[], drill: string): boolean {
  const rounds = roundsOfSteps(plan, played);
  return plan.steps.some((step, at) => step.drill === drill && (rounds[at] ?? 0) < step.rounds);
}

/** The block with sets of this size in all its rounds of a drill. */
export const withSize = (plan: Plan, drill: string, size: number): Plan => ({
  ...plan,
  steps: plan.steps.map((step) => (step.drill === drill ? { ...step, size } : step)),
});

/**
 * The block with a name for every step that has none.
 *
 * @param name draws one that was never drawn before
 */
export const withNames = (plan: Plan, name: () => string): Plan => ({
  ...plan,
  steps: plan.steps.map((step) => (step.id === undefined ? { ...step, id: name() } : step)),
});

/** The block as something to be kept or begun: none of its steps has been played. */
export const withoutNames = (plan: Plan): Plan => ({
  ...plan,
  steps: plan.steps.map(({ id: _, ...step }) => step),
});
