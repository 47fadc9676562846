import type { Terms } from '../../core/drill/drill.ts';
import { estimateTally } from '../../core/figures/estimate.ts';
import { foldPractice } from '../../core/ledger/practice.ts';
import { summarise } from '../../core/ledger/summary.ts';
import type { Tally } from '../../core/round/tally.ts';
import { DEMO_SEED, season } from '../../demo-data/season.ts';
import { quantile } from './quantile.ts';
import type { Row } from './row.ts';

/** A tally's estimate stands in this time, in the middle of the demo season's. */
export const MOST_MS = 1.5;
/** Each tally is asked this many times in turn with the others, and its middle time counts. */
const RUNS = 9;

interface Asked {
  terms: Terms;
  seconds: number;
  tally: Tally;
}

/** Every tally of the demo season, without any tempo check. */
function demoTallies(): Asked[] {
  const afterwards = Date.parse('2026-04-01');
  return season({ seed: DEMO_SEED, lastDate: '2026-03-04' }).practices.flatMap(({ entries }) => {
    const practice = foldPractice(entries);
    if (!practice) throw new Error('no entry opened the practice');
    return summarise(practice, afterwards).rounds.flatMap(({ terms, seconds, tallies }) =>
      tallies.map((tally) => ({ terms, seconds, tally })),
    );
  });
}

const estimate = ({ terms, seconds, tally }: Asked) =>
  estimateTally(terms, seconds, tally, undefined);

/** The rule, and whether the times of the marks went into the estimate: without them it is another. */
function pathOf(asked: Asked): string {
  const untimed = { ...asked, tally: { ...asked.tally, times: [] } };
  const timed = estimate(asked).shots !== estimate(untimed).shots;
  return `${asked.terms.rule}, ${timed ? 'times' : 'counts'}`;
}

const told = (name: string, times: readonly number[]) =>
  `  ${name}: ${quantile(times, 0.5).toFixed(2)} ms in the middle, ${quantile(times, 0.95).toFixed(2)} ms for 95 of 100, of ${times.length}`;

/** The middle time of every tally of the demo season, in milliseconds. */
function estimateTimes(tallies: readonly Asked[]): number[] {
  const runs = tallies.map((): number[] => []);
  for (let run = 0; run < RUNS; run++) {
    tallies.forEach((asked, i) => {
      const began = performance.now();
      estimate(asked);
      runs[i]!.push(performance.now() - began);
    });
  }
  return runs.map((own) => quantile(own, 0.5));
}

/** A tally's estimate over the demo season. */
export function estimateRows(): Row[] {
  const times = estimateTimes(demoTallies());
  return [
    { figure: 'one tally’s estimate', unit: 'ms', measured: quantile(times, 0.5), most: MOST_MS },
  ];
}

/** The lines to print. */
export async function touchesBench(): Promise<string[]> {
  const tallies = demoTallies();
  // This warms the code up, too.
  const paths = tallies.map(pathOf);
  const times = estimateTimes(tallies);
  return [
    `The estimate of one tally, over the demo season; ${MOST_MS} ms in the middle are the most that is wanted:`,
    told('all', times),
    ...[...new Set(paths)].sort().map((path) =>
      told(
        path,
        times.filter((_, i) => paths[i] === path),
      ),
    ),
  ];
}
