import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import type { SignTrack } from '../../app/device/sign-track.ts';
import type { keepSigns, unlockSound } from '../../app/device/sound.ts';
import { expect, type Page, test } from './test.ts';

declare global {
  interface Window {
    Track: { SignTrack: typeof SignTrack };
    Sound: { keepSigns: typeof keepSigns; unlockSound: typeof unlockSound };
    contexts: AudioContext[];
    given: { context: BaseAudioContext; at: number }[];
  }
}

/** Gives a page a file of the app, with what it imports, as a global of that name. */
async function give(page: Page, file: string, name: string): Promise<void> {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      lib: {
        entry: fileURLToPath(new URL(`../../app/device/${file}`, import.meta.url)),
        formats: ['iife'],
        name,
      },
    },
  });
  const [bundle] = [built].flat();
  if (!bundle || !('output' in bundle)) throw new Error(`${file} was not built`);
  await page.addScriptTag({ content: bundle.output[0].code });
}

/** An ear is on the horn alone: what sounds in the second before is the last of the five. */
const LENGTH = 40;
const RATE = 8_000;

/**
 * Renders a round of `LENGTH` seconds as a phone would play it. At `taken` seconds of the round the
 * phone takes the sound away and gives it back `away` seconds later: the audio clock stands, the
 * round goes on. The page looks ten times a second by its own clock, which is `late` seconds off
 * at a look, now to one side and now to the other.
 *
 * @returns milliseconds by which each sign that was heard begins after its time
 */
const play = (page: Page, { taken, away, late }: { taken: number; away: number; late: number }) =>
  page.evaluate(
    async ({ taken, away, late, LENGTH, RATE }) => {
      const seconds = Math.max(LENGTH - away, taken + 5) + 2;
      const audio = new OfflineAudioContext(1, seconds * RATE, RATE);
      const track = new window.Track.SignTrack(audio, audio.destination);
      let looks = 0;
      const look = () => {
        const round = audio.currentTime + (audio.currentTime > taken ? away : 0);
        const off = looks++ % 2 === 0 ? late : -late;
        track.keepTo(LENGTH - round, audio.currentTime + off);
      };
      look();
      for (let at = 0.1; at < seconds; at += 0.1) {
        void audio.suspend(at).then(() => {
          look();
          return audio.resume();
        });
      }
      const heard = (await audio.startRendering()).getChannelData(0);

      // A sign begins where there was silence for a hundredth of a second.
      const onsets: number[] = [];
      let silent = RATE;
      for (const [frame, sample] of heard.entries()) {
        if (Math.abs(sample) < 1e-3) silent++;
        else {
          if (silent >= RATE / 100) onsets.push(frame / RATE);
          silent = 0;
        }
      }
      const round = (at: number) => at + (at > taken ? away : 0);
      return onsets.map((onset) => round(onset));
    },
    { taken, away, late, LENGTH, RATE },
  );

/** Seconds of the round at which something begins to sound; the half-minute has two strokes. */
const SIGNS = [10, 10.24, 35, 36, 37, 38, 39, 40];

