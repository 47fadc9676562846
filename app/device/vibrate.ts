import type { Sign } from '../../core/round/signs.ts';

/** Milliseconds of buzz and pause. */
const BUZZES: Readonly<Record<Sign | 'mark', number[]>> = {
  mark: [15],
  turn: [120, 80, 120, 80, 120],
  'half-minute': [60, 60, 60],
  'last-seconds': [40],
  horn: [500],
};

/** A buzz where the phone can; many cannot, and then nothing happens. */
export function buzz(what: Sign | 'mark'): void {
  navigator.vibrate?.(BUZZES[what]);
}
