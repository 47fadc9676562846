import { test } from 'playwright/test';

/** How often a thing is done: so many times in `npm test`, so many with `--large`. */
export const times = (few: number, many: number): number =>
  process.env.FAULTS === 'large' ? many : few;

/** Puts a line into the table that is printed at the end. */
export function tell(what: string, count: number | string): void {
  test.info().annotations.push({ type: 'count', description: `${what}\t${count}` });
}
