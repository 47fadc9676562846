/*
 * fake-indexeddb and the windows' messages go from turn to turn of the event loop by setImmediate.
 * Those that wait are counted, so that a test goes on when there is nothing left to happen, and
 * never on a hope.
 */
const inTurn = globalThis.setImmediate;
let waiting = 0;

globalThis.setImmediate = Object.assign(
  (deed: (...given: unknown[]) => void, ...given: unknown[]) => {
    waiting += 1;
    return inTurn(() => {
      waiting -= 1;
      deed(...given);
    });
  },
  { __promisify__: inTurn.__promisify__ },
) as typeof setImmediate;

/** Turns in a row without anything waiting: what was awaited in one may begin something in the next. */
const TURNS = 3;

/** Resolves once everything has happened that needs no time to pass. */
export async function quiet(): Promise<void> {
  for (let still = 0; still < TURNS; ) {
    await new Promise<void>((resolve) => inTurn(resolve));
    still = waiting === 0 ? still + 1 : 0;
  }
}
