import { signal } from '@preact/signals';
import { Workbox } from 'workbox-window';

/** A newer version is on the phone and waits to be taken in. */
export const newVersion = signal(false);

let workbox: Workbox | undefined;

/** Registers the service worker; without one (a development server, an old phone) the app works online. */
export function registerWorker(): void {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  workbox = new Workbox(new URL('sw.js', document.baseURI).href);
  workbox.addEventListener('waiting', () => {
    newVersion.value = true;
  });
  workbox.register().catch(() => {}); // Refused: the app works with a network.
  // A phone that stays open for days looks for a newer version when it is taken out again.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void workbox?.update();
  });
}

/** Takes the waiting version in: the page is loaded anew once it is in charge. */
export function takeNewVersion(): void {
  workbox?.addEventListener('controlling', () => location.reload());
  workbox?.messageSkipWaiting();
}
