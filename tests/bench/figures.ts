import { addDays } from '../../core/calendar.ts';
import { families, termsOf } from '../../core/drill/drill.ts';
import { starterDrills } from '../../core/drill/starter-drills.ts';
import { squadPace } from '../../core/figures/change.ts';
import { estimateTally } from '../../core/figures/estimate.ts';
import { levelOf } from '../../core/figures/level.ts';
import { fitLevels } from '../../core/figures/level-fit.ts';
import { levelTallies } from '../../core/figures/level-tallies.ts';
import { lastWeeks, reviewChange, reviewDrills, reviewWork } from '../../core/figures/review.ts';
import { pairStints, playerStints } from '../../core/figures/stints.ts';
import { byDrill, byPlayer } from '../../core/figures/totals.ts';
import type { PlayedRound, Summary } from '../../core/ledger/summary.ts';
import { pairUp } from '../../core/round/pairs.ts';
import { playRally } from '../../demo-data/rally.ts';
import { randomFrom } from '../../demo-data/random.ts';
import { turnPartners } from '../../demo-data/turning.ts';
import { practiceWith } from '../core/made.ts';
import { quantile } from './quantile.ts';
import type { Row } from './row.ts';

const PLAYERS = 12;
const PRACTICES = 36;
const ROUNDS = 6;
const SECONDS = 120;
const LAST = '2026-03-04';
/** A season of figures stands in this time, so that a screen of them opens at once. */
export const MOST_MS = 50;

/** A season in which everyone always comes, with the estimates that a phone would have kept. */
export function fullSeason(seed: number): { summaries: Summary[]; msAnEstimate: number } {
  const random = randomFrom(seed);
  const skill = new Map(
    Array.from({ length: PLAYERS }, (_, i) => [`player-${i + 1}`, random.normal(2.2, 0.5)]),
  );
  const chance = (logit: number) => 1 / (1 + Math.exp(-logit));
  let pairs = pairUp([...skill.keys()]);
  let spent = 0;
  const summaries = Array.from({ length: PRACTICES }, (_, practice): Summary => {
    const rounds = Array.from({ length: ROUNDS }, (_, ordinal): PlayedRound => {
      pairs = turnPartners(pairs);
      const family = families[ordinal % families.length];
      const known = starterDrills.filter((drill) => drill.family === family);
      const terms = termsOf(known[random.below(known.length)]!);
      const tallies = pairs.map((pair) => {
        const onTarget = terms.rule === 'on-target';
        const rally = playRally(
          terms,
          pair.players,
          SECONDS,
          (striker) => chance((skill.get(striker) ?? 0) - (onTarget ? 3 : 0)),
          random,
        );
        const completed = rally.sets.filter(({ second }) => second <= SECONDS);
        const own = (player: string) => completed.filter((set) => set.player === player).length;
        const tally = {
          pair,
          sets: completed.length,
          ...(onTarget && {
            byPlayer: Object.fromEntries(pair.players.map((player) => [player, own(player)])),
          }),
          times: completed.map(({ second }) => second),
          late: 0,
          doubtful: 0,
          open: 0,
        };
        const began = performance.now();
        const estimate = estimateTally(terms, SECONDS, tally, undefined);
        spent += performance.now() - began;
        return { ...tally, estimate };
      });
      const id = `${practice}-${ordinal}`;
      return { id, ordinal, terms, seconds: SECONDS, settled: true, tallies };
    });
    const date = addDays(LAST, -Math.floor(((PRACTICES - 1 - practice) * 7) / 3));
    return practiceWith(date, rounds, `practice-${practice}`);
  });
  return { summaries, msAnEstimate: spent / (PRACTICES * ROUNDS * (PLAYERS / 2)) };
}

/** Everything that the screens show of a season, for the squad and for every player of it. */
export function allFigures(summaries: readonly Summary[]) {
  const stints = playerStints(summaries);
  const pairs = pairStints(summaries);
  const { now, before } = lastWeeks(summaries, 4);
  const [recentStints, earlierStints] = [playerStints(now), playerStints(before)];
  const pace = squadPace([...recentStints.values(), ...earlierStints.values()].flat());
  return {
    totals: [byPlayer(summaries), byDrill(summaries)],
    squad: [reviewWork(pairs), reviewDrills(pairs)],
    players: [...stints].map(([player, own]) => [
      reviewWork(own),
      reviewDrills(own),
      reviewChange(earlierStints.get(player) ?? [], recentStints.get(player) ?? [], pace),
    ]),
    levels: levelsOf(summaries),
  };
}

/** Everyone's level at every kind, of balls that come back and of those on target. */
function levelsOf(summaries: readonly Summary[]) {
  return [false, true].map((onTarget) => {
    const data = levelTallies(summaries, onTarget);
    const fit = data && fitLevels(data);
    return [...(fit?.kinds ?? [])].map(([kind, { players }]) =>
      [...players.keys()].map((player) => fit && levelOf(fit, player, kind)),
    );
  });
}

/** The milliseconds of so many runs, from the quickest. */
function timesOf(work: () => void, runs: number): number[] {
  return Array.from({ length: runs }, () => {
    const began = performance.now();
    work();
    return performance.now() - began;
  }).sort((a, b) => a - b);
}

/** A season's figures afresh, and how they grow with it. */
export function figureRows(): Row[] {
  const { summaries } = fullSeason(1);
  const half = summaries.slice(PRACTICES / 2);
  // The first runs teach the engine.
  allFigures(summaries);
  allFigures(half);
  const measured = quantile(
    timesOf(() => allFigures(summaries), 9),
    0.5,
  );
  return [
    {
      figure: `all figures of ${PLAYERS} players and ${PRACTICES} practices`,
      unit: 'ms',
      measured,
      most: MOST_MS,
    },
    {
      figure: `the same, beside ${PRACTICES / 2} practices`,
      unit: 'ms',
      measured,
      reference: {
        name: 'half',
        measured: quantile(
          timesOf(() => allFigures(half), 9),
          0.5,
        ),
      },
      most: 2,
    },
  ];
}

/** The lines to print: some seconds of work, nearly all of it making the season. */
export async function figuresBench(): Promise<string[]> {
  const { summaries, msAnEstimate } = fullSeason(1);
  const tallies = summaries.flatMap(({ rounds }) => rounds.flatMap((round) => round.tallies));
  const times = timesOf(() => allFigures(summaries), 9);
  const levels = timesOf(() => levelsOf(summaries), 9);
  const half = timesOf(() => allFigures(summaries.slice(PRACTICES / 2)), 9);
  const [best = 0, , , , middle = 0] = times;
  return [
    `All figures of ${PLAYERS} players, ${PRACTICES} practices and ${tallies.length} tallies, from their summaries:`,
    `  ${middle.toFixed(0)} ms in the middle of ${times.length} runs, ${best.toFixed(0)} ms at best; ${MOST_MS} ms are the most that is wanted`,
    `  of them for levels ${levels[4]?.toFixed(0)} ms in the middle, ${levels[0]?.toFixed(0)} ms at best`,
    `  of half the practices ${half[4]?.toFixed(0)} ms in the middle, ${half[0]?.toFixed(0)} ms at best`,
    `  before it each tally's estimate, once: ${msAnEstimate.toFixed(1)} ms on average`,
  ];
}
