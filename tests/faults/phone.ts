import { mkdtempSync, readlinkSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from '../browser/browser.ts';

/** A browser with a profile folder of its own, which outlives it: as a phone does. */
export class Phone {
  context!: BrowserContext;
  page!: Page;
  readonly profile = mkdtempSync(join(tmpdir(), 'rally-ledger-phone-'));
  #ended: Promise<unknown> = Promise.resolve();

  /** @param address of the app */
  constructor(readonly address: string) {}

  /** Starts the browser and opens the app. */
  async open(before?: (context: BrowserContext) => Promise<unknown>): Promise<Page> {
    this.context = await chromium.launchPersistentContext(this.profile, {
      executablePath: findBrowser(),
      args: BROWSER_ARGUMENTS,
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
      locale: 'en-GB',
      baseURL: this.address,
    });
    this.#ended = new Promise((resolve) => this.context.once('close', resolve));
    await before?.(this.context);
    this.page = this.context.pages()[0] ?? (await this.context.newPage());
    await this.page.goto(this.address);
    return this.page;
  }

  /** The browser's own process, the first of its group: its lock in the profile names it. */
  get pid(): number {
    const lock = readlinkSync(join(this.profile, 'SingletonLock'));
    return Number(lock.slice(lock.lastIndexOf('-') + 1));
  }

  /** Ends all of the browser in the midst of whatever it does. */
  async kill(): Promise<void> {
    process.kill(-this.pid, 'SIGKILL');
    await this.#ended;
  }

  /** Puts the browser to sleep for a while: nothing of it runs, and its clocks go on. */
  async sleep(milliseconds: number): Promise<void> {
    const group = -this.pid;
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
