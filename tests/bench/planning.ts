import { type Family, families } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { meetingsOf } from '../../core/planning/meetings.ts';
import { proposeBlock } from '../../core/planning/propose-block.ts';
import { proposePairs } from '../../core/planning/propose-pairs.ts';
import { randomFrom } from '../../demo-data/random.ts';
import { anyDrills, squadOf, TODAY } from '../core/invented.ts';
import {
  byChance,
  CHANGEOVER,
  type Coach,
  longestGaps,
  pairings,
  playTerm,
  proposing,
  routine,
  SECONDS,
  type TermOptions,
} from '../core/simulated-term.ts';

const TERMS = 3;
const OPTIONS: Omit<TermOptions, 'seed'> = {
  ...{ players: 12, practices: 36, courts: 2, minutes: [20, 30], attendance: 0.7 },
};
/** What finding a block of eight rounds out of forty drills, and pairs of 24 players, may take. */
export const MOST_MS = { block: 50, pairs: 20 } as const;

/** What became of some terms with a coach, the worst of all of them. */
interface Outcome {
  squad: Record<Family, number>;
  player: Record<Family, number>;
  over: number;
  under: number;
  /** Share of all times that two came together in which they had already that day. */
  again: number;
  most: number;
  least: number;
}

/** The same terms with each way to coach them. */
export function outcomes(): Record<'proposed' | 'routine' | 'chance', Outcome> {
  const chance = byChance(randomFrom(1));
  return {
    proposed: outcomeOf(proposing),
    routine: outcomeOf({ plan: routine, pair: chance }),
    chance: outcomeOf({ plan: proposing.plan, pair: chance }),
  };
}

function outcomeOf(coach: Coach): Outcome {
  const terms = Array.from({ length: TERMS }, (_, at) =>
    playTerm({ ...OPTIONS, seed: at + 1 }, coach),
  );
  const longest = (whose: 'squad' | 'player') => {
    const gaps = terms.map((term) => longestGaps(term, whose));
    return Object.fromEntries(
      families.map((family) => [family, Math.max(...gaps.map((gap) => gap[family]))]),
    ) as Record<Family, number>;
  };
  const over = terms.flatMap((term) => term.over);
  const met = terms.flatMap((term) => [...pairings(term).values()]);
  const times = met.map((dates) => dates.length);
  const again = met.flatMap((dates) => dates.filter((date, at) => date === dates[at - 1])).length;
  return {
    squad: longest('squad'),
    player: longest('player'),
    over: Math.max(0, ...over),
    under: Math.max(0, ...over.map((minutes) => -minutes)),
    again: again / times.reduce((sum, count) => sum + count, 0),
    most: Math.max(...times),
    least: Math.min(...times),
  };
}

/** Milliseconds of each run, after some that are not counted. */
function timed(runs: number, run: (at: number) => unknown): number[] {
  const times: number[] = [];
  for (let at = -5; at < runs; at += 1) {
    const start = performance.now();
    run(Math.abs(at));
    if (at >= 0) times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b);
}

/** How long proposals take with a term behind them. */
export function timings(): Record<'block' | 'pairs of 24' | 'pairs of 23', number[]> {
  const random = randomFrom(1);
  const history = (players: number): Summary[] =>
    playTerm({ ...OPTIONS, players, seed: 1 }, { plan: routine, pair: byChance(random) }).summaries;
  const drills = [...starterDrills, ...anyDrills(40 - starterDrills.length, random)];
  const summaries = history(24);
  const squad = squadOf(24);
  const levels = new Map(squad.map((player) => [player, 1 + random.below(10)]));
  const pairs = (here: string[]) =>
    proposePairs({ here, levels, meetings: meetingsOf(summaries, TODAY), wishes: [] });
  return {
    block: timed(40, (at) =>
      proposeBlock({
        ...{ minutes: 22, seconds: SECONDS, changeover: CHANGEOVER, drills, today: TODAY },
        ...{ here: squad.slice(at % 20), courts: 1 + (at % 4) },
        summaries: summaries.slice(0, at),
      }),
    ),
    'pairs of 24': timed(40, () => pairs(random.shuffled(squad))),
    'pairs of 23': timed(40, () => pairs(random.shuffled(squad).slice(1))),
  };
}

/** The lines to print: some seconds of work, all but the times the same each time. */
export async function planningBench(): Promise<string[]> {
  const { proposed, routine: fixed, chance } = outcomes();
  const row = (name: string, ...cells: (string | number)[]) =>
    `  ${name.padEnd(34)}${cells.map((cell) => `${cell}`.padStart(14)).join('')}`;
  const { players, practices, courts, minutes, attendance } = OPTIONS;
  return [
    `${TERMS} terms of ${practices} practices, ${players} players of whom ${100 * attendance} to 100% come, ` +
      `${courts} courts, ${minutes.join(' to ')} minutes a block; the worst of all terms`,
    row('longest without a family, days', 'proposed', 'fixed routine'),
    ...families.flatMap((family) => [
      row(`${family}, the squad`, proposed.squad[family], fixed.squad[family]),
      row(`${family}, a player`, proposed.player[family], fixed.player[family]),
    ]),
    row('minutes over the time', proposed.over.toFixed(2), fixed.over.toFixed(2)),
    row('minutes left of the time', proposed.under.toFixed(2), fixed.under.toFixed(2)),
    row('two together', 'proposed', 'by chance'),
    row('again on the same day', percent(proposed.again), percent(chance.again)),
    row('times in a term, the most', proposed.most, chance.most),
    row('times in a term, the least', proposed.least, chance.least),
    'milliseconds that a proposal takes, in the middle of 40 and at best',
    ...Object.entries(timings()).map(([name, times]) => {
      const limit = MOST_MS[name === 'block' ? 'block' : 'pairs'];
      return row(name, times[20]!.toFixed(1), times[0]!.toFixed(1), `${limit} wanted`);
    }),
  ];
}

const percent = (share: number) => `${(100 * share).toFixed(1)}%`;
