import { adviseSize } from '../../core/figures/setsize.ts';
import { estimateShots } from '../../core/figures/touches.ts';
import {
  juniorSuccess,
  pairOf,
  playRound,
  type Random,
  randomNumbers,
} from '../core/figures/simulated-round.ts';

const SECONDS = 120;
const START = 10;
const TARGET = 4;

/** How the next rounds of simulated juniors went, as shares of all. */
export interface NextRounds {
  twoToSix: number;
  none: number;
}

/** Populations of pairs, by the success share of one drawn from them. */
export const populations = {
  /** As the estimate of touches assumes. */
  juniors: juniorSuccess,
  even: (random: Random) => 0.6 + 0.35 * random(),
};

/**
 * What the advice on a set size is worth: simulated pairs play a round at ten in a row and then a next
 * one, once at ten again, once at the size advised by that one round, once at the size advised by the
 * pair's true success share.
 */
export function playSetSizes(
  pairs: number,
  seed: number,
  successOf: (random: Random) => number,
): { staying: NextRounds; advised: NextRounds; known: NextRounds } {
  const random = randomNumbers(seed);
  const staying: number[] = [];
  const advised: number[] = [];
  const known: number[] = [];
  const sizeAfter = new Map<number, number>();
  for (let i = 0; i < pairs; i++) {
    const success = successOf(random);
    const first = setsAt(random, success, START);
    const size = sizeAfter.get(first) ?? advice(first);
    sizeAfter.set(first, size);
    const sure = { consistency: success, consistencySd: 0, seconds: SECONDS, target: TARGET };
    staying.push(setsAt(random, success, START));
    advised.push(setsAt(random, success, size));
    known.push(setsAt(random, success, adviseSize(sure).size));
  }
  return { staying: summary(staying), advised: summary(advised), known: summary(known) };
}

/** Each round has a tempo, a re-feed and a pause of its own; the success share is the pair's. */
const setsAt = (random: Random, success: number, size: number): number =>
  playRound(random, pairOf(random, success), { startsAgain: true, size, seconds: SECONDS }).sets;

function advice(sets: number): number {
  const { consistency, consistencySd } = estimateShots({
    rule: 'in-a-row',
    size: START,
    sets,
    seconds: SECONDS,
  });
  return adviseSize({ consistency, consistencySd, seconds: SECONDS, target: TARGET }).size;
}

function summary(sets: readonly number[]): NextRounds {
  const share = (holds: (sets: number) => boolean) => sets.filter(holds).length / sets.length;
  return { twoToSix: share((k) => k >= 2 && k <= 6), none: share((k) => k === 0) };
}

/** The lines to print: some seconds of work, the same each time. */
export async function setSizeBench(): Promise<string[]> {
  const pairs = 10_000;
  const line = (name: string, { twoToSix, none }: NextRounds) =>
    `  ${name.padEnd(28)} ${percent(twoToSix)} with two to six sets, ${percent(none)} without one`;
  const part = (title: string, successOf: (random: Random) => number) => {
    const { staying, advised, known } = playSetSizes(pairs, 1, successOf);
    return [
      title,
      line('staying at ten in a row', staying),
      line('following the advice', advised),
      line('if the pair were fully known', known),
    ];
  };
  return [
    `The next round of ${pairs} simulated pairs after one at ten in a row, target ${TARGET}`,
    ...part('Success share as usual for juniors, Beta(4, 1):', populations.juniors),
    ...part('Success share even from 0.6 to 0.95:', populations.even),
  ];
}

const percent = (share: number) => `${Math.round(100 * share)}%`.padStart(4);
