import { nanoid } from 'nanoid';
import type { PracticeEntry } from '../core/ledger/entry.ts';
import {
  type OpenRound,
  type Practice,
  type Stretch,
  stepsPlayed,
} from '../core/ledger/practice.ts';
import { emptyPlan, type Plan, roundsToPlay, withNames } from '../core/round/block.ts';
import { isOver, liveSeconds } from '../core/round/clock.ts';
import type { Look } from '../core/round/look.ts';
import type { Pair } from '../core/round/pair.ts';
import { freeLetter, MOST_PLAYERS } from '../core/round/pairs.ts';
import type { CountingWay } from '../core/round/tally.ts';
import { checkClock, now, today } from './device/clock.ts';
import { takeLead } from './device/windows.ts';
import { append, appendUnseen } from './ledger.ts';
import { openPractice, practice } from './practices.ts';

/** What a person can do in a practice, each as the entries that say so. */

/** The practice that is under way; the first deed of a day opens it. */
function thePractice(): string {
  // A page that was left open overnight learns of the new day before it writes.
  checkClock();
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

/** The block from now on. What was played of it stays with the steps that it was played of. */
export function plan(plan: Plan): void {
  const named = withNames(plan, () => nanoid(10));
  append({ kind: 'block-planned', practice: thePractice(), plan: named });
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

/** How many rounds of the block are still to be played. */
export const roundsLeft = (practice: Practice | undefined): number =>
  practice ? roundsToPlay(practice.plan ?? emptyPlan, stepsPlayed(practice)) : 0;

/** Whether a clock is running or paused now. */
export const isRunning = (round: OpenRound | undefined): boolean =>
  round?.clock !== undefined && !isOver(round.clock, now());

/** Whether the round of the practice that is under way runs: what can wait waits until it is over. */
export const roundRuns = (): boolean => isRunning(currentRound(openPractice.value));

/** Why no round can be set at present. */
export type Obstacle = 'players' | 'too-many' | 'plan';

export function obstacle(practice: Practice | undefined): Obstacle | undefined {
  const here = practice?.here.length ?? 0;
  if (here < 2) return 'players';
  if (here > MOST_PLAYERS) return 'too-many';
  return practice?.plan && practice.plan.steps.length > 0 ? undefined : 'plan';
}

/** What every entry of a round names: the round, and the pairs that were seen in it. */
const of = ({ practice, said }: OpenRound) => ({ practice, ...said });

type Press = Extract<
  PracticeEntry['kind'],
  | 'clock-started'
  | 'clock-paused'
  | 'clock-resumed'
  | 'clock-stopped'
  | 'round-settled'
  | 'round-skipped'
  | 'round-struck'
  | 'round-restored'
>;

/** Says what was done to a round's clock or to the round; whoever starts a clock leads from then on. */
export function press(kind: Press, round: OpenRound): void {
  if (kind === 'clock-started' || kind === 'clock-resumed') takeLead();
  append({ kind, ...of(round) });
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

/** Strikes a whole practice out of every figure, or takes it in again. */
export function strikePractice({ id, struck }: Practice): void {
  append({ kind: struck ? 'practice-restored' : 'practice-struck', practice: id });
}

/** Puts right whether a player was there. */
export function correctPresence(practice: Practice, player: string, present: boolean): void {
  append({ kind: 'presence-corrected', practice: practice.id, player, present });
}

/**
 * One touch of a tile: one set for that pair, or for that player of it. It is on its way to the disk;
 * what is given back shows it.
 */
export function strike(round: OpenRound, pair: string, player?: string): () => void {
  if (!round.clock) return () => {};
  return appendUnseen({
    kind: 'mark',
    ...of(round),
    pair,
    ...(player !== undefined && { player }),
    second: liveSeconds(round.clock, now()),
  });
}

/** Counts a set, and shows it at once. */
export const count = (...struck: Parameters<typeof strike>): void => strike(...struck)();

export function takeBack(round: OpenRound, mark: string): void {
  append({ kind: 'mark-taken-back', ...of(round), mark });
}

export function judge(round: OpenRound, mark: string, counts: boolean): void {
  append({ kind: 'mark-judged', ...of(round), mark, counts });
}

/** Corrects the count that stands, whichever phone made it. */
export function correct(round: OpenRound, pair: string, by: number, player?: string): void {
  const phone = round.phones[pair];
  append({
    kind: 'tally-corrected',
    ...of(round),
    pair,
    ...(player !== undefined && { player }),
    by,
    ...(phone !== undefined && { of: phone }),
  });
}

/** What a pair, or one player of it, called at the horn; undefined where it was not heard. */
export function callCount(
  round: OpenRound,
  pair: string,
  sets: number | undefined,
  player?: string,
): void {
  append({
    kind: 'count-called',
    ...of(round),
    pair,
    ...(player !== undefined && { player }),
    ...(sets !== undefined && { sets }),
  });
}

/** Says when the roles turned; undefined where they did not. */
export function turnRoles(round: OpenRound, second: number | undefined): void {
  append({ kind: 'roles-turned', ...of(round), ...(second !== undefined && { second }) });
}

/** Stops a pair in mid-round, or lets it go on after all. */
export function stopPair(round: OpenRound, pair: string, second: number | undefined): void {
  append({ kind: 'pair-stopped', ...of(round), pair, ...(second !== undefined && { second }) });
}

/**
 * A pair of the running round that goes on with others from here on: with a player whose own pair
 * has stopped, or as two of a trio. It is a new pair, and the old one has stopped.
 */
export function joinPair(round: OpenRound, player: string | undefined, pair: Pair): void {
  const letter = freeLetter(round.tallies.map((tally) => tally.pair));
  if (!round.clock || letter === undefined) return;
  const second = liveSeconds(round.clock, now());
  const players = player === undefined ? pair.players : [...pair.players, player];
  append(
    { kind: 'pair-stopped', ...of(round), pair: pair.letter, second },
    { kind: 'pair-added', ...of(round), pair: letter, players, second },
  );
}

/** Strikes a stretch that nobody watched from the counting, or takes it in again. */
export function watchStretch(round: OpenRound, { from, to }: Stretch, watched: boolean): void {
  append({ kind: 'stretch-watched', ...of(round), from, to, watched });
}

/** How the sets of a drill are counted from now on. */
export function countDrill(drill: string, way: CountingWay): void {
  append({ kind: 'drill-counted', drill, way });
}

/** Puts right who was in the pairs of a round that was started. */
export function correctPairs(round: OpenRound, pairs: readonly Pair[]): void {
  const stand = new Map(round.tallies.map(({ pair }) => [pair.letter, pair.players.join()]));
  append(
    ...pairs
      .filter(({ letter, players }) => stand.get(letter) !== players.join())
      .map(({ letter, players }) => ({
        kind: 'pair-corrected' as const,
        ...of(round),
        pair: letter,
        players,
      })),
  );
}

/** Says how far the unfinished set had come; undefined where it was not seen. */
export function showing(round: OpenRound, pair: string, shots: number | undefined): void {
  if (shots === undefined) append({ kind: 'shots-unseen', ...of(round), pair, of: 'showing' });
  else append({ kind: 'set-showing', ...of(round), pair, shots });
}

/** Says how long the longest run was; undefined where it was not seen. */
export function bestRun(round: OpenRound, pair: string, shots: number | undefined): void {
  if (shots === undefined) append({ kind: 'shots-unseen', ...of(round), pair, of: 'best' });
  else append({ kind: 'best-run', ...of(round), pair, shots });
}

/** Says what a look at a player showed; it can be said again while it is asked for. */
export function answerLook(
  round: OpenRound,
  { player, second, focus, saw }: Omit<Look, 'by'>,
): void {
  append({ kind: 'look', ...of(round), player, focus, second, saw });
}

export function extend(round: OpenRound, seconds: number): void {
  append({ kind: 'clock-extended', ...of(round), seconds });
}
