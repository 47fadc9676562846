import type { OpenRound } from '../../core/ledger/practice.ts';
import type { Clock } from '../../core/round/clock.ts';

/** Seconds left on the clock as roles turn: half of the round as it was planned; undefined where they do not. */
export const turnLeft = ({ turns, seconds }: OpenRound, { length }: Clock): number | undefined =>
  turns ? length - seconds / 2 : undefined;
