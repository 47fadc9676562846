import { signal } from '@preact/signals';
import { prefs } from './prefs.ts';

/** The phone's own voice, for whoever cannot look. Only voices that need no network are used. */

const synthesis = (globalThis as { speechSynthesis?: SpeechSynthesis }).speechSynthesis;
const voices = signal<readonly SpeechSynthesisVoice[]>([]);

// Some phones name their voices only some time after they were asked.
const readVoices = () => {
  voices.value = synthesis?.getVoices() ?? [];
};
synthesis?.addEventListener?.('voiceschanged', readVoices);
readVoices();

type Voice = Pick<SpeechSynthesisVoice, 'lang' | 'localService' | 'default'>;

/**
 * The voice of `language` ("en") that speaks without a network: the phone's default one where it
 * is of that language. Undefined where there is none.
 */
export function pickVoice<V extends Voice>(voices: readonly V[], language: string): V | undefined {
  const own = voices.filter(
    // Android writes en_GB where others write en-GB.
    (voice) => voice.localService && voice.lang.split(/[-_]/)[0]?.toLowerCase() === language,
  );
  return own.find((voice) => voice.default) ?? own[0];
}

/** Whether this phone can say something in `language` without a network. */
export const canSay = (language: string): boolean =>
  pickVoice(voices.value, language) !== undefined;

/** Says a text, in place of whatever is being said. Nothing is said while sound is off. */
export function say(text: string, language: string): void {
  const voice = pickVoice(voices.value, language);
  if (!synthesis || !voice || prefs.value.sound === 'off') return;
  const utterance = new SpeechSynthesisUtterance(text);
  utterance.voice = voice;
  utterance.lang = voice.lang;
  utterance.volume = prefs.value.sound === 'quiet' ? 0.5 : 1;
  synthesis.cancel();
  synthesis.speak(utterance);
}

/** Breaks off what is being said. */
export function sayNoMore(): void {
  synthesis?.cancel();
}
