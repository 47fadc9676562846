import { signal } from '@preact/signals';

/** What Chromium's browsers send when they would put the app on the home screen. */
interface InstallOffer extends Event {
  prompt(): Promise<unknown>;
}

/** The browser's offer to put the app on the home screen, where it makes one. */
export const installOffer = signal<InstallOffer | undefined>(undefined);

/** Whether the app was opened from the home screen, or has just been put there. */
export const installed = signal(
  matchMedia('(display-mode: standalone)').matches ||
    ('standalone' in navigator && navigator.standalone === true), // iPhone and iPad
);

/** The offer comes once, soon after the page was opened: listen before anything else is loaded. */
export function listenForInstall(): void {
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault(); // No bar over the court screen: Settings has the button.
    installOffer.value = event as InstallOffer;
  });
  addEventListener('appinstalled', () => {
    installOffer.value = undefined;
    installed.value = true;
  });
}

/** Shows the browser's own question; an offer can be used once. */
export async function install(): Promise<void> {
  const offer = installOffer.value;
  installOffer.value = undefined;
  await offer?.prompt();
}
