import { type Sign, signsAhead } from '../../core/signs.ts';
import { prefs } from './prefs.ts';

/*
 * What is heard of a round. Signs are scheduled on the audio clock, so that a busy or throttled
 * page cannot make them late.
 */

let context: AudioContext | undefined;
let scheduled: OscillatorNode[] = [];

/** Must be called from a click or the end of a touch: phones let a page sound only then. */
export function unlockSound(): void {
  if (!prefs.value.sound) return;
  try {
    context ??= new AudioContext();
    void context.resume();
  } catch {
    context = undefined; // No sound on this phone: every sign is seen as well.
  }
}

/** Pitch in hertz, length in seconds and strokes of each sign. */
const VOICES: Readonly<Record<Sign, { pitch: number; length: number; strokes: number }>> = {
  'half-minute': { pitch: 660, length: 0.16, strokes: 2 },
  'last-seconds': { pitch: 880, length: 0.09, strokes: 1 },
  horn: { pitch: 392, length: 1.1, strokes: 1 },
};

/** Schedules every sign that is still to come, in place of those scheduled before. */
export function scheduleSigns(secondsLeft: number): void {
  hush();
  if (!context || !prefs.value.sound) return;
  for (const { in: wait, sign } of signsAhead(secondsLeft)) {
    const { pitch, length, strokes } = VOICES[sign];
    for (let stroke = 0; stroke < strokes; stroke++) {
      tone(context, context.currentTime + wait + stroke * length * 1.6, pitch, length);
    }
  }
}

/** Takes back every sign that has not sounded yet. */
export function hush(): void {
  for (const node of scheduled) {
    try {
      node.stop();
    } catch {
      // It had ended by itself.
    }
    node.disconnect();
  }
  scheduled = [];
}

function tone(audio: BaseAudioContext, at: number, pitch: number, length: number): void {
  const source = audio.createOscillator();
  const gain = audio.createGain();
  source.type = 'triangle';
  source.frequency.value = pitch;
  gain.gain.setValueAtTime(0, at);
  gain.gain.linearRampToValueAtTime(0.9, at + 0.01);
  gain.gain.setValueAtTime(0.9, at + length * 0.7);
  gain.gain.linearRampToValueAtTime(0, at + length);
  source.connect(gain).connect(audio.destination);
  source.start(at);
  source.stop(at + length);
  scheduled.push(source);
}
