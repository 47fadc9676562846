import { signal } from '@preact/signals';

/** Keeps the screen on while a round runs, where the phone lets a page do so. */

/** Why the screen will not stay on by itself, as far as is known; undefined where it will. */
export const sleeps = signal<'unable' | 'refused' | undefined>(
  'wakeLock' in navigator ? undefined : 'unable',
);

let lock: WakeLockSentinel | undefined;
let asking = false;
let wanted = false;

/** Best called in a click: some phones listen only then. */
export async function stayAwake(): Promise<void> {
  wanted = true;
  if (lock || asking) return;
  asking = true;
  const granted = await ask();
  asking = false;
  if (!granted) return; // The round goes on by its start stamp, and whoever looks was told.
  if (!wanted) {
    void granted.release();
    return;
  }
  lock = granted;
  granted.addEventListener('release', () => {
    if (lock === granted) lock = undefined;
  });
}

export function maySleep(): void {
  wanted = false;
  void lock?.release();
  lock = undefined;
}

/** Finds out, before it matters, whether the phone would keep its screen on. */
export async function tryToStayAwake(): Promise<void> {
  if (!wanted) await (await ask())?.release();
}

/** A lock, or undefined where the phone gives none, as on low battery. */
async function ask(): Promise<WakeLockSentinel | undefined> {
  if (!('wakeLock' in navigator)) return undefined;
  const tapped = navigator.userActivation?.isActive ?? true;
  try {
    const granted = await navigator.wakeLock.request('screen');
    sleeps.value = undefined;
    return granted;
  } catch {
    // A page that is not seen is always refused, and asks again when it is. WebKit refuses whoever
    // was not tapped in the last seconds as well: that says nothing of what a Start will bring.
    if (document.visibilityState === 'visible' && tapped) sleeps.value = 'refused';
    return undefined;
  }
}

// A hidden page loses the lock, and a page opened in mid-round may have to be tapped for it: it is
// asked for again when the page is seen, and by every tap until it is given.
const askAgain = () => {
  if (wanted && document.visibilityState === 'visible') void stayAwake();
};
document.addEventListener('visibilitychange', askAgain);
document.addEventListener('click', askAgain);
