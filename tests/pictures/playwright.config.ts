import base from '../browser/playwright.config.ts';

/** Pictures of every screen, made by the app itself: `npm run pictures`, after a build. */
export default {
  ...base,
  testDir: '.',
  testMatch: '*.picture.ts',
  reporter: [['list']],
  timeout: 300_000,
};
