import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from '../browser/browser.ts';
import { setWallClock, ZONE } from '../browser/wall-clock.ts';

/** A browser with a profile folder of its own, which outlives it: as a phone does. */
export class Phone {
  context!: BrowserContext;
  page!: Page;
  readonly profile = mkdtempSync(join(tmpdir(), 'rally-ledger-phone-'));
  /** The browser's own process, the first of its group. */
  #pid = 0;
  #ended: Promise<unknown> = Promise.resolve();

  /**
   * @param address of the app
   * @param browser that is used instead of the one for tests
   */
  constructor(
    readonly address: string,
    public browser: string = findBrowser(),
  ) {}

  /** Starts the browser and opens the app. */
  async open(before?: (context: BrowserContext) => Promise<unknown>): Promise<Page> {
    this.context = await chromium.launchPersistentContext(this.profile, {
      executablePath: this.browser,
      args: BROWSER_ARGUMENTS,
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
      locale: 'en-GB',
      timezoneId: ZONE,
      baseURL: this.address,
    });
    this.#ended = new Promise((resolve) => this.context.once('close', resolve));
    this.#pid = await pidOf(this.context);
    await setWallClock(this.context);
    await before?.(this.context);
    this.page = this.context.pages()[0] ?? (await this.context.newPage());
    await this.page.goto(this.address);
    return this.page;
  }

  /** Ends all of the browser in the midst of whatever it does. */
  async kill(): Promise<void> {
    process.kill(-this.#pid, 'SIGKILL');
    await this.#ended;
  }

  /** Puts the browser to sleep for a while: nothing of it runs, and its clocks go on. */
  async sleep(milliseconds: number): Promise<void> {
    const group = -this.#pid;
    process.kill(group, 'SIGSTOP');
    await new Promise((resolve) => setTimeout(resolve, milliseconds));
    process.kill(group, 'SIGCONT');
  }

  async close(): Promise<void> {
    await this.context.close().catch(() => {});
  }

  /** Closes the browser and removes its profile. */
  async discard(): Promise<void> {
    await this.close();
    rmSync(this.profile, { recursive: true, force: true, maxRetries: 5 });
  }
}

async function pidOf(context: BrowserContext): Promise<number> {
  const session = await context.browser()?.newBrowserCDPSession();
  const { processInfo = [] } = (await session?.send('SystemInfo.getProcessInfo')) ?? {};
  const own = processInfo.find(({ type }) => type === 'browser');
  if (!own) throw new Error('the browser does not name its process');
  return own.id;
}
