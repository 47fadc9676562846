import type { Page } from 'playwright/test';
import { termsOf } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import type { Saying } from '../../core/ledger/entry.ts';
import { NOON } from './planted-round.ts';
import { Pen, plantEntries } from './seed.ts';

/** A day in milliseconds. */
const DAY = 86_400_000;

const LETTERS = 'ABCDEFGHIJKL';

/** What a test wants to find in a ledger that was practised with. */
export interface Practised {
  names: readonly string[];
  /** Drills of every practice, by their ids, a round each. */
  drills: readonly string[];
  /** How many days before `NOON` each closed practice was, the earliest first. */
  daysBefore: readonly number[];
  /** How many of the names make one more practice today, whose first round waits for its Start. */
  here?: number;
}

export const playerId = (index: number): string => `player-${index}`;

const termsBy = (id: string) => {
  const known = starterDrills.find((drill) => drill.id === id);
  if (!known) throw new RangeError(`drill: ${id}`);
  return termsOf(known);
};

/** Neighbours in pairs; an odd one at the end makes a trio. */
const pairsOf = (players: readonly string[]) =>
  Array.from({ length: Math.floor(players.length / 2) }, (_, pair) => ({
    letter: LETTERS[pair] ?? '',
    players: players.slice(
      2 * pair,
      players.length % 2 === 1 && 2 * pair + 3 === players.length ? 2 * pair + 3 : 2 * pair + 2,
    ),
  }));

/** Plants closed practices in which every pair made sets, and today's; the page's clock must be installed. */
export async function openPractised(
  page: Page,
  { names, drills, daysBefore, here = 0 }: Practised,
  address = '',
): Promise<void> {
  const players = names.map((_, index) => playerId(index));
  const pen = new Pen(NOON - 100 * DAY);
  pen.write(
    ...players.map((player, index) => ({
      kind: 'player-added' as const,
      player,
      name: names[index] ?? '',
    })),
  );
  const plan = {
    steps: drills.map((drill) => ({ drill, rounds: 1, partners: 'keep' as const })),
    seconds: 120,
    changeover: 60,
  };
  const open = (practice: string, at: number, there: readonly string[]) => {
    pen.at = at;
    const date = new Date(at).toISOString().slice(0, 10);
    pen.write(
      { kind: 'practice-opened', practice, date },
      ...there.map((player): Saying => ({ kind: 'player-came', practice, player })),
      { kind: 'block-planned', practice, plan },
    );
  };
  const set = (practice: string, ordinal: number, there: readonly string[]) => {
    const round = `${practice}-${ordinal}`;
    pen.write({
      kind: 'round-set',
      practice,
      round,
      ordinal,
      terms: termsBy(drills[ordinal] ?? ''),
      seconds: 120,
      pairs: pairsOf(there),
    });
    return round;
  };
  for (const [place, days] of daysBefore.entries()) {
    const practice = `practice-${place}`;
    open(practice, NOON - days * DAY, players);
    for (const [ordinal, drill] of drills.entries()) {
      const round = set(practice, ordinal, players);
      const start = pen.at;
      const { rule } = termsBy(drill);
      pen.write({ kind: 'clock-started', practice, round });
      for (const second of [25, 50, 75]) {
        pen.at = start + second * 1_000;
        for (const pair of pairsOf(players)) {
          const [player = ''] = pair.players;
          pen.write({
            kind: 'mark',
            practice,
            round,
            pair: pair.letter,
            second,
            ...(rule === 'on-target' && { player }),
          });
        }
      }
      pen.at = start + 130_000;
      pen.write({ kind: 'round-settled', practice, round });
    }
    pen.write({ kind: 'practice-closed', practice });
  }
  if (here > 0) {
    const there = players.slice(0, here);
    open('practice-today', NOON - 60_000, there);
    set('practice-today', 0, there);
  }
  await page.goto('./');
  await page.getByRole('heading', { level: 1 }).waitFor();
  await plantEntries(page, pen.entries);
  await page.goto(`./#/${address}`);
  await page.reload();
}
