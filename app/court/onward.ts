import type { OpenRound } from '../../core/ledger/practice.ts';
import { press, roundsLeft } from '../actions.ts';
import { setRound } from '../coming-round.ts';
import { openPractice } from '../practices.ts';
import { replace } from '../route.ts';

/** To the card of the next round, or to the end of the block. */
export function goOn(): void {
  if (roundsLeft(openPractice.value) > 0) setRound();
  replace('court');
}

/** Settles a round as it stands, and goes on. */
export function settleAndGoOn(round: OpenRound): void {
  press('round-settled', round);
  goOn();
}

/** Marks of a round that settle has to decide. */
export const marksToDecide = ({ tallies }: OpenRound): number =>
  tallies.reduce((sum, { open }) => sum + open, 0);
