import type { Between } from './court.ts';

/**
 * The nearer of the two lines that something lies between, the one before it where they are as
 * near, and the metres beyond that line (negative: short of it; 0: on it).
 */
export function nearerLine<Kind>({ past, by, next }: Between<Kind>): {
  line: Kind;
  beyond: number;
} {
  if (next && next.in < by) return { line: next.line, beyond: -next.in };
  return { line: past, beyond: by };
}
