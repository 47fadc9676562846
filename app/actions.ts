import { nanoid } from 'nanoid';
import type { OpenRound, Practice } from '../core/ledger/practice.ts';
import { emptyPlan, type Plan, plannedRounds } from '../core/round/block.ts';
import { isOver, liveSeconds } from '../core/round/clock.ts';
import { MOST_PLAYERS } from '../core/round/pairs.ts';
import { now, today } from './device/clock.ts';
import { takeLead } from './device/windows.ts';
import { append, openPractice, practice } from './ledger.ts';

/** What a person can do in a practice, each as the entries that say so. */

/** The practice of today; the first deed of a day opens it. */
function thePractice(): string {
  const open = openPractice.value;
  if (open) return open.id;
  const practice = nanoid(10);
  append({ kind: 'practice-opened', practice, date: today() });
  return practice;
}

export function come(...players: string[]): void {
  const practice = thePractice();
  append(...players.map((player) => ({ kind: 'player-came' as const, practice, player })));
}

export function leave(player: string): void {
  append({ kind: 'player-left', practice: thePractice(), player });
}

export function plan(plan: Plan): void {
  append({ kind: 'block-planned', practice: thePractice(), plan });
}

/** The practice's plan, or an empty one. */
export const currentPlan = (): Plan => openPractice.value?.plan ?? emptyPlan;

/** The last round that was set, whether its clock has started or not. */
export const lastRound = (practice: Practice | undefined): OpenRound | undefined =>
  practice?.rounds.at(-1);

/** The round that is being played, or waits for its Start or for the step after its horn. */
export function currentRound(practice: Practice | undefined): OpenRound | undefined {
  const last = lastRound(practice);
  return last && !last.left ? last : undefined;
}

/** How many rounds of the block are still to be set. */
export const roundsLeft = (practice: Practice | undefined): number =>
  Math.max(0, plannedRounds(currentPlan()) - 1 - (lastRound(practice)?.ordinal ?? -1));

/** Whether a clock is running or paused now. */
export const isRunning = (round: OpenRound | undefined): boolean =>
  round?.clock !== undefined && !isOver(round.clock, now());

/** Why no round can be set at present. */
export type Obstacle = 'players' | 'too-many' | 'plan';

export function obstacle(practice: Practice | undefined): Obstacle | undefined {
  const here = practice?.here.length ?? 0;
  if (here < 2) return 'players';
  if (here > MOST_PLAYERS) return 'too-many';
  return practice?.plan && practice.plan.steps.length > 0 ? undefined : 'plan';
}

type Press =
  | 'clock-started'
  | 'clock-paused'
  | 'clock-resumed'
  | 'clock-stopped'
  | 'round-settled'
  | 'round-skipped';

/** Says what was done to a round's clock or to the round; whoever starts a clock leads from then on. */
export function press(kind: Press, round: OpenRound): void {
  if (kind === 'clock-started' || kind === 'clock-resumed') takeLead();
  append({ kind, practice: thePractice(), round: round.id });
}

export function closePractice(): void {
  append({ kind: 'practice-closed', practice: thePractice() });
}

/** Opens the practice of today again that was closed last. */
export function reopenPractice(): void {
  const closed = practice.value;
  if (closed) append({ kind: 'practice-reopened', practice: closed.id });
}

/** Starts a further practice of today beside the closed one. */
export function newPractice(): void {
  thePractice();
}

/** One touch of a tile: one set for that pair, or for that player of it. */
export function count(round: OpenRound, pair: string, player?: string): void {
  if (!round.clock) return;
  append({
    kind: 'mark',
    practice: thePractice(),
    round: round.id,
    pair,
    ...(player !== undefined && { player }),
    second: liveSeconds(round.clock, now()),
  });
}

export function takeBack(round: OpenRound, mark: string): void {
  append({ kind: 'mark-taken-back', practice: thePractice(), round: round.id, mark });
}

export function judge(round: OpenRound, mark: string, counts: boolean): void {
  append({ kind: 'mark-judged', practice: thePractice(), round: round.id, mark, counts });
}

export function correct(round: OpenRound, pair: string, by: number, player?: string): void {
  append({
    kind: 'tally-corrected',
    practice: thePractice(),
    round: round.id,
    pair,
    ...(player !== undefined && { player }),
    by,
  });
}

export function showing(round: OpenRound, pair: string, shots: number): void {
  append({ kind: 'set-showing', practice: thePractice(), round: round.id, pair, shots });
}

export function bestRun(round: OpenRound, pair: string, shots: number): void {
  append({ kind: 'best-run', practice: thePractice(), round: round.id, pair, shots });
}

export function extend(round: OpenRound, seconds: number): void {
  append({ kind: 'clock-extended', practice: thePractice(), round: round.id, seconds });
}
