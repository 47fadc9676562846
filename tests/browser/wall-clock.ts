import type { BrowserContext } from 'playwright/test';

/** The zone of every phone of the tests, and of those who write times into a test. */
export const ZONE = 'Europe/Paris';

/** When every test begins, whatever the hour here: a Tuesday afternoon, far from any midnight. */
export const AFTERNOON = Date.parse('2026-11-24T16:30:00+01:00');

/** The same for all phones of one process, and for a phone that is started anew. */
const AHEAD = AFTERNOON - Date.now();

/** What the clocks of the phones show now, in milliseconds since 1970: it goes on as time does. */
export const phoneTime = (): number => Date.now() + AHEAD;

/**
 * Sets the wall clock of every page to come. Nothing else is touched: timers and the steady clock
 * are the browser's own.
 *
 * @returns what takes it away again, for later pages
 */
export const setWallClock = (context: BrowserContext) =>
  context.addInitScript((ahead) => {
    const Here = Date;
    window.Date = class extends Here {
      constructor(...given: unknown[]) {
        if (given.length === 0) super(Here.now() + ahead);
        else super(...(given as [number]));
      }
      static override now = () => Here.now() + ahead;
    } as DateConstructor;
  }, AHEAD);
