import { readFileSync } from 'node:fs';
import papaparse from 'papaparse';
import { Coach } from './coach.ts';
import { expect, type Page, test } from './test.ts';

/*
 * The whole job from an empty app, on a faked clock: eleven names in, a block of five drills, taps,
 * take-backs, a trio, a late arrival, settle; then the player's page, the week and its table, which
 * is read back by another library and held against a count that this test kept by itself.
 */

const SQUAD = `level,name,hand
6,Pip,right
5,Juno,left
7,Odile,right
4,Bram,right
6,Suki,right
5,Teo,left
8,Wren,right
3,Ines,right
6,Kofi,right
5,Lars,right
7,Mila,right
`;
const NAMES = [
  'Pip',
  'Juno',
  'Odile',
  'Bram',
  'Suki',
  'Teo',
  'Wren',
  'Ines',
  'Kofi',
  'Lars',
  'Mila',
];
const LATE = 'Mila';

/**
 * The drills of the block and what one set of each asks of its two roles, written down here by
 * hand from the words of the drills, so that the app is not its own witness.
 */
const BLOCK = [
  { name: 'Mini rally', each: [5, 5] },
  { name: 'Soft volleys', each: [10, 10] },
  { name: 'Lob and overhead', each: [1, 1] },
  { name: 'Serve, return, next shot', each: [2, 1] },
  { name: 'Wide past the markers', each: [1, 1], onTarget: true },
] as const;

interface Own {
  sets: number;
  touches: number;
  seconds: number;
}

/** What each player did in a round of `seconds`, from the sets that this test tapped. */
function countByHand(
  round: (typeof BLOCK)[number],
  pairs: string[][],
  sets: Map<string, number>,
  seconds: number,
): Map<string, Own> {
  const own = new Map<string, Own>();
  for (const players of pairs) {
    for (const player of players) {
      own.set(player, { sets: 0, touches: 0, seconds: (seconds * 2) / players.length });
    }
    if ('onTarget' in round) {
      for (const player of players) {
        const on = own.get(player) as Own;
        on.sets = sets.get(player) ?? 0;
        on.touches = on.sets;
      }
      continue;
    }
    // In a trio the one who hit first steps out after each set, and who rested steps in.
    let [first = '', second = '', resting] = players;
    for (let set = 0; set < (sets.get(players[0] ?? '') ?? 0); set++) {
      for (const [role, player] of [first, second].entries()) {
        const on = own.get(player) as Own;
        on.sets += 1;
        on.touches += round.each[role] ?? 0;
      }
      if (resting !== undefined) [first, second, resting] = [second, resting, first];
    }
  }
  return own;
}

type Block = readonly (typeof BLOCK)[number][];

async function playBlock(page: Page, block: Block): Promise<Map<string, Own>[]> {
  const coach = new Coach(page);
  const played: Map<string, Own>[] = [];
  await coach.button('Go to the court').tap();
  for (const [number, round] of block.entries()) {
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(round.name);
    if (number === 1) {
      // The late arrival comes between two rounds and makes a trio.
      await coach.button('Who is here').tap();
      await coach.comes(LATE);
      await expect(page.getByText(/Three take turns/)).toBeVisible();
    }
    // The count by hand takes everyone for the role they began with.
    const turns = coach.button('Roles turn at half-time');
    if ((await turns.count()) > 0 && (await turns.getAttribute('aria-pressed')) === 'true') {
      await turns.tap();
    }
    await coach.start();
    const pairs = await coach.pairs();
    expect(pairs.flat().toSorted()).toEqual((number === 0 ? NAMES.slice(0, -1) : NAMES).toSorted());

    // Eight gaps of eleven seconds: slow enough for any set size, well before the horn.
    const sets = new Map<string, number>();
    const tap = async (player: string) => {
      await coach.mark(player);
      sets.set(player, (sets.get(player) ?? 0) + 1);
    };
    for (let turn = 0; turn < 8; turn++) {
      await page.clock.fastForward(11_000);
      for (const [place, players] of pairs.entries()) {
        // A different count for every pair, and in the split tiles for every player.
        const tapped = 'onTarget' in round ? players : players.slice(0, 1);
        for (const [index, player] of tapped.entries()) {
          if ((turn + place + index + number) % (place + 2) === 0) await tap(player);
        }
      }
    }
    // One mark too many, taken back.
    const [clumsy = ''] = pairs[0] ?? [];
    await page.clock.fastForward(11_000);
    await coach.mark(clumsy);
    await coach.takeBack(clumsy);

    await page.clock.fastForward(32_000);
    await expect(coach.button('Put counts right')).toBeVisible();
    // A mark after the horn is late: kept, and not counted until settle says so.
    if (number === 0) {
      await coach.mark(pairs[1]?.[0] ?? '');
      await expect(coach.tile(pairs[1]?.[0] ?? '')).toContainText('1 late');
    }
    await coach.button('Put counts right').tap();
    if (number === 0) {
      // Whoever is in doubt comes first.
      const late = page.locator('.settle-pairs > li').first();
      await expect(late).toContainText(pairs[1]?.[0] ?? '');
      await late.getByRole('button', { name: 'Counts', exact: true }).tap();
      sets.set(pairs[1]?.[0] ?? '', (sets.get(pairs[1]?.[0] ?? '') ?? 0) + 1);
      // A set that nobody tapped, put in by hand, and another taken out.
      await page.getByLabel(`Change the count of ${pairs[2]?.[0]}`).tap();
      await coach.button(new RegExp(`^One set more for ${pairs[2]?.[0]}`)).tap();
      sets.set(pairs[2]?.[0] ?? '', (sets.get(pairs[2]?.[0] ?? '') ?? 0) + 1);
      await coach
        .button(new RegExp(`^Shots of the unfinished set of ${pairs[0]?.[0]}.*: 7$`))
        .tap();
    }
    await coach.button(number === block.length - 1 ? 'Done' : 'Next round').tap();
    played.push(countByHand(round, pairs, sets, 120));
  }
  return played;
}

