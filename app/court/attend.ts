import { isPaused } from '../../core/round/clock.ts';
import { keepSigns } from '../device/sound.ts';
import { buzz } from '../device/vibrate.ts';
import { givesSigns } from '../device/windows.ts';
import type { Follower } from './use-clock.ts';

/** What the phone does by itself while a round is played on it: the one window that gives the signs sounds and buzzes. */
export const attend: Follower = (look) => {
  if (!look || !givesSigns.value) {
    keepSigns(undefined);
    return;
  }
  const { clock, left, turn, passed } = look;
  if (passed) buzz(passed);
  keepSigns(isPaused(clock) || clock.stopped !== undefined ? undefined : left, turn);
};
