/** Where a browser does not say when it is idle, the screen gets this much time in between. */
const IDLE_MS = 50;

/** Waits until the phone has nothing else to do; how long it has nothing, where it says so. */
export const idle = () =>
  new Promise<IdleDeadline | undefined>((resolve) =>
    'requestIdleCallback' in window
      ? window.requestIdleCallback(resolve)
      : setTimeout(resolve, IDLE_MS),
  );
