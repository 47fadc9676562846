import { signal } from '@preact/signals';
import type { TrustedScriptURL, TrustedTypesWindow } from 'trusted-types/lib';
import type { Workbox } from 'workbox-window';

/** A newer version is on the phone and waits to be taken in. */
export const newVersion = signal(false);

/** Another window has taken a newer version in: this one still runs the older. */
export const outOfDate = signal(false);

let workbox: Workbox | undefined;

/**
 * Hears of a newer version in charge from the first moment on: one that took over while this page
 * was still opening has outdated it as well.
 */
export function followWorker(): void {
  const { serviceWorker } = navigator;
  let inCharge = serviceWorker?.controller;
  serviceWorker?.addEventListener('controllerchange', () => {
    if (inCharge) outOfDate.value = true; // Else it is the first one, which brought this very page.
    inCharge = serviceWorker.controller;
  });
}

/**
 * Registers the service worker, once the first screen stands; without one (a development server, an
 * old phone) the app works online.
 */
export async function registerWorker(): Promise<void> {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  const library = await import('workbox-window');
  workbox = new library.Workbox(workerAddress());
  workbox.addEventListener('waiting', () => {
    newVersion.value = true;
  });
  workbox.register().catch(() => {}); // Refused: the app works with a network.
  // A phone that stays open for days looks for a newer version when it is taken out again.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') workbox?.update().catch(() => {});
  });
}

/** How often, and after how long each time, a version that goes on waiting is asked again. */
const ASK_TIMES = 10;
const ASK_AGAIN_MS = 1_000;

/** Takes the waiting version in; `outOfDate` tells once it is in charge. */
export function takeNewVersion(): void {
  ask(ASK_TIMES);
}

/** Now and then a browser lets the new version wait for all that: it is asked until it is in charge. */
function ask(times: number): void {
  if (outOfDate.value || times === 0) return;
  workbox?.messageSkipWaiting();
  setTimeout(ask, ASK_AGAIN_MS, times - 1);
}

/**
 * The one script address that the page's content policy lets through beside the page's own scripts.
 * Phones without trusted types take it as it is.
 */
function workerAddress(): string | TrustedScriptURL {
  const address = new URL('sw.js', document.baseURI).href;
  const { trustedTypes } = window as unknown as TrustedTypesWindow;
  const policy = trustedTypes?.createPolicy('worker', {
    createScriptURL: (asked: string) => (asked === address ? asked : ''),
  });
  return policy?.createScriptURL(address) ?? address;
}
