import type { Terms } from '../drill/drill.ts';
import { type Summary, secondsOf } from '../ledger/summary.ts';
import { isHeard, isHeardOf } from '../round/tally.ts';
import { addTouches, shares, type Touches } from './counted.ts';

/** What was done over a span of practices. */
export interface Total {
  /** Practices in which at least one of the rounds was played. */
  practices: number;
  rounds: number;
  sets: number;
  /** Touches in completed sets, by stroke. */
  touches: Touches;
  /** Seconds of live clock. */
  seconds: number;
  /** Rounds, of a drill tallies, whose count was not heard: in the clock, and in no set. */
  unheard: number;
}

/**
 * Each player's own total: the sets they took part in, the touches they struck, the live clock
 * they were in for (two thirds of a round in a trio). Players are in the order in which they first
 * played; one who never played is not in it.
 */
export function byPlayer(summaries: readonly Summary[]): Map<string, Total> {
  const totals = new Map<string, Total>();
  for (const { rounds } of summaries) {
    const here = new Set<string>();
    for (const round of rounds) {
      for (const tally of round.tallies) {
        const seconds = secondsOf(round, tally);
        for (const { player, sets, touches, time } of shares(round.terms, tally, round.seconds)) {
          const total = totals.get(player) ?? nothing();
          totals.set(player, total);
          add(total, { sets, seconds: seconds * time });
          addTouches(total.touches, touches);
          if (!isHeardOf(tally, player)) total.unheard += 1;
          here.add(player);
        }
      }
    }
    countPractice(totals, here);
  }
  return totals;
}

/**
 * The whole squad's total at each drill: a pair's set is one set, a round's live clock is counted
 * once however many pairs played it, touches are everyone's. The terms are those of the last round
 * in the order given, so that a drill has its newest name.
 */
export function byDrill(summaries: readonly Summary[]): Map<string, Total & { terms: Terms }> {
  const totals = new Map<string, Total & { terms: Terms }>();
  for (const { rounds } of summaries) {
    const here = new Set<string>();
    for (const { terms, seconds, tallies } of rounds) {
      const total = totals.get(terms.drill) ?? { ...nothing(), terms };
      totals.set(terms.drill, total);
      total.terms = terms;
      add(total, { sets: tallies.reduce((sum, { sets }) => sum + sets, 0), seconds });
      total.unheard += tallies.filter((tally) => !isHeard(tally)).length;
      for (const { touches } of tallies.flatMap((tally) => shares(terms, tally, seconds))) {
        addTouches(total.touches, touches);
      }
      here.add(terms.drill);
    }
    countPractice(totals, here);
  }
  return totals;
}

const nothing = (): Total => ({
  ...{ practices: 0, rounds: 0, sets: 0, touches: {}, seconds: 0, unheard: 0 },
});

function add(total: Total, round: { sets: number; seconds: number }): void {
  total.rounds += 1;
  total.sets += round.sets;
  total.seconds += round.seconds;
}

function countPractice(totals: ReadonlyMap<string, Total>, here: Iterable<string>): void {
  for (const id of here) {
    const total = totals.get(id);
    if (total) total.practices += 1;
  }
}
