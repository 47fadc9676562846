import type { OwnWork } from '../../core/figures/usual.ts';

/** Where today, usual and best stand on one line, as parts of its length. */
export interface Measure {
  sets: number;
  usual: number;
  best: number;
}

/**
 * The line reaches as far as the largest of the three. Undefined where there is nothing earlier to
 * stand beside today, or where all three are 0.
 */
export function measure({ sets, usual, best }: OwnWork): Measure | undefined {
  if (usual === undefined || best === undefined) return undefined;
  const whole = Math.max(sets, best);
  return whole > 0 ? { sets: sets / whole, usual: usual / whole, best: best / whole } : undefined;
}
