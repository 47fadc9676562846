import { sizeAdvice } from '../../core/figures/advice.ts';
import { fitLevels } from '../../core/figures/level-fit.ts';
import type { LevelTally } from '../../core/figures/level-tallies.ts';
import { adviseSize } from '../../core/figures/setsize.ts';
import { countedAs } from '../../core/figures/stints.ts';
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

/** Pairs of one squad, who play their first round at the same time. */
const SQUAD_PAIRS = 6;

/**
 * What the advice on a set size is worth: the pairs of simulated squads play a round at ten in a row
 * and then a next one, once at ten again, once at the size that the model of levels advises after that
 * one round of everybody, once at the size advised by the pair's true success share.
 */
export function playSetSizes(
  squads: number,
  seed: number,
  successOf: (random: Random) => number,
): { staying: NextRounds; advised: NextRounds; known: NextRounds } {
  const random = randomNumbers(seed);
  const staying: number[] = [];
  const advised: number[] = [];
  const known: number[] = [];
  for (let squad = 0; squad < squads; squad++) {
    const pairs = Array.from({ length: SQUAD_PAIRS }, (_, pair) => {
      const success = successOf(random);
      return { players: [`a${pair}`, `b${pair}`], success, sets: setsAt(random, success, START) };
    });
    const fit = fitLevels({
      onTarget: false,
      tallies: pairs.map(({ players, sets }) => tallyOf(players, sets)),
      end: 0,
    });
    for (const { players, success } of pairs) {
      const size = sizeAdvice(fit, TERMS, players, SECONDS)!.size;
      const sure = { consistency: success, consistencySd: 0, seconds: SECONDS, target: TARGET };
      staying.push(setsAt(random, success, START));
      advised.push(setsAt(random, success, size));
      known.push(setsAt(random, success, adviseSize(sure).size));
    }
  }
  return { staying: summary(staying), advised: summary(advised), known: summary(known) };
}

const TERMS = { family: 'groundstrokes', drill: 'rally', rule: 'in-a-row' } as const;

/** Each round has a tempo, a re-feed and a pause of its own; the success share is the pair's. */
const setsAt = (random: Random, success: number, size: number): number =>
  playRound(random, pairOf(random, success), { startsAgain: true, size, seconds: SECONDS }).sets;

const shots = new Map<number, ReturnType<typeof estimateShots>>();

/** A round at ten in a row as the model reads it; the same count always says the same. */
function tallyOf(players: string[], sets: number): LevelTally {
  const known =
    shots.get(sets) ?? estimateShots({ rule: TERMS.rule, size: START, sets, seconds: SECONDS });
  shots.set(sets, known);
  return {
    ...{ practice: 'first', day: 0, kind: TERMS.family, players, success: known },
    drill: countedAs({ ...TERMS, size: START, shots: [] }),
  };
}

function summary(sets: readonly number[]): NextRounds {
  const share = (holds: (sets: number) => boolean) => sets.filter(holds).length / sets.length;
  return { twoToSix: share((k) => k >= 2 && k <= 6), none: share((k) => k === 0) };
}

/** The lines to print: some seconds of work, the same each time. */
export async function setSizeBench(): Promise<string[]> {
  const squads = 1_500;
  const line = (name: string, { twoToSix, none }: NextRounds) =>
    `  ${name.padEnd(28)} ${percent(twoToSix)} with two to six sets, ${percent(none)} without one`;
  const part = (title: string, successOf: (random: Random) => number) => {
    const { staying, advised, known } = playSetSizes(squads, 1, successOf);
    return [
      title,
      line('staying at ten in a row', staying),
      line('following the advice', advised),
      line('if the pair were fully known', known),
    ];
  };
  return [
    `The next round of ${squads * SQUAD_PAIRS} simulated pairs, six a squad, after one at ten in a row, target ${TARGET}`,
    ...part('Success share as usual for juniors, Beta(4, 1):', populations.juniors),
    ...part('Success share even from 0.6 to 0.95:', populations.even),
  ];
}

const percent = (share: number) => `${Math.round(100 * share)}%`.padStart(4);
