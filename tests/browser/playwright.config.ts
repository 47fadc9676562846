import { fileURLToPath } from 'node:url';
import { defineConfig } from 'playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from './browser.ts';
import { ZONE } from './wall-clock.ts';

// A time that a test writes down is a time where the phone is.
process.env.TZ = ZONE;

const root = fileURLToPath(new URL('../..', import.meta.url));
const SEASON = ['everybody-season.test.ts', 'five-questions.test.ts'];

const port = Number(process.env.PORT ?? 4187);

/** A phone of ordinary size, with touch. */
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

export default defineConfig({
  testDir: '.',
  outputDir: `${root}/.cache/browser-tests`,
  timeout: 300_000,
  expect: { timeout: 20_000 },
  projects: [
    { name: 'demo', testMatch: 'demo-season.setup.ts' },
    // What looks at the invented season finds it worked out; the longest begins first.
    { name: 'figures', testMatch: 'figures.test.ts', dependencies: ['demo'] },
    { name: 'season', testMatch: SEASON, dependencies: ['demo'] },
    { name: 'app', testIgnore: ['figures.test.ts', ...SEASON] },
  ],
  fullyParallel: true,
  workers: 3,
  reporter: [['list'], ['json', { outputFile: `${root}/.cache/browser-tests.json` }]],
  use: {
    // A press that finds nothing says so soon, however busy the machine.
    actionTimeout: 60_000,
    // Put in anew for every test, the service worker costs a third of it; those that are about it allow it.
    serviceWorkers: 'block',
    ...phone,
    baseURL: `http://localhost:${port}/`,
    locale: 'en-GB',
    timezoneId: ZONE,
    launchOptions: { executablePath: findBrowser(), args: BROWSER_ARGUMENTS },
  },
  webServer: {
    command: `npx vite preview --config app/vite.config.ts --port ${port} --strictPort`,
    cwd: root,
    url: `http://localhost:${port}/`,
    reuseExistingServer: false,
  },
});
