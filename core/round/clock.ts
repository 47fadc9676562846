/**
 * A round's clock. Nothing ticks: the time is a function of one start, the pauses and now, so it
 * is right however long the page was hidden, asleep or gone.
 */
export interface Clock {
  /** Milliseconds since 1970. */
  readonly start: number;
  /** Seconds the round is to last, with what was added to it. */
  readonly length: number;
  readonly pauses: readonly { readonly from: number; readonly to?: number }[];
  /** Milliseconds since 1970; only where the round was stopped before its horn. */
  readonly stopped?: number;
}

export type ClockEvent = 'pause' | 'resume' | 'stop' | { extend: number };

/** Common practice, no source: drills of cooperative live ball go for two minutes. */
export const USUAL_SECONDS = 120;
export const SHORTEST_SECONDS = 30;
export const LONGEST_SECONDS = 600;
/** What one touch adds to a running round. */
export const EXTENSION_SECONDS = 30;

export const startClock = (at: number, length: number): Clock => ({
  start: at,
  length,
  pauses: [],
});

/**
 * Seconds of live clock at `now`, pauses left out. It goes on past the horn and past an early
 * stop, so that a late mark knows how late it is. Never negative.
 */
export function liveSeconds(clock: Clock, now: number): number {
  let paused = 0;
  for (const { from, to } of clock.pauses) {
    const until = Math.min(to ?? now, now);
    if (until > from) paused += until - from;
  }
  return Math.max(0, now - clock.start - paused) / 1000;
}

/** Seconds left until the horn, 0 once it has gone or the round was stopped. */
export const secondsLeft = (clock: Clock, now: number): number =>
  clock.stopped === undefined ? Math.max(0, clock.length - liveSeconds(clock, now)) : 0;

/** Whether the horn has gone, or the round was stopped early. */
export const isOver = (clock: Clock, now: number): boolean =>
  clock.stopped !== undefined || liveSeconds(clock, now) >= clock.length;

/** The open pause lasts until it is resumed or the round stopped. */
export const isPaused = (clock: Clock): boolean =>
  clock.stopped === undefined && clock.pauses.length > 0 && clock.pauses.at(-1)?.to === undefined;

/** The second of live clock at which the round ends: at its horn, or where it was stopped. */
export const endSecond = (clock: Clock): number =>
  clock.stopped === undefined ? clock.length : liveSeconds(clock, clock.stopped);

/** Whether a round ended sooner than any round is planned: a trial, or a slip of the finger. */
export const isTooShort = (clock: Clock): boolean => endSecond(clock) < SHORTEST_SECONDS;

/** Seconds of live clock that are recorded for the round as it stands at `now`. */
export const recordedSeconds = (clock: Clock, now: number): number =>
  Math.min(endSecond(clock), liveSeconds(clock, now));

/** Milliseconds since 1970 when the horn goes; undefined in a pause and after an early stop. */
export function hornAt(clock: Clock, now: number): number | undefined {
  if (isPaused(clock) || clock.stopped !== undefined) return undefined;
  return now + (clock.length - liveSeconds(clock, now)) * 1000;
}

/**
 * The clock after an event. An event that makes no sense at its time (a pause after the horn, a
 * resume of a running clock, the second of two phones pressing at once) leaves it as it was.
 */
export function afterEvent(clock: Clock, event: ClockEvent, at: number): Clock {
  // Where a phone's clock falls back, an event still never comes before those it follows: pauses
  // that overlapped would let the live clock run backwards.
  const last = clock.pauses.at(-1);
  const time = Math.max(at, last?.to ?? last?.from ?? clock.start);
  if (isOver(clock, time)) return clock;
  if (event === 'stop') return { ...closePause(clock, time), stopped: time };
  if (event === 'resume') return closePause(clock, time);
  if (event === 'pause') {
    return isPaused(clock) ? clock : { ...clock, pauses: [...clock.pauses, { from: time }] };
  }
  return { ...clock, length: Math.min(LONGEST_SECONDS, clock.length + event.extend) };
}

/**
 * The clock where the phone's own was set in mid-round: from `at` on, as the phone counts now, it
 * goes on with `live` seconds on it, which hold all that came before. A stopped clock stays.
 */
export function goOnFrom(clock: Clock, live: number, at: number): Clock {
  if (clock.stopped !== undefined) return clock;
  return {
    start: at - live * 1000,
    length: clock.length,
    pauses: isPaused(clock) ? [{ from: at }] : [],
  };
}

function closePause(clock: Clock, at: number): Clock {
  const open = clock.pauses.at(-1);
  if (!open || open.to !== undefined) return clock;
  return {
    ...clock,
    pauses: [...clock.pauses.slice(0, -1), { from: open.from, to: at }],
  };
}
