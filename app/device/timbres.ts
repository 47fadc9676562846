import type { Sign } from '../../core/round/signs.ts';

/** Everything that a round sounds: its signs, its start, and the click of a count. */
export type Call = Sign | 'start' | 'count';

/** A call that was given to the audio clock. */
export interface Given {
  readonly call: Call;
  /** Second of the audio clock at which it begins. */
  readonly at: number;
  readonly sources: readonly OscillatorNode[];
}

interface Tone {
  /** Seconds after the call's beginning. */
  readonly after: number;
  /** Hertz of the lowest partial. */
  readonly pitch: number;
  readonly seconds: number;
  /** Share of full volume. */
  readonly loud: number;
  /** A reed is held and let go; wood is struck and dies away. */
  readonly of: 'reed' | 'wood';
}

/**
 * Our own two voices. A phone's speaker gives little below 800 Hz, so the weight of each lies in
 * the partials above it: a reed with all of them, wood with the odd ones only.
 */
const PARTIALS: Readonly<Record<Tone['of'], readonly number[]>> = {
  reed: [0, 0.4, 0.6, 1, 0.9, 0.7, 0.5, 0.35, 0.2],
  wood: [0, 1, 0, 0.55, 0, 0.2],
};

const reed = (after: number, pitch: number, seconds: number, loud: number): Tone => ({
  after,
  pitch,
  seconds,
  loud,
  of: 'reed',
});
const wood = (after: number, pitch: number, seconds: number, loud: number): Tone => ({
  after,
  pitch,
  seconds,
  loud,
  of: 'wood',
});

const CALLS: Readonly<Record<Call, readonly Tone[]>> = {
  start: [reed(0, 466, 0.14, 0.5), reed(0.18, 622, 0.3, 0.5)],
  turn: [reed(0, 622, 0.16, 0.5), reed(0.2, 466, 0.16, 0.5), reed(0.4, 622, 0.3, 0.5)],
  'half-minute': [wood(0, 932, 0.22, 0.9), wood(0.24, 932, 0.22, 0.9)],
  'last-seconds': [wood(0, 1245, 0.12, 0.9)],
  horn: [reed(0, 311, 1.3, 0.5), reed(0, 415, 1.3, 0.5)],
  count: [wood(0, 2093, 0.045, 0.2)],
};

/** Seconds in which a sound rises: soon enough to be exact, slow enough not to crack. */
const RISE = 0.003;
/** Seconds in which a reed that is let go falls still. */
const FALL = 0.08;

/**
 * Gives a call to the audio clock.
 *
 * @param at second of the audio clock at which it begins; one that is past begins at once
 */
export function give(audio: BaseAudioContext, out: AudioNode, call: Call, at: number): Given {
  const begins = Math.max(at, audio.currentTime);
  return {
    call,
    at: begins,
    sources: CALLS[call].map((tone) => play(audio, out, tone, begins)),
  };
}

/** Takes back a call that has not begun; one that sounds is left to end by itself. */
export function takeBack(audio: BaseAudioContext, { at, sources }: Given): void {
  if (at <= audio.currentTime) return;
  for (const source of sources) {
    source.stop();
    source.disconnect();
  }
}

function play(audio: BaseAudioContext, out: AudioNode, tone: Tone, at: number): OscillatorNode {
  const begins = at + tone.after;
  const ends = begins + tone.seconds;
  const source = audio.createOscillator();
  source.setPeriodicWave(waveOf(audio, tone.of));
  source.frequency.value = tone.pitch;

  const envelope = audio.createGain();
  const { gain } = envelope;
  gain.setValueAtTime(0, begins);
  gain.linearRampToValueAtTime(tone.loud, begins + RISE);
  if (tone.of === 'wood') gain.exponentialRampToValueAtTime(0.001, ends);
  else {
    gain.setValueAtTime(tone.loud, ends - FALL);
    gain.linearRampToValueAtTime(0, ends);
  }

  source.connect(envelope).connect(out);
  source.start(begins);
  source.stop(ends);
  source.onended = () => envelope.disconnect();
  return source;
}

/** A wave takes long to make, so each is made once for an audio clock. */
const waves = new WeakMap<BaseAudioContext, Map<Tone['of'], PeriodicWave>>();

function waveOf(audio: BaseAudioContext, of: Tone['of']): PeriodicWave {
  const made = waves.get(audio) ?? new Map<Tone['of'], PeriodicWave>();
  waves.set(audio, made);
  const partials = PARTIALS[of];
  const wave =
    made.get(of) ??
    audio.createPeriodicWave(
      partials.map(() => 0),
      [...partials],
    );
  made.set(of, wave);
  return wave;
}
