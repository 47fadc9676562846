import type { Summary } from '../../../core/ledger/summary.ts';
import { lobTerms } from '../made.ts';

/*
 * A season of looks with known true shares. It shares nothing with the program but the shape of a
 * summary: it draws by a generator of its own, and has its own way of going round the players.
 */

/** Park and Miller 1988's minimal standard, by Schrage's method. */
export function minimalStandard(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (48271 * state) % 2147483647;
    return state / 2147483647;
  };
}

export const WEEKS = 8;
const DAYS = [0, 2, 4];
const ROUNDS = 8;
const CHECKS = 6;
export const PLAYERS = 12;

const date = (week: number, day: number) =>
  new Date(Date.UTC(2026, 0, 5 + 7 * week + day)).toISOString().slice(0, 10);

/**
 * Eight weeks of three practices, eight rounds each, six looks a round, twelve players.
 *
 * @param truth the share in which a player holds the focus in a week (from 0)
 * @param unseen the share of looks that could not be seen
 */
export function seasonOfLooks(
  draw: () => number,
  truth: (player: number, week: number) => number,
  unseen = 0,
): Summary[] {
  let turn = Math.floor(draw() * PLAYERS);
  const summaries: Summary[] = [];
  for (let week = 0; week < WEEKS; week++) {
    for (const day of DAYS) {
      const on = date(week, day);
      const rounds = Array.from({ length: ROUNDS }, (_, ordinal) => ({
        ...{ id: `${on}-${ordinal}`, ordinal, terms: lobTerms, seconds: 120, settled: true },
        focus: 'stance',
        looks: Array.from({ length: CHECKS }, (_, at) => {
          turn = (turn + 1) % PLAYERS;
          const held = draw() < truth(turn, week);
          const saw = draw() < unseen ? 'unseen' : held ? 'yes' : 'no';
          const second = 10 + 18 * at;
          return { player: `p${turn}`, focus: 'stance', second, saw, by: 'phone' } as const;
        }),
        tallies: [],
      }));
      const opened = `${on}-opened`;
      summaries.push({ version: 3, practice: on, date: on, opened, attended: [], rounds });
    }
  }
  return summaries;
}