async function wholeJob(page: Page, block: Block): Promise<void> {
  const coach = new Coach(page);
  await coach.pasteSquad(SQUAD);
  await expect(page.getByText('11 players were added.')).toBeVisible();

  await coach.visit('');
  for (const name of NAMES) if (name !== LATE) await coach.comes(name);
  await coach.planBlock(block);
  const played = await playBlock(page, block);
  await expect(page.getByRole('heading', { name: 'The block is done' })).toBeVisible();

  const own = (player: string) =>
    played.flatMap((round) => {
      const on = round.get(player);
      return on ? [on] : [];
    });
  const total = (player: string, of: keyof Own) => own(player).reduce((sum, on) => sum + on[of], 0);

  // The player's own page.
  await coach.button('Players and their counts').tap();
  await page.getByRole('link', { name: 'Pip' }).tap();
  await expect(page.getByRole('main')).toContainText(String(total('Pip', 'touches')));
  for (const other of NAMES) {
    if (other !== 'Pip') await expect(page.getByRole('main')).not.toContainText(other);
  }

  // The week, and its table.
  await coach.visit('week');
  const download = page.waitForEvent('download');
  await coach.button(/Share the week/).tap();
  const text = readFileSync(await (await download).path(), 'utf8');
  const { data, errors } = papaparse.parse<Record<string, string>>(text, {
    header: true,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  expect(data).toHaveLength(10 + (block.length - 1) * 11);
  for (const [number, round] of played.entries()) {
    for (const [player, { sets, touches, seconds }] of round) {
      const row = data.find((each) => each.round === String(number + 1) && each.player === player);
      expect.soft(row, `round ${number + 1}, ${player}`).toMatchObject({
        drill: block[number]?.name,
        sets: String(sets),
        touches_counted: String(touches),
        live_seconds: String(seconds),
        sets_per_minute: String(Math.round((sets / seconds) * 6000) / 100),
        quality: '',
      });
    }
  }
}

test.use({ serviceWorkers: 'allow' });

test.beforeEach(async ({ page }) => {
  await page.clock.install({ time: new Date('2026-11-24T16:30:00') });
  // Without a share sheet for files the table is a download.
  await page.addInitScript(() => {
    Object.defineProperty(Navigator.prototype, 'canShare', { value: undefined });
  });
});

test('a coach does the whole job from an empty app, and the table equals a count by hand', async ({
  page,
}) => {
  await wholeJob(page, BLOCK);
});

test('the same job runs with the network cut off after the first load', async ({
  page,
  context,
}) => {
  await page.goto('./');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await context.setOffline(true);
  await page.reload();
  // A drill of each sort of tile leads over every screen of the job.
  await wholeJob(page, [BLOCK[0], BLOCK[4]]);
});
