import { isOver, isPaused, liveSeconds } from '../../core/round/clock.ts';
import { currentRound } from '../actions.ts';
import { type Jump, now } from '../device/clock.ts';
import { append } from '../ledger.ts';
import { lastSaid, practice } from '../practices.ts';

/** What an entry can say of it, in seconds: a phone may wake up in the year 1970. */
const MOST_SECONDS = 1e9;
const MOST_LIVE = 86_400;

/**
 * The phone's clock moved against its steady one. Where it was set, the round goes on with the
 * seconds it had; where the phone may have slept, the wall is right. Either way settle says so.
 */
export function noteJump({ by, slept }: Jump): void {
  const held = practice.value;
  const round = currentRound(held);
  const clock = round?.clock;
  if (!held || held.closed || !clock || clock.stopped !== undefined) return;
  const before = now() - by;
  if (isOver(clock, before) && by > 0) return; // What is over stays over.
  const doubt = {
    kind: 'clock-doubted' as const,
    practice: held.id,
    ...round.said,
    seconds: Math.max(-MOST_SECONDS, Math.min(MOST_SECONDS, by / 1000)),
  };
  if (!slept) append({ ...doubt, live: Math.min(MOST_LIVE, liveSeconds(clock, before)) });
  else if (!isPaused(clock)) append(doubt);
}

/** Entries may differ by this much from the clock before it counts as set back. */
const BACK_MS = 1_000;

/**
 * Once the ledger was read: where something was said later than it is now, the phone's clock was
 * set back while the app was gone. The round goes on from there; how long it was gone nobody knows.
 */
export function noteStoredJump(): void {
  const ahead = (lastSaid() ?? 0) - now();
  if (ahead > BACK_MS) noteJump({ by: -ahead, slept: false });
}
