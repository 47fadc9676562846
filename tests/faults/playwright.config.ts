import { fileURLToPath } from 'node:url';
import { defineConfig } from 'playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from '../browser/browser.ts';
import { ZONE } from '../browser/wall-clock.ts';

// A time that a test writes down is a time where the phone is.
process.env.TZ = ZONE;

const root = fileURLToPath(new URL('../..', import.meta.url));
const large = process.env.FAULTS === 'large';

export default defineConfig({
  testDir: '.',
  outputDir: `${root}/.cache/fault-tests`,
  timeout: large ? 3_600_000 : 240_000,
  expect: { timeout: 20_000 },
  fullyParallel: true,
  workers: 3,
  reporter: [['list'], ['json', { outputFile: `${root}/.cache/fault-tests.json` }], ['./table.ts']],
  use: {
    // A press that finds nothing says so soon, however busy the machine.
    actionTimeout: 60_000,
    // As with the browser tests: those that are about it allow it.
    serviceWorkers: 'block',
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    locale: 'en-GB',
    timezoneId: ZONE,
    launchOptions: { executablePath: findBrowser(), args: BROWSER_ARGUMENTS },
  },
});