test.describe('the signs of a round', () => {
  test.beforeEach(async ({ page }) => {
    await give(page, 'sign-track.ts', 'Track');
  });

  for (const [what, how] of Object.entries({
    'on an audio clock that runs through': { taken: LENGTH, away: 0, late: 0 },
    'where the phone took the sound away for seven seconds': { taken: 20, away: 7, late: 0 },
    'where it took it away in the last seconds': { taken: 37.5, away: 1, late: 0 },
    'where the page sees the time four milliseconds wrong': { taken: LENGTH, away: 0, late: 0.004 },
    'where it was taken away and the time is seen wrong': { taken: 20, away: 7, late: 0.004 },
  })) {
    test(`fall within 10 ms of their time, the horn with the round's end, ${what}`, async ({
      page,
    }) => {
      const onsets = await play(page, how);
      const due = SIGNS.filter((at) => at <= how.taken || at >= how.taken + how.away);
      expect(onsets).toHaveLength(due.length);
      for (const [index, onset] of onsets.entries()) {
        expect(Math.abs(onset - (due[index] ?? 0))).toBeLessThan(0.01);
      }
    });
  }

  test('that the phone would give too late to be true are left out', async ({ page }) => {
    const onsets = await play(page, { taken: 36.5, away: 30, late: 0 });
    expect(onsets.filter((at) => at > 36.5)).toEqual([]);
    expect(onsets).toHaveLength(4);
  });

  test('are silent in a pause, and a sign that sounds already may end', async ({ page }) => {
    const loud = await page.evaluate(async () => {
      const audio = new OfflineAudioContext(1, 16_000, 8_000);
      const track = new window.Track.SignTrack(audio, audio.destination);
      track.keepTo(1.5, 0); // The last second at 0.5 s, the horn at 1.5 s.
      void audio.suspend(0.53).then(() => {
        track.hush();
        return audio.resume();
      });
      const heard = (await audio.startRendering()).getChannelData(0);
      const peak = (from: number, to: number) =>
        heard.subarray(from * 8_000, to * 8_000).reduce((most, x) => Math.max(most, x), 0);
      return { before: peak(0, 0.49), stroke: peak(0.54, 0.58), horn: peak(0.7, 2) };
    });
    expect(loud.before).toBe(0);
    expect(loud.stroke).toBeGreaterThan(0.05);
    expect(loud.horn).toBe(0);
  });
});

test.describe('a phone that takes the sound away', () => {
  /** Follows a round of a minute for `ms`, as a court screen does, and sees what sounds were given. */
  const follow = (page: Page, ms: number) =>
    page.evaluate(async (ms) => {
      const begun = performance.now();
      const left = () => 60 - (performance.now() - begun) / 1000;
      window.Sound.unlockSound();
      while (performance.now() - begun < ms) {
        window.Sound.keepSigns(left());
        await new Promise((next) => setTimeout(next, 50));
      }
      const context = window.contexts.at(-1) as AudioContext;
      const given = window.given.filter((each) => each.context === context);
      return {
        contexts: window.contexts.length,
        // The horn is given last.
        off: (given.at(-1)?.at ?? Number.NaN) - (context.currentTime + left()),
      };
    }, ms);

  test.beforeEach(async ({ page }) => {
    await page.setContent('<button>A page that may sound</button>');
    await page.evaluate(() => {
      window.contexts = [];
      window.given = [];
      const own = window.AudioContext;
      window.AudioContext = class extends own {
        constructor() {
          super();
          window.contexts.push(this);
        }
      };
      const start = OscillatorNode.prototype.start;
      OscillatorNode.prototype.start = function (at = 0) {
        window.given.push({ context: this.context, at });
        start.call(this, at);
      };
    });
    await give(page, 'sound.ts', 'Sound');
    await page.getByRole('button').click();
  });

  test('is asked to give it back, and the horn is where it was', async ({ page }) => {
    await follow(page, 500);
    await page.evaluate(() => window.contexts[0]?.suspend());
    // For a while nobody looks.
    await page.evaluate(async () => {
      const since = performance.now();
      while (performance.now() - since < 700) await new Promise((next) => setTimeout(next, 50));
      window.given = [];
    });
    const { contexts, off } = await follow(page, 3_000);
    expect(contexts).toBe(1);
    expect(Math.abs(off)).toBeLessThan(0.1);
  });

  test('and whose audio clock stands still gets a new one, with the horn in its place', async ({
    page,
  }) => {
    await follow(page, 500);
    await page.evaluate(() => {
      const [context] = window.contexts;
      const stood = context?.currentTime;
      Object.defineProperty(context, 'currentTime', { get: () => stood });
      window.given = [];
    });
    const { contexts, off } = await follow(page, 3_000);
    expect(contexts).toBe(2);
    expect(Math.abs(off)).toBeLessThan(0.1);
  });
});
