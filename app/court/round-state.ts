import { type Clock, isPaused } from '../../core/round/clock.ts';
import type { Sign } from '../../core/round/signs.ts';
import { words } from '../words/words.ts';

/** The one word that stands beside a round's clock; empty while there is nothing to say. */
export function roundState(clock: Clock, over: boolean, sign: Sign | undefined): string {
  const t = words.value.court;
  if (clock.stopped !== undefined) return t.stopped;
  if (over) return t.over;
  if (isPaused(clock)) return t.paused;
  if (sign === 'turn') return t.turnNow;
  return sign === 'half-minute' ? t.sign30 : '';
}
