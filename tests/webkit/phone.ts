import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  Builder,
  By,
  Capabilities,
  error,
  Key,
  until,
  type WebDriver,
  type WebElement,
} from 'selenium-webdriver';
import type { Engine } from './engine.ts';

/** How long the page may take to show what a step waits for, in milliseconds. */
const LIMIT_MS = 20_000;

/** A phone with WebKit in the hands of a coach: what there is to see, and what to tap. */
export class Phone {
  private constructor(
    readonly driver: WebDriver,
    private readonly engine: Engine,
  ) {}

  /**
   * A phone that knows nothing of an earlier one, 390 by 844 pixels, and silent until it is tapped.
   * Without `storage` the engine gives pages none.
   */
  static async open(engine: Engine, { storage = true } = {}): Promise<Phone> {
    for (const file of readdirSync(engine.downloads)) rmSync(join(engine.downloads, file));
    const driver = await new Builder()
      .disableEnvironmentOverrides()
      .usingServer(engine.driver)
      .withCapabilities(
        new Capabilities({
          browserName: 'MiniBrowser',
          'webkitgtk:browserOptions': {
            args: [
              '--automation',
              '--autoplay-policy=deny',
              '--javascript-can-open-windows-automatically=true',
              ...(storage
                ? []
                : ['--enable-html5-local-storage=false', '--enable-html5-database=false']),
            ],
          },
        }),
      )
      .build();
    // A window with tool bars does not become as narrow as a phone; one that a page opens has none.
    const first = await driver.getWindowHandle();
    await driver.executeScript(`open('about:blank', '', 'popup,width=390,height=844')`);
    const handles = () => driver.getAllWindowHandles();
    await driver.wait(async () => (await handles()).length === 2, LIMIT_MS);
    const second = (await handles()).find((handle) => handle !== first);
    await driver.switchTo().window(second ?? first);
    await driver.manage().window().setRect({ x: 0, y: 0, width: 390, height: 844 });
    return new Phone(driver, engine);
  }

  close(): Promise<void> {
    return this.driver.quit();
  }

  async visit(address: string): Promise<void> {
    await this.driver.get(address);
    await this.see('h1');
  }

  async reload(): Promise<void> {
    await this.driver.navigate().refresh();
    await this.see('h1, [role=timer]');
  }

  /** Waits until the page opens without a network. */
  async workerIsInCharge(): Promise<void> {
    const inCharge = () => this.run<boolean>('return navigator.serviceWorker.controller !== null');
    await this.driver.wait(inCharge, LIMIT_MS, 'no service worker took charge');
  }

  /** The first element of a CSS selector, once there is one; `after` so many milliseconds more. */
  async see(selector: string, after = 0): Promise<WebElement> {
    const condition = until.elementLocated(By.css(selector));
    try {
      return await this.driver.wait(condition, LIMIT_MS + after);
    } catch (error) {
      const there = await this.text('body');
      throw new Error(`${selector} is not there, but: ${there}`, { cause: error });
    }
  }

  /** The text in the first element of a selector; nothing where there is none. */
  text(selector: string): Promise<string> {
    // The driver's own reading leaves out what `overflow: hidden` could cut.
    return this.run(`return document.querySelector(arguments[0])?.innerText ?? ''`, selector);
  }

  /** Waits until that text holds another one. */
  async reads(selector: string, text: string): Promise<void> {
    let there = '';
    const holds = async () => {
      there = await this.text(selector);
      return there.includes(text);
    };
    try {
      await this.driver.wait(holds, LIMIT_MS);
    } catch (cause) {
      throw new Error(`“${text}” did not come in ${selector}, which reads “${there}”`, { cause });
    }
  }

  /** Taps a button, a link or what unfolds, by its name; a name that ends in `…` may go on. */
  tap(name: string): Promise<void> {
    return this.tapAt(By.xpath(`//*[${named(name)}]`), name);
  }

  /** Taps an element as soon as it can be tapped. */
  async tapAt(place: By, what = String(place)): Promise<void> {
    await this.driver.wait(() => this.#taps(place), LIMIT_MS, `${what} could not be tapped`);
  }

  /** Taps each of the controls that can be tapped, again and again, until there is a selector's element. */
  async tapUntil(selector: string, ...names: string[]): Promise<void> {
    const isThere = async () => {
      for (const name of names) await this.#taps(By.xpath(`//*[${named(name)}]`));
      return this.run<boolean>('return document.querySelector(arguments[0]) !== null', selector);
    };
    await this.driver.wait(isThere, LIMIT_MS, `${selector} did not come`);
  }

  /** Whether the element could be tapped now, and was. */
  async #taps(place: By): Promise<boolean> {
    try {
      const element = await this.driver.findElement(place);
      await this.run('arguments[0].scrollIntoView({ block: "center" })', element);
      if (!(await element.isEnabled())) return false;
      await element.click();
      return true;
    } catch (fault) {
      if (NOT_YET.some((kind) => fault instanceof kind)) return false;
      throw fault;
    }
  }

  /** Types into a field and presses Enter. */
  async enter(selector: string, text: string): Promise<void> {
    await (await this.see(selector)).sendKeys(text, Key.ENTER);
  }

  /** Runs a script in the page: no tap, so nothing that needs one is allowed to it. */
  run<T>(script: string, ...given: unknown[]): Promise<T> {
    return this.driver.executeScript<T>(script, ...given);
  }

  /** The text of a file that the page saved, once it is there. */
  async download(name: RegExp): Promise<string> {
    const { downloads } = this.engine;
    const find = () => readdirSync(downloads).find((file) => name.test(file));
    const found = await this.driver.wait(async () => find() ?? '', LIMIT_MS, `no file ${name}`);
    return readFileSync(join(downloads, found), 'utf8');
  }

  /** Puts a picture of the screen where it can be looked at. */
  async picture(name: string): Promise<void> {
    const file = new URL(`../../.cache/webkit/${name}.png`, import.meta.url);
    writeFileSync(fileURLToPath(file), await this.driver.takeScreenshot(), 'base64');
  }
}

/** What a click meets on a page that is still changing. */
const NOT_YET = [
  error.NoSuchElementError,
  error.StaleElementReferenceError,
  error.ElementClickInterceptedError,
  error.ElementNotInteractableError,
];

/** The condition that an element is a control of this name. */
function named(name: string): string {
  const is = (what: string) =>
    name.endsWith('…') ? `starts-with(${what}, "${name.slice(0, -1)}")` : `${what} = "${name}"`;
  const own = `@aria-label and ${is('@aria-label')}`;
  const told = `not(@aria-label) and ${is('normalize-space()')}`;
  return `(self::button or self::a or self::summary) and ((${own}) or (${told}))`;
}
