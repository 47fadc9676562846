import { fileURLToPath } from 'node:url';
import { defineConfig } from 'playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from '../browser/browser.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const large = process.env.FAULTS === 'large';

export default defineConfig({
  testDir: '.',
  outputDir: `${root}/.cache/fault-tests`,
  timeout: large ? 3_600_000 : 240_000,
  expect: { timeout: 20_000 },
  // A busy machine can be slower than any wait: such a test is done once more, and named as flaky.
  retries: 1,
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
    timezoneId: 'Europe/Paris',
    launchOptions: { executablePath: findBrowser(), args: BROWSER_ARGUMENTS },
  },
});
