import { BROWSER_ARGUMENTS, wholeBrowser } from '../browser/browser.ts';
import base from '../browser/playwright.config.ts';

const { projects: _, ...shared } = base;

/** Pictures of every screen, made by the app itself: `npm run pictures`, after a build. */
export default {
  ...shared,
  testDir: '.',
  testMatch: '*.picture.ts',
  reporter: [['list']],
  timeout: 300_000,
  use: {
    ...base.use,
    // One that keeps the screen on when it is asked to, as phones do.
    launchOptions: { executablePath: wholeBrowser(), args: BROWSER_ARGUMENTS },
  },
};
