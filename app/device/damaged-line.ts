import type { Damaged } from './records.ts';

/**
 * A damaged record as a file says it that is handed over, as far as it can be written down: it may
 * be anything. Two records that say the same were handed over as one.
 */
export function damagedLine(damaged: Damaged): string {
  try {
    return `${JSON.stringify(damaged)}\n`;
  } catch {
    return `${JSON.stringify({ ...damaged, record: String(damaged.record) })}\n`;
  }
}
