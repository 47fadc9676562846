import { beforeAll, describe, expect, test } from 'vitest';
import { addDays } from '../../core/calendar.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { randomFrom } from '../../demo-data/random.ts';
import { anyLedger, LAST } from '../core/any-ledger.ts';
import { everyScreen, looksOn } from './looking-back/looks.ts';
import { notWorthShowing } from './looking-back/not-worth-showing.ts';
import { contradictions, NAMES, type Said, saidOn } from './looking-back/said.ts';
import { builtApp } from './phone/built.ts';
import type { Page } from './phone/page.ts';
import { Phone } from './phone/phone.ts';

/*
 * Every screen on which a coach looks back, drawn from ledgers by chance, from one tally to ten
 * seasons: whatever was counted, each says something, and nothing that it cannot know.
 * LEDGERS=500 goes through five hundred of them.
 */

const { LEDGERS } = process.env;
/** The first is one tally; among the others are one of a practice, of a season, and of ten. */
const FEW = [0, 3, 5, 8];
const SEEDS = LEDGERS ? Array.from({ length: Number(LEDGERS) }, (_, at) => at) : FEW;
/** A test of so many, each on a phone of its own. */
const PORTION = 10;
/** Days after the last practice on which is looked back, one after the other. */
const LATER = [0, 1, 9, 30, 200];

const portions = Array.from({ length: Math.ceil(SEEDS.length / PORTION) }, (_, at) =>
  SEEDS.slice(at * PORTION, (at + 1) * PORTION),
);

describe('looking back on ledgers by chance', () => {
  let script: string;
  beforeAll(async () => {
    script = await builtApp();
  });

  test.each(portions.map((seeds) => [seeds[0]!, seeds]))(
    'no screen shows what is no number, says nothing, is less sure than a whole squad, has a word for nothing, or says other than the rest, from the %i. on',
    async (_, seeds) => {
      const later = LATER[(seeds[0]! / PORTION) % LATER.length] ?? 0;
      const phone = new Phone(script, `${addDays(LAST, later)} 20:00`);
      try {
        const page = await phone.open();
        await squadOf(phone, page);
        const wrong: string[] = [];
        const places = new Set<string | undefined>();
        for (const seed of seeds) {
          const found = await lookBack(phone, page, seed);
          wrong.push(...found.wrong);
          for (const { address } of found.said) places.add(address.split('/')[0]);
        }
        expect(wrong).toEqual([]);
        // The words were found where they stand: else nothing could contradict.
        expect([...places].sort()).toEqual(['glance', 'line', 'numbers', 'player', 'review']);
      } finally {
        phone.end();
      }
    },
    600_000,
  );

  test('while some of the rounds are still being worked out no screen says a word that may change', async () => {
    const phone = new Phone(script, `${LAST} 20:00`);
    try {
      const page = await phone.open();
      await squadOf(phone, page);
      const { summaries, players } = anyLedger(WEEKS);
      const own = ['review', 'player', 'line'].map((place) => `${place}/${players[0]}`);
      const screens = ['glance', 'numbers', ...own];
      const words = async (shown: readonly Summary[]) => {
        await phone.do(() => {
          page.app.practices.history.value = shown;
        });
        const said: Said[] = [];
        for await (const look of looksOn(phone, page, screens)) said.push(...saidOn(look));
        return new Set(said.map(({ word }) => word));
      };
      expect((await words(summaries)).size).toBeGreaterThan(1);
      const half = summaries.map((each, at) => (at < summaries.length / 2 ? lacking(each) : each));
      expect(await words(half)).toEqual(new Set(['too few yet']));
      expect(page.app.estimates.waiting.value).toBeGreaterThan(0);
    } finally {
      phone.end();
    }
  });
});

/** A ledger of some weeks, of which half is enough for a word. */
const WEEKS = 28;

/** A practice of which nothing was worked out yet. */
const lacking = (summary: Summary): Summary => ({
  ...summary,
  rounds: summary.rounds.map((round) => ({
    ...round,
    tallies: round.tallies.map(({ estimate: _, ...tally }) => tally),
  })),
});

/** Everybody who may have played; the last of them is not asked for any more. */
async function squadOf(phone: Phone, { app }: Page): Promise<void> {
  const players = NAMES.map((name, at) => ({ name, player: `p${at + 10}` }));
  await phone.do(() =>
    app.ledger.append(...players.map((each) => ({ kind: 'player-added' as const, ...each })), {
      kind: 'player-rested',
      player: players.at(-1)!.player,
    }),
  );
}

/** The words of change on the screens of a ledger, and all that is wrong on them. */
async function lookBack(
  phone: Phone,
  page: Page,
  seed: number,
): Promise<{ said: Said[]; wrong: string[] }> {
  const { summaries, players } = anyLedger(seed);
  await phone.do(() => {
    page.app.practices.history.value = summaries;
  });
  const screens = everyScreen(page, randomFrom(seed).shuffled(players).slice(0, 3));
  const said: Said[] = [];
  const wrong: string[] = [];
  for await (const look of looksOn(phone, page, screens)) {
    wrong.push(...notWorthShowing(look.main).map((what) => `#/${look.address}: ${what}`));
    said.push(...saidOn(look));
  }
  const all = [...wrong, ...contradictions(said)];
  return { said, wrong: all.map((what) => `ledger ${seed}, ${what}`) };
}
