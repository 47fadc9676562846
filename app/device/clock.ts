import { signal } from '@preact/signals';

/** Wall and steady clock may differ by this much before it counts as a jump. */
const JUMP_MS = 1_000;

let wall = Date.now();
let steady = performance.now();

/**
 * How far the phone's clock has jumped against its steady one since the page was opened, in
 * milliseconds: set forward or back, or asleep on a phone whose steady clock sleeps too.
 */
export const jumped = signal(0);

/**
 * Milliseconds since 1970. Between looks it follows the steady clock, so that a phone that sets
 * its clock in mid-round does not move the round.
 */
export const now = (): number => wall + (performance.now() - steady);

/**
 * Holds the steady clock against the wall. After a sleep only the wall is right, so it is followed;
 * whoever is counting hears of it through `jumped` and asks for a look.
 */
export function checkClock(): void {
  const by = Date.now() - now();
  if (Math.abs(by) <= JUMP_MS) return;
  wall = Date.now();
  steady = performance.now();
  jumped.value += by;
}

/** The date here, YYYY-MM-DD. */
export function today(): string {
  const date = new Date(now());
  const two = (value: number) => String(value).padStart(2, '0');
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}
