import { Coach } from './coach.ts';
import { expect, type Page, test } from './test.ts';

/* What the phone does at the court: its lock, its voice, and what it says where it has neither. */

declare global {
  interface Window {
    locks: (EventTarget & { released: boolean })[];
    said: string[];
  }
}

const PLAYERS = ['Pip', 'Juno', 'Odile', 'Bram'];

/** A phone that keeps its screen on for a page, or refuses to. */
const wakeLock = (page: Page, grants: boolean) =>
  page.addInitScript((grants) => {
    window.locks = [];
    const request = async () => {
      if (!grants) throw new DOMException('low battery', 'NotAllowedError');
      const lock = Object.assign(new EventTarget(), {
        released: false,
        async release() {
          lock.released = true;
          lock.dispatchEvent(new Event('release'));
        },
      });
      window.locks.push(lock);
      return lock;
    };
    Object.defineProperty(Navigator.prototype, 'wakeLock', { get: () => ({ request }) });
  }, grants);

const held = (page: Page) =>
  page.evaluate(() => window.locks.filter((lock) => !lock.released).length);

/** A phone with one voice, that writes down what it says. */
const voice = (page: Page, localService: boolean) =>
  page.addInitScript((localService) => {
    window.said = [];
    const synthesis = window.speechSynthesis;
    synthesis.getVoices = () => [
      { name: 'Own', lang: 'en-GB', voiceURI: 'own', localService, default: true },
    ];
    synthesis.speak = ({ text }) => window.said.push(text);
    window.SpeechSynthesisUtterance = class {
      constructor(readonly text: string) {}
    } as typeof SpeechSynthesisUtterance;
  }, localService);

test('the screen is kept on from Start to the horn, asked for again when the page is seen, and let go after it', async ({
  page,
}) => {
  await page.clock.install({ time: new Date('2026-11-24T16:30:00') });
  await wakeLock(page, true);
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await expect(page.getByText(/keep its screen on/)).toHaveCount(0);
  expect(await held(page)).toBe(0);
  await coach.start();
  await expect.poll(() => held(page)).toBe(1);

  // The phone takes the lock from a page that is hidden.
  await page.evaluate(() => {
    window.locks.at(-1)?.dispatchEvent(new Event('release'));
    Object.assign(window.locks.at(-1) ?? {}, { released: true });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await expect.poll(() => held(page)).toBe(1);

  await page.clock.fastForward(121_000);
  await expect(coach.button('Put counts right')).toBeVisible();
  await expect.poll(() => held(page)).toBe(0);
});

test('a phone that refuses to keep its screen on is known before the Start, and the round can be played', async ({
  page,
}) => {
  await wakeLock(page, false);
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await expect(page.getByText(/does not want to keep its screen on/)).toBeVisible();
  await coach.start();
  await coach.mark('Pip');
  await expect(coach.tile('Pip')).toHaveAccessibleName(/\b1 set\b/);
});

test('a phone that cannot keep its screen on says so before the Start', async ({ page }) => {
  await page.addInitScript(() => {
    Reflect.deleteProperty(Navigator.prototype, 'wakeLock');
  });
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await expect(page.getByText(/can’t keep its screen on/)).toBeVisible();
});

test('the next pairs are said by a button, and by themselves where that was wished for', async ({
  page,
}) => {
  await voice(page, true);
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  const pairs = await page.locator('.pairs li').all();
  const names = await Promise.all(
    pairs.map((pair) => pair.locator('.pair-player .pair-call').allTextContents()),
  );
  expect(names.flat().toSorted()).toEqual(PLAYERS.toSorted());
  const text = `A: ${names[0]?.join(' and ')}. B: ${names[1]?.join(' and ')}.`;
  expect(await page.evaluate(() => window.said)).toEqual([]);
  await coach.button('Call out the pairs').tap();
  expect(await page.evaluate(() => window.said)).toEqual([text]);

  await coach.visit('settings');
  await page.getByLabel('Call out the next pairs').tap();
  await coach.visit('court');
  await expect.poll(() => page.evaluate(() => window.said)).toEqual([text, text]);
});

test('a voice that needs a network is not used, and Settings says that there is none', async ({
  page,
}) => {
  await voice(page, false);
  const coach = new Coach(page);
  await coach.reachCourt(PLAYERS, ['Mini rally']);
  await expect(coach.button('Call out the pairs')).toHaveCount(0);
  await coach.visit('settings');
  await expect(page.getByText(/has no voice of its own/)).toBeVisible();
});
