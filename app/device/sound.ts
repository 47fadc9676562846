import { prefs } from './prefs.ts';
import { SignTrack } from './sign-track.ts';
import { type Call, give } from './timbres.ts';

/*
 * The phone's loudspeaker. Every sign is seen as well: where a phone gives no sound, or takes it
 * away, the round goes on without.
 */

/** Gain of each volume; quiet is about 12 dB below loud. */
const GAINS = { off: 0, quiet: 0.25, loud: 1 } as const;
/** An audio clock that says that it runs and has not moved for so long, in milliseconds, has stopped. */
const STOPPED_MS = 1_000;
/** How often a phone that took the sound away, as for a call, is asked to give it back. */
const ASK_AGAIN_MS = 1_000;
/** After so long without sound, in milliseconds, whatever its clock says, it is built anew. */
const GIVEN_UP_MS = 5_000;
/** A sound that could not begin within so many milliseconds is left out: later it would mislead. */
const STALE_MS = 300;
/** An answer to what is heard now that is older, in milliseconds, is of no use. */
const FRESH_MS = 200;

interface Desk {
  readonly context: AudioContext;
  readonly volume: GainNode;
  readonly track: SignTrack;
  /** When the audio clock was last seen to move, on the page's steady clock. */
  movedAt: number;
  time: number;
  askedAt: number;
}

let desk: Desk | undefined;

/**
 * Lets the page sound. Must be called from a click, the end of a touch or a key: phones let a page
 * sound only then. Nothing happens while sound is off.
 */
export function unlockSound(): void {
  if (prefs.value.sound === 'off') return;
  desk ??= makeDesk();
  if (desk) ask(desk);
}

/** Sounds a call at once, if the page may sound. */
export function sound(call: Call): void {
  const { sound, click } = prefs.value;
  if (!desk || sound === 'off' || (call === 'count' && !click)) return;
  const { context, volume } = desk;
  const asked = performance.now();
  setVolume(desk);
  const now = () => {
    if (performance.now() - asked < STALE_MS) give(context, volume, call, context.currentTime);
  };
  if (context.state === 'running') now();
  else context.resume().then(now, () => {});
}

/**
 * Keeps the signs of a round in step with its clock. To be called again and again while a round is
 * followed: what the phone did to the sound meanwhile is found here and put right.
 *
 * @param left seconds left on the round's clock; undefined where no sign is to come, as in a pause
 * @param turn seconds left on it as roles turn; left out where they do not
 */
export function keepSigns(left: number | undefined, turn?: number): void {
  if (!desk) return;
  if (left === undefined || prefs.value.sound === 'off') {
    desk.track.hush();
    return;
  }
  setVolume(desk);
  const at = performance.now();
  const { context } = desk;
  if (context.currentTime !== desk.time) {
    desk.time = context.currentTime;
    desk.movedAt = at;
  }
  const still = at - desk.movedAt;
  const stopped = still > (context.state === 'running' ? STOPPED_MS : GIVEN_UP_MS);
  if (still === 0) desk.track.keepTo(left, heardAt(context), turn);
  else if (stopped) rebuild();
  else if (at - desk.askedAt > ASK_AGAIN_MS) ask(desk);
}

function makeDesk(): Desk | undefined {
  try {
    const context = new AudioContext();
    const volume = context.createGain();
    volume.connect(context.destination);
    return {
      context,
      volume,
      track: new SignTrack(context, volume),
      movedAt: performance.now(),
      time: context.currentTime,
      askedAt: 0,
    };
  } catch {
    return undefined; // No sound on this phone.
  }
}

function rebuild(): void {
  void desk?.context.close().catch(() => {});
  desk = makeDesk();
  if (desk) ask(desk);
}

function ask(asked: Desk): void {
  asked.askedAt = performance.now();
  if (asked.context.state !== 'running') asked.context.resume().catch(() => {});
}

function setVolume({ volume }: Desk): void {
  volume.gain.value = GAINS[prefs.value.sound];
}

/**
 * The second of the audio clock that leaves the loudspeaker now: behind `currentTime` by the way
 * there, which is long to a loudspeaker without a wire.
 */
function heardAt(context: AudioContext): number {
  const { contextTime, performanceTime } = context.getOutputTimestamp?.() ?? {};
  if (contextTime !== undefined && performanceTime !== undefined) {
    // Where the sound has just come back, the phone still tells when it was taken away.
    const since = performance.now() - performanceTime;
    if (since >= 0 && since < FRESH_MS) return contextTime + since / 1000;
  }
  return context.currentTime;
}
