import type { OpenRound } from '../../core/ledger/practice.ts';
import { EXTENSION_SECONDS } from '../../core/round/clock.ts';
import { currentRound, extend, press } from '../actions.ts';
import { setRound } from '../coming-round.ts';
import { sound, unlockSound } from '../device/sound.ts';
import { sayNoMore } from '../device/voice.ts';
import { stayAwake } from '../device/wake.ts';
import { openPractice } from '../practices.ts';

/*
 * What a person does to a round's clock. The signs follow the clock by themselves; what only a
 * click may ask of the phone is asked here.
 */

/** Starts the round that waits, with the pairs as they are shown. */
export function startRound(round: OpenRound): void {
  sayNoMore();
  unlockSound();
  setRound();
  // With the pairs that were set a moment ago: what is said of the round is said of those.
  press('clock-started', currentRound(openPractice.value) ?? round);
  sound('start');
  void stayAwake();
}

export const pauseRound = (round: OpenRound): void => press('clock-paused', round);

export function resumeRound(round: OpenRound): void {
  unlockSound();
  press('clock-resumed', round);
  sound('start');
  void stayAwake();
}

export const giveMoreTime = (round: OpenRound): void => extend(round, EXTENSION_SECONDS);

export const stopRound = (round: OpenRound): void => press('clock-stopped', round);
