/** Keeps the screen on while a round runs, where the phone lets a page do so. */

let lock: WakeLockSentinel | undefined;
let wanted = false;

export async function stayAwake(): Promise<void> {
  wanted = true;
  try {
    lock ??= await navigator.wakeLock?.request('screen');
    lock?.addEventListener('release', () => {
      lock = undefined;
    });
  } catch {
    lock = undefined; // Refused, as on low battery: the round goes on by its start stamp.
  }
}

export function maySleep(): void {
  wanted = false;
  void lock?.release();
  lock = undefined;
}

// A hidden page loses the lock; it is asked for again when the page is seen.
document.addEventListener('visibilitychange', () => {
  if (wanted && document.visibilityState === 'visible') void stayAwake();
});
