import { test as base } from 'playwright/test';
import { AFTERNOON, setWallClock } from './wall-clock.ts';

/** On a phone whose clock shows an afternoon, at any hour here. */
export const test = base.extend({
  context: async ({ context }, use) => {
    const own = await setWallClock(context);
    // One clock only: a test's own takes the place of this one, before there is a page to see both.
    const { clock } = context;
    const install = clock.install.bind(clock);
    clock.install = async (options) => {
      if (context.pages().some((page) => page.url() !== 'about:blank')) {
        throw new Error('A clock is installed before the page is opened');
      }
      await own.dispose();
      await install({ time: AFTERNOON, ...options });
    };
    await use(context);
  },
});

export { type CDPSession, expect, type Locator, type Page } from 'playwright/test';
