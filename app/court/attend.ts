import { type Clock, isPaused } from '../../core/clock.ts';
import { keepSigns } from '../device/sound.ts';
import { buzz } from '../device/vibrate.ts';
import { maySleep, stayAwake } from '../device/wake.ts';
import { leads } from '../device/windows.ts';
import type { Follower } from './use-clock.ts';

let attended: Clock | undefined;

/** What the phone does by itself while a round is played on it: it calls, buzzes and stays on. */
export const attend: Follower = (look) => {
  if (!look) {
    attended = undefined;
    keepSigns(undefined);
    maySleep();
    return;
  }
  const { clock, left, passed } = look;
  const calls = leads.value; // Two windows of one phone would call over each other.
  if (passed && calls) buzz(passed);
  keepSigns(calls && !isPaused(clock) && clock.stopped === undefined ? left : undefined);
  if (left === 0) maySleep();
  else if (clock !== attended) void stayAwake();
  attended = clock;
};
