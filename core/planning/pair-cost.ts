import type { Wish } from '../ledger/wishes.ts';
import { exact } from './exact.ts';
import type { Meetings } from './meetings.ts';
import { roundRobin } from './round-robin.ts';

/**
 * What it costs that two players are partners; all of it is ours, and all of it is here. A meeting
 * of today weighs as much as the widest gap of levels twice over, one of two weeks ago as much once.
 */
export const pairWeights = {
  /** Two whom the coach wants apart; no sum of all else comes near it. */
  apart: 10_000_000,
  /** Two whom the coach wants together: a cost taken off. */
  together: 100_000,
  /** A round less on court today, where not everyone has a place all the time. */
  live: 1_000,
  /** Each of three in a trio, for each round in a trio that has not faded. */
  trio: 100,
  /** A round together that has not faded. */
  met: 40,
  /** Not being partners in the round of the table that is due: more than the widest gap of levels. */
  turn: 20,
  /** Each of the nine steps that two levels can be apart. */
  gap: 2,
} as const;

/** Those who are to be paired, and what is known of them. */
export interface Pairing {
  /** Players who are here. */
  here: readonly string[];
  /** 1 to 10; one who has none is as near to everyone as can be. */
  levels: ReadonlyMap<string, number>;
  meetings: Meetings;
  wishes: readonly Wish[];
  /** Rounds that each player has had today, where not everyone has a place all the time. */
  played?: ReadonlyMap<string, number>;
}

/** Costs by places in `here`; all are whole multiples of 2^-10. */
export interface PairCosts {
  pair: number[][];
  /**
   * The three by turns: a third of what each two of them cost, for so much of the time they are
   * partners, with the whole of every wish and of each one's turn at being in a trio.
   */
  trio(a: number, b: number, c: number): number;
}

export function pairCosts({ here, levels, meetings, wishes, played }: Pairing): PairCosts {
  const table = (cost: (a: number, b: number) => number) =>
    here.map((_, a) => here.map((_, b) => (a === b ? 0 : cost(a, b))));
  const apart = (values: ReadonlyMap<string, number> | undefined, a: number, b: number) => {
    const [one, other] = [values?.get(here[a]!), values?.get(here[b]!)];
    return one === undefined || other === undefined ? 0 : Math.abs(one - other);
  };
  const met = table((a, b) => meetings.together(here[a]!, here[b]!));
  const gap = table((a, b) => apart(levels, a, b));
  const due = roundDue(here, met, gap);
  const isDue = new Set(due.flatMap(([a, b]) => [a * here.length + b, b * here.length + a]));
  const soft = table((a, b) =>
    exact(
      pairWeights.met * met[a]![b]! +
        pairWeights.gap * gap[a]![b]! +
        (due.length === 0 || isDue.has(a * here.length + b) ? 0 : pairWeights.turn) +
        pairWeights.live * apart(played, a, b),
    ),
  );

  const wished = table(() => 0);
  for (const { a, b, wish } of wishes) {
    const [one, other] = [here.indexOf(a), here.indexOf(b)];
    if (one < 0 || other < 0) continue;
    const cost = wish === 'apart' ? pairWeights.apart : -pairWeights.together;
    wished[one]![other] = cost;
    wished[other]![one] = cost;
  }
  const turn = here.map((player) => exact(pairWeights.trio * meetings.inTrio(player)));
  return {
    pair: table((a, b) => soft[a]![b]! + wished[a]![b]!),
    trio: (a, b, c) =>
      exact((soft[a]![b]! + soft[a]![c]! + soft[b]![c]!) / 3) +
      (wished[a]![b]! + wished[a]![c]! + wished[b]![c]!) +
      (turn[a]! + turn[b]! + turn[c]!),
  };
}

/**
 * The round that is due of the table in which everybody meets everybody once (a round robin): of the
 * rounds whose pairs are all new to each other the one whose levels are nearest. No pairs where
 * there is no such round.
 *
 * It keeps a way open: of pairs that are merely new to each other some leave players over among
 * whom nobody can go on without meeting someone twice. As long as everyone comes, and no wish says
 * otherwise, a round of the table costs less than any other pairs (see `turn`), so that the squad
 * goes through the whole of it.
 */
function roundDue(here: readonly string[], met: number[][], gap: number[][]): [number, number][] {
  const seats = here.map((_, at) => at).sort((a, b) => (here[a]! < here[b]! ? -1 : 1));
  const gaps = (pairs: [number, number][]) => pairs.reduce((sum, [a, b]) => sum + gap[a]![b]!, 0);
  const [due] = roundRobin(seats)
    .filter((pairs) => pairs.every(([a, b]) => met[a]![b]! === 0))
    .sort((one, other) => gaps(one) - gaps(other));
  return due ?? [];
}
