import { en } from '../../app/words/en.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { recordsOn } from '../faults/records.ts';
import { Coach } from './coach.ts';
import { openPractised, playerId } from './played-practice.ts';
import { expect, type Page, test } from './test.ts';

/* What comes late moves nothing from under a finger. */

const SQUAD = {
  names: ['Pip', 'Juno', 'Odile', 'Bram'],
  drills: ['half-court-rally', 'lob-and-overhead'],
  daysBefore: [23, 20, 17, 14, 11, 8, 4, 1.1],
};

/** Two pairs in each round of it. */
const TALLIES = 2 * SQUAD.drills.length * SQUAD.daysBefore.length;

/** Every screen that shows something of earlier practices and opens before they were read. */
const ADDRESSES = [
  '',
  'block',
  'coverage',
  'evening',
  'glance',
  'neglected',
  'numbers',
  `player/${playerId(0)}`,
  'players',
  'propose',
  `review/${playerId(0)}`,
  'week',
];

/** Lists of figures that grow where they say that some are still being worked out. */
const GROW = ['numbers', `review/${playerId(0)}`];

/** Holds the reading of what is packed, and whatever waits for an idle moment, until each is let go. */
async function hold(page: Page) {
  let read = () => {};
  const reading = new Promise<void>((resolve) => {
    read = resolve;
  });
  await page.route('**/packs-*.js', async (route) => {
    await reading;
    await route.continue();
  });
  await page.addInitScript(() => {
    const waiting: IdleRequestCallback[] = [];
    const idle = window.requestIdleCallback.bind(window);
    window.requestIdleCallback = (deed) => waiting.push(deed);
    const letWork = () => {
      window.requestIdleCallback = idle;
      for (const deed of waiting.splice(0)) idle(deed);
    };
    Object.assign(window, { letWork });
  });
  return {
    read,
    workOut: () => page.evaluate(() => (window as unknown as { letWork(): void }).letWork()),
  };
}

/** Remembers how far down everything in sight stands that can be touched. */
const remember = (page: Page) =>
  page.evaluate(() => {
    const all = [...document.querySelectorAll('main :is(a, button, input, select, textarea)')];
    const inSight = all
      .map((each) => [each, each.getBoundingClientRect()] as const)
      .filter(([, { height, top, bottom }]) => height > 0 && top >= 0 && bottom <= innerHeight);
    Object.assign(window, { remembered: inSight.map(([each, { top }]) => [each, top]) });
  });

/** What of it is still there and stands elsewhere. */
const moved = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    (window as unknown as { remembered: [Element, number][] }).remembered
      .map(([each, before]) => ({ each, before, top: each.getBoundingClientRect().top }))
      .filter(({ each, before, top }) => each.isConnected && Math.abs(top - before) > 1)
      .map(({ each, before, top }) => `${each.outerHTML}, from ${before} to ${top}`),
  );

/** The tallies of the packed practices, as they lie on the disk. */
const tallies = async (page: Page) =>
  (await recordsOn(page))
    .filter(([key]) => key.startsWith('i/'))
    .flatMap(([, summary]) => (summary as unknown as Summary).rounds)
    .flatMap((round) => round.tallies);

for (const address of ADDRESSES) {
  test(`nothing on #/${address} moves from under a finger as the past comes in`, async ({
    page,
  }) => {
    const held = await hold(page);
    await openPractised(page, SQUAD, address);
    await new Coach(page).visit(address);
    await remember(page);
    held.read();
    await expect.poll(async () => (await tallies(page)).length).toBe(TALLIES);
    await expect(page.getByText(en.reading)).toHaveCount(0);
    expect(await moved(page)).toEqual([]);
    if (GROW.includes(address)) return;
    await remember(page);
    await held.workOut();
    const workedOut = async () => (await tallies(page)).filter(({ estimate }) => estimate).length;
    await expect.poll(workedOut).toBe(TALLIES);
    expect(await moved(page)).toEqual([]);
  });
}
