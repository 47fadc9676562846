import type { Page } from 'playwright/test';
import { termsOf } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import type { Saying } from '../../core/ledger/entry.ts';
import { Coach } from '../browser/coach.ts';
import { Pen, plantEntries } from '../browser/seed.ts';

export const PLAYERS = ['Pip', 'Juno', 'Odile', 'Bram'];
/** The first words of a practice with the four of them, and what it plays. */
const DRILL = starterDrills[0];

/** What is said until a round of ten minutes with two pairs waits for its Start. */
export function sayingsBefore(practice: string, date: string, rounds = 1): Saying[] {
  if (!DRILL) throw new Error('no drill came with the app');
  const plan = {
    steps: [{ drill: DRILL.id, rounds, partners: 'keep' as const }],
    seconds: 600,
    changeover: 45,
  };
  return [
    { kind: 'practice-opened', practice, date },
    ...PLAYERS.map((player) => ({ kind: 'player-came' as const, practice, player })),
    { kind: 'block-planned', practice, plan },
    {
      kind: 'round-set',
      practice,
      round: `${practice}-1`,
      ordinal: 0,
      terms: termsOf(DRILL),
      seconds: 600,
      pairs: [
        { letter: 'A', players: PLAYERS.slice(0, 2) },
        { letter: 'B', players: PLAYERS.slice(2) },
      ],
    },
  ];
}

export const squadSayings: Saying[] = PLAYERS.map((name) => ({
  kind: 'player-added',
  player: name,
  name,
}));

/** The date there, as the phone has it. */
export const dateOn = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const two = (value: number) => String(value).padStart(2, '0');
    const now = new Date();
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  });

/** From an app that is open and empty to a running round of ten minutes, with two pairs. */
export async function startLongRound(page: Page, rounds = 1): Promise<Coach> {
  await page.getByRole('heading', { level: 1 }).waitFor();
  const pen = new Pen((await page.evaluate(() => Date.now())) - 60_000);
  pen.write(...squadSayings, ...sayingsBefore('today', await dateOn(page), rounds));
  await plantEntries(page, pen.entries);
  await page.goto('./#/court');
  await page.reload();
  const coach = new Coach(page);
  await coach.start();
  return coach;
}

/** Seconds that the screen shows as left. */
export async function secondsLeft(page: Page): Promise<number> {
  const text = (await page.getByRole('timer').textContent()) ?? '';
  const [minutes = 0, seconds = 0] = text.split(':').map(Number);
  return 60 * minutes + seconds;
}

/**
 * What the page shows and its clocks at one moment: seconds left on the screen, the wall clock, and
 * the steady one, which goes on over a reload, both in milliseconds.
 */
export const clocksOf = (page: Page): Promise<{ left: number; wall: number; steady: number }> =>
  page.evaluate(() => {
    const text = document.querySelector('[role=timer]')?.textContent ?? '';
    const [minutes = Number.NaN, seconds = Number.NaN] = text.split(':').map(Number);
    return {
      left: 60 * minutes + seconds,
      wall: Date.now(),
      steady: performance.timeOrigin + performance.now(),
    };
  });

/** How many seconds the screen is away from a start by the wall clock, in a round of ten minutes. */
export async function offFrom(page: Page, start: number): Promise<number> {
  const { left, wall } = await clocksOf(page);
  return Math.abs(600 - (wall - start) / 1000 - left);
}

/** The sets that the tile of that number shows. */
export const setsShown = async (page: Page, tile: number): Promise<number> =>
  Number.parseInt((await page.locator('.tile-sets').nth(tile).textContent()) ?? '', 10);

/** What a tapping page has told so far. */
export interface Taps {
  tapped: number;
  /** The most sets that each tile has shown together with the sign that they are saved. */
  saved: number[];
}

/**
 * Lets the page tap its own tiles, every 5 to 60 ms, and tell of every tap before it is made and of
 * every count that a tile shows as saved. It goes on until the page is gone, or it has made `most`.
 */
export async function tapOnAndOn(page: Page, taps: Taps, most = Infinity): Promise<void> {
  await page.exposeFunction('tapped', () => {
    taps.tapped += 1;
  });
  await page.exposeFunction('sawSaved', (tile: number, sets: number) => {
    taps.saved[tile] = Math.max(taps.saved[tile] ?? 0, sets);
  });
  await page.evaluate((most) => {
    const told = window as unknown as {
      tapped(): Promise<void>;
      sawSaved(tile: number, sets: number): Promise<void>;
    };
    const seen: number[] = [];
    const look = () => {
      for (const [index, tile] of document.querySelectorAll('.tile').entries()) {
        if (!tile.querySelector('.tile-saved[data-saved="true"]')) continue;
        const shown = Number.parseInt(tile.querySelector('.tile-sets')?.textContent ?? '', 10);
        // To tell costs more than to tap: only what is new is told.
        if (shown <= (seen[index] ?? -1)) continue;
        seen[index] = shown;
        void told.sawSaved(index, shown);
      }
    };
    new MutationObserver(look).observe(document.body, {
      subtree: true,
      childList: true,
      characterData: true,
      attributes: true,
    });
    let made = 0;
    const tap = async () => {
      await told.tapped();
      const tiles = document.querySelectorAll('.tile-count');
      tiles[Math.floor(Math.random() * tiles.length)]?.dispatchEvent(
        new PointerEvent('pointerdown', { bubbles: true, button: 0 }),
      );
      made += 1;
      if (made < most) setTimeout(tap, 5 + 55 * Math.random());
    };
    void tap();
  }, most);
}
