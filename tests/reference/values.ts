import { readFileSync } from 'node:fs';
import { expect } from 'vitest';

/** One value from outside the project, with where it comes from beside it. */
export interface Check {
  id: string;
  topic: string;
  // biome-ignore lint/suspicious/noExplicitAny: each topic has a shape of its own, read by its own test
  inputs: any;
  // biome-ignore lint/suspicious/noExplicitAny: as above
  expected: any;
  source: string;
  source_kind: string;
  note?: string;
  tol?: Record<string, number> | number;
}

const file = JSON.parse(readFileSync(new URL('values.json', import.meta.url), 'utf8')) as {
  checks: Check[];
};

/** All checks whose id starts with the prefix; none found is an error, so that no test can pass on nothing. */
export function checks(prefix: string): Check[] {
  const found = file.checks.filter((check) => check.id.startsWith(prefix));
  if (found.length === 0) throw new Error(`no reference value starts with ${prefix}`);
  return found;
}

/** The one check with this id. */
export function check(id: string): Check {
  const found = file.checks.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`no reference value is called ${id}`);
  return found;
}

/** The sentence a test is named by: the id, how the value is known, and its source. */
export const named = (c: Check) => `${c.id} [${c.source_kind}] ${c.source}`;

/**
 * Expects two numbers to agree to a relative tolerance (1e-9 unless given), absolute where 0 is
 * expected: the rule that the values were published with.
 */
export function agree(actual: number | undefined, expected: number, tolerance = 1e-9, what = '') {
  expect(typeof actual, what).toBe('number');
  const scale = expected === 0 ? 1 : Math.abs(expected);
  expect(
    Math.abs((actual as number) - expected) / scale,
    `${what}: ${actual} for ${expected}`,
  ).toBeLessThanOrEqual(tolerance);
}
