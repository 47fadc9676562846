import type { BrowserContext } from 'playwright/test';
import { Coach } from './coach.ts';
import { expect, type Page, test } from './test.ts';

/* Who gives the signs where the app is open in more windows than one. */

declare global {
  interface Window {
    /** The horn's two reeds, each with the second of the audio clock at which it was to begin. */
    reeds: { context: AudioContext; at: number; takenBack: boolean }[];
    buzzes: number;
  }
}

/** The second of the horn's reeds begins and ends with it, and no other call has as long a stroke. */
const listen = (context: BrowserContext) =>
  context.addInitScript(() => {
    window.reeds = [];
    window.buzzes = 0;
    const { start, stop } = OscillatorNode.prototype;
    const given = new Map<OscillatorNode, Window['reeds'][number]>();
    OscillatorNode.prototype.start = function (at = 0) {
      given.set(this, { context: this.context as AudioContext, at, takenBack: false });
      start.call(this, at);
    };
    OscillatorNode.prototype.stop = function (at) {
      const reed = given.get(this);
      if (reed && at === undefined) reed.takenBack = true;
      else if (reed && (at ?? 0) - reed.at > 1) window.reeds.push(reed);
      stop.call(this, at);
    };
    navigator.vibrate = (pattern) => {
      if ([pattern].flat()[0] === 500) window.buzzes += 1;
      return true;
    };
  });

/** How many horns a window gives or has given, and buzzes. */
const heard = (page: Page) =>
  page.evaluate(() => ({
    horns: window.reeds.filter(({ takenBack }) => !takenBack).length / 2,
    buzzes: window.buzzes,
  }));

/** A round of the shortest length on one window, and a second window on the same court. */
async function twoWindows(page: Page, context: BrowserContext): Promise<Page> {
  const coach = new Coach(page);
  await coach.reachCourt(['Pip', 'Juno', 'Odile', 'Bram'], ['Mini rally']);
  await coach.start();
  const other = await context.newPage();
  await other.goto('./#/court');
  await other.locator('.tile').first().waitFor();
  return other;
}

const over = (page: Page) => page.getByRole('button', { name: 'Put counts right' });

test.describe('with two windows that were both touched', () => {
  test.beforeEach(async ({ context }) => {
    await listen(context);
  });

  test('the horn sounds and buzzes once, in the one that was touched last', async ({
    page,
    context,
  }) => {
    await context.clock.install();
    const other = await twoWindows(page, context);
    await expect.poll(() => heard(page)).toEqual({ horns: 1, buzzes: 0 });
    await new Coach(other).mark('Odile');
    await other.clock.runFor(500);
    await page.clock.runFor(500);
    await expect.poll(() => heard(other)).toEqual({ horns: 1, buzzes: 0 });
    await expect.poll(() => heard(page)).toEqual({ horns: 0, buzzes: 0 });
    for (const each of [page, other]) {
      await each.clock.fastForward(130_000);
      await over(each).waitFor();
    }
    expect((await heard(other)).buzzes + (await heard(page)).buzzes).toBe(1);
    expect((await heard(other)).buzzes).toBe(1);
  });

  test('the other takes the horn over where the one that gives it is closed', async ({
    page,
    context,
  }) => {
    const other = await twoWindows(page, context);
    await new Coach(other).mark('Odile');
    await expect.poll(() => heard(page)).toEqual({ horns: 0, buzzes: 0 });
    await other.close();
    await expect.poll(() => heard(page)).toEqual({ horns: 1, buzzes: 0 });
  });

  test('a third that was never touched, as a wall, takes nothing over', async ({
    page,
    context,
  }) => {
    const third = await context.newPage();
    await third.goto('./#/wall');
    await third.locator('.wall').waitFor();
    const other = await twoWindows(page, context);
    await third.goto('./#/court');
    await third.locator('.tile').first().waitFor();
    await new Coach(other).mark('Odile');
    await expect.poll(() => heard(other)).toEqual({ horns: 1, buzzes: 0 });
    await other.close();
    await expect.poll(() => heard(page)).toEqual({ horns: 1, buzzes: 0 });
    expect(await heard(third)).toEqual({ horns: 0, buzzes: 0 });
  });

  test('on a phone without locks the one that was touched last gives the signs too', async ({
    page,
    context,
  }) => {
    await context.addInitScript(() => {
      Object.defineProperty(navigator, 'locks', { value: undefined });
    });
    const other = await twoWindows(page, context);
    await expect.poll(() => heard(page)).toEqual({ horns: 1, buzzes: 0 });
    await new Coach(other).mark('Odile');
    await expect.poll(() => heard(other)).toEqual({ horns: 1, buzzes: 0 });
    await expect.poll(() => heard(page)).toEqual({ horns: 0, buzzes: 0 });
  });
});
