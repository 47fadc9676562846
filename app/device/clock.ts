import { signal } from '@preact/signals';

/** Wall and steady clock may differ by this much before it counts as a jump. */
const JUMP_MS = 1_000;

let wall = Date.now();
let steady = performance.now();
let hidden = false;

/**
 * Milliseconds since 1970. Between looks it follows the steady clock, so that a phone that sets
 * its clock in mid-round does not move the round.
 */
export const now = (): number => wall + (performance.now() - steady);

const MINUTE = 60_000;

/**
 * The minutes since 1970 that have passed: whoever reads it is told as the next one begins, or as a
 * page that slept through many is looked at again. Every zone's day begins with a minute.
 */
const thisMinute = signal(Math.floor(now() / MINUTE));

/** The wall clock was found away from where the steady one had it. */
export interface Jump {
  /** Milliseconds from where `now()` was to where it is, back where negative. */
  by: number;
  /**
   * The page was hidden meanwhile and time went on: the phone may have been asleep, and its steady
   * clock with it. Then the wall is right; else the phone's clock was set, and the steady one is.
   */
  slept: boolean;
}

const listeners: ((jump: Jump) => void)[] = [];

/** Calls the listener right after every jump, from within the look that found it. */
export function onJump(listener: (jump: Jump) => void): void {
  listeners.push(listener);
}

/** Holds the steady clock against the wall, and follows the wall from then on. */
export function checkClock(): void {
  const by = Date.now() - now();
  const slept = hidden && by > 0;
  hidden = document.visibilityState === 'hidden';
  if (Math.abs(by) > JUMP_MS) {
    wall = Date.now();
    steady = performance.now();
    for (const listener of listeners) listener({ by, slept });
  }
  thisMinute.value = Math.floor(now() / MINUTE);
}

/** How often the clocks are held against each other while the page is open. */
const LOOK_MS = 1_000;

/** Looks at the clocks from now on, also whenever the page comes back into sight. */
export function watchClock(): void {
  setInterval(checkClock, LOOK_MS);
  document.addEventListener('visibilitychange', checkClock);
  addEventListener('pageshow', checkClock);
}

/** The date of a time here, YYYY-MM-DD. */
export function dateOf(time: number): string {
  const date = new Date(time);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** Today's date here, YYYY-MM-DD; whoever reads it is told as each minute begins. */
export const today = (): string => dateOf(thisMinute.value * MINUTE);
