import { addDays, daysBetween } from '../core/calendar.ts';
import { LARGEST_SIZE } from '../core/drill/drill.ts';
import type { Entry, PracticeEntry } from '../core/ledger/entry.ts';
import { isPractised } from '../core/ledger/join.ts';
import { FEWEST_PLAYERS } from '../core/round/pairs.ts';
import { planBlock } from './plan.ts';
import { playPractice } from './practice.ts';
import { randomFrom } from './random.ts';
import { recorder, type Say } from './recorder.ts';
import type { Truth } from './round.ts';
import { skillOn } from './skill.ts';
import { invented, type Member } from './squad.ts';

export type { Truth } from './round.ts';

export interface Season {
  /** The squad, as it was added the day before the first practice. */
  standing: Entry[];
  /** Oldest first, each opened and closed; its entries in the order of their ids. */
  practices: { entries: PracticeEntry[] }[];
  /** For every pair of every round. */
  truth: Truth[];
}

export interface SeasonOptions {
  /** Any whole number; the same options give the same season to the last letter. */
  seed: number;
  /** 2 to 24. */
  players?: number;
  weeks?: number;
  /** Practices a week, 1 to 7. */
  perWeek?: number;
  /** Day of the last practice, YYYY-MM-DD, from 1971 on for all the practices. */
  lastDate: string;
  /** A set size for all in-a-row and in-total drills, 1 to 50: smaller ones make more marks. */
  size?: number;
}

/** The season that the app shows: one of many in which it is plain to see who improves and who does not. */
export const DEMO_SEED = 23;

/** For so many weeks before the last practice nobody noticed that overheads were left out. */
const NEGLECTED_WEEKS = 3;
/** Practice begins at 13:00 UTC, which is on the same date nearly everywhere. */
const START_HOUR = 13;
const DAY = 86_400_000;

/**
 * An invented squad's season: who came, the blocks, the marks and what was put right at settle, all
 * from rounds that are played shot by shot. It asks no clock and draws from no other source than
 * its seed.
 *
 * @throws RangeError that names the option that makes no sense
 */
export function season({
  seed,
  players = 11,
  weeks = 12,
  perWeek = 3,
  lastDate,
  size,
}: SeasonOptions): Season {
  within('players', players, FEWEST_PLAYERS, invented.length);
  within('weeks', weeks, 1, 1_500);
  within('perWeek', perWeek, 1, 7);
  if (size !== undefined) within('size', size, 1, LARGEST_SIZE);
  const random = randomFrom(seed);
  const record = recorder();
  const squad = invented.slice(0, players).map((facts) => ({ ...facts, id: random.id() }));
  const count = weeks * perWeek;
  const dates = Array.from({ length: count }, (_, place) =>
    addDays(lastDate, -Math.floor(((count - 1 - place) * 7) / perWeek)),
  );

  const standing = addSquad(squad, startOf(dates[0] ?? lastDate) - DAY, record);
  const truth: Truth[] = [];
  const practices = dates.map((date, place) => {
    const left = count - place;
    const neglected = weeks > 2 * NEGLECTED_WEEKS && left <= NEGLECTED_WEEKS * perWeek;
    const plan = planBlock(neglected ? 'overheads-and-lobs' : undefined, size, random);
    const success = skillOn(squad, place / count, random);
    const entries: Entry[] = [];
    const say: Say = (saying, at) => {
      const entry = record(saying, at);
      entries.push(entry);
      return entry;
    };
    truth.push(...playPractice(date, startOf(date), squad, plan, success, random, say));
    return { entries: entries.filter(isPractised) };
  });
  return { standing, practices, truth };
}

const startOf = (date: string) => daysBetween('1970-01-01', date) * DAY + START_HOUR * 3_600_000;

const addSquad = (squad: readonly Member[], start: number, say: Say): Entry[] =>
  squad.map(({ id, name, level, hand }, place) => {
    const facts = { ...(level !== undefined && { level }), ...(hand && { hand }) };
    return say({ kind: 'player-added', player: id, name, ...facts }, start + place * 4_000);
  });

function within(name: string, value: number, least: number, most: number): void {
  if (!Number.isInteger(value) || value < least || value > most) {
    throw new RangeError(`${name} must be a whole number from ${least} to ${most}, not ${value}`);
  }
}
