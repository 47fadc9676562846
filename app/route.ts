import { computed, signal } from '@preact/signals';
import { prefs } from './device/prefs.ts';

/**
 * Where in the app a person is. The address is a hash, so that any static host serves every one of
 * them, and the phone's back gesture goes where a person expects.
 */
const hash = signal(location.hash);
let kept: string | undefined;
addEventListener('hashchange', () => {
  if (kept !== undefined && location.hash !== kept) location.replace(kept);
  hash.value = location.hash;
  // A new screen is read from its top.
  scrollTo(0, 0);
});

/** The parts of the address: `#/player/ab12` is `['player', 'ab12']`, today is `[]`. */
export const route = computed<readonly string[]>(() => {
  const handed = prefs.value.handedTo;
  if (handed !== undefined) return ['player', handed];
  return hash.value
    .replace(/^#\/?/, '')
    .split('/')
    .filter((part) => part !== '')
    .map(decode);
});

/** An address typed by hand may hold a bad escape; then it names nothing. */
function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}

export const href = (...parts: string[]): string => `#/${parts.map(encodeURIComponent).join('/')}`;

export function go(...parts: string[]): void {
  kept = undefined;
  location.hash = href(...parts);
}

/** Like `go`, but the phone's back gesture skips the address that is left. */
export function replace(...parts: string[]): void {
  kept = undefined;
  location.replace(href(...parts));
}

/**
 * Keeps the app where it is, whatever the back gesture says, until it goes elsewhere by itself: for
 * a screen in other hands.
 *
 * @returns lets go
 */
export function stay(): () => void {
  kept = location.hash;
  return () => {
    kept = undefined;
  };
}
