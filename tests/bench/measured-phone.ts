import {
  type Browser,
  type BrowserContext,
  type CDPSession,
  chromium,
  type Page,
} from 'playwright/test';
import { BROWSER_ARGUMENTS, findBrowser } from '../browser/browser.ts';
import { plantEntries } from '../browser/seed.ts';
import { dateOn } from '../faults/court.ts';
import { Host } from '../faults/served.ts';
import { bareSite } from './bare-site.ts';
import { courtEntries } from './court-entries.ts';

/** A page at a phone's size, whose processor can be slowed. */
export interface MeasuredPage {
  page: Page;
  session: CDPSession;
}

/** One browser, and one host that serves the app and the bare page beside it. */
export class Bench {
  private constructor(
    readonly host: Host,
    readonly browser: Browser,
  ) {}

  static async start(): Promise<Bench> {
    const host = await Host.of(bareSite());
    const browser = await chromium.launch({
      executablePath: findBrowser(),
      args: [...BROWSER_ARGUMENTS, '--js-flags=--expose-gc'],
    });
    return new Bench(host, browser);
  }

  async end(): Promise<void> {
    await this.browser.close();
    await this.host.close();
  }

  /** A phone of its own, with nothing stored. */
  async phone(worker: 'allow' | 'block' = 'block'): Promise<BrowserContext> {
    const phone = await this.browser.newContext({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
      locale: 'en-GB',
      serviceWorkers: worker,
      baseURL: this.host.address,
    });
    await phone.addInitScript(() => {
      window.behindFrame = (work) =>
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => work();
          port2.postMessage(0);
        });
    });
    return phone;
  }

  async open(address: string, phone?: BrowserContext): Promise<MeasuredPage> {
    const context = phone ?? (await this.phone());
    const page = await context.newPage();
    page.setDefaultTimeout(600_000);
    await page.goto(address);
    return { page, session: await context.newCDPSession(page) };
  }

  /** The app on the court, in round number `rounds` of a practice, with what else is stored. */
  async court({
    rounds = 1,
    marks = 0,
    planned = rounds + 1,
    phone,
  }: {
    rounds?: number;
    marks?: number;
    planned?: number;
    phone?: BrowserContext;
  } = {}): Promise<MeasuredPage> {
    const opened = await this.open('./', phone);
    const { page } = opened;
    await page.getByRole('heading', { level: 1 }).waitFor();
    const at = await page.evaluate(() => Date.now());
    await plantEntries(page, courtEntries(at, await dateOn(page), { rounds, marks, planned }));
    await page.goto('./#/court');
    await page.reload();
    await page.locator('.tile-count').first().waitFor();
    await page.waitForTimeout(SETTLE_MS);
    return opened;
  }
}

declare global {
  /** On every page of a measured phone. */
  interface Window {
    /** Does a work in the first task behind the next frame: what stands in the page now can be seen by then. */
    behindFrame(work: () => void): void;
  }
}

/** What an opening does behind the screen is done by then. */
export const SETTLE_MS = 3_000;

/** Lets the processor of these pages run so many times slower. */
export const slow = (rate: number, ...pages: readonly MeasuredPage[]): Promise<unknown> =>
  Promise.all(pages.map(({ session }) => session.send('Emulation.setCPUThrottlingRate', { rate })));
