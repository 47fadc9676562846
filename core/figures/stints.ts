import type { CountingRule, Terms } from '../drill.ts';
import type { PlayedTally, Summary } from '../summary.ts';
import type { Consistency } from './consistency.ts';
import { shares, sumTouches } from './counted.ts';
import type { Estimate } from './estimate.ts';

/** What one player, or one whole pair, did in one round: what every figure over a span is made of. */
export interface Stint {
  practice: string;
  /** YYYY-MM-DD. */
  date: string;
  terms: Terms;
  /** What can be counted together: the same for the same drill, rule and size. */
  countedAs: string;
  /** What shares a clock, so that estimates err together: see all-touches.ts. */
  clock: string;
  /** The pair or trio, whoever the stint is of. */
  players: readonly string[];
  /** Sets that were taken part in; on target struck. */
  sets: number;
  /** Touches in completed sets. */
  counted: number;
  /** Live clock that was taken part in: two thirds of the round's for one of a trio. */
  seconds: number;
  /** Which part of the pair's touches is meant, as a fraction: [1, 2] is a half. */
  part: readonly [of: number, parts: number];
  /** The pair's, where the model was asked. */
  estimate?: Estimate;
  /** The pair's share of shots that come back; on target the player's own that meet it. */
  success?: Consistency;
}

/** The stints of every player, in the order of the summaries; one who never played is not in it. */
export function playerStints(summaries: readonly Summary[]): Map<string, Stint[]> {
  const stints = new Map<string, Stint[]>();
  for (const { practice, date, rounds } of summaries) {
    for (const { terms, seconds, tallies } of rounds) {
      const alike = countedAs(terms);
      for (const tally of tallies) {
        const { estimate } = tally;
        const clock = clockOf(practice, terms, tally);
        shares(terms, tally).forEach(({ player, sets, touches, time }, place) => {
          const success = estimate?.own?.[player] ?? estimate?.success;
          const own = stints.get(player) ?? [];
          stints.set(player, own);
          own.push({
            practice,
            date,
            terms,
            countedAs: alike,
            clock,
            players: tally.pair.players,
            sets,
            counted: sumTouches(touches),
            seconds: seconds * time,
            part: partOf(terms, tally.pair.players.length, place),
            ...(estimate && { estimate }),
            ...(success && { success }),
          });
        });
      }
    }
  }
  return stints;
}

/** The stints of whole pairs, one a tally, in the order of the summaries. */
export const pairStints = (summaries: readonly Summary[]): Stint[] =>
  summaries.flatMap(({ practice, date, rounds }) =>
    rounds.flatMap(({ terms, seconds, tallies }) =>
      tallies.map((tally) => ({
        practice,
        date,
        terms,
        countedAs: countedAs(terms),
        clock: clockOf(practice, terms, tally),
        players: tally.pair.players,
        sets: tally.sets,
        counted: countedOf(terms, tally),
        seconds,
        part: [1, 1] as const,
        ...(tally.estimate && { estimate: tally.estimate }),
        ...(tally.estimate?.success && { success: tally.estimate.success }),
      })),
    ),
  );

/** The same for rounds that are counted in the same way. No rule and no size has a space in it. */
export const countedAs = ({ drill, rule, size }: Terms): string => `${drill} ${rule} ${size}`;

/**
 * Rounds of one drill share a clock where the same players played them in one practice, and where
 * they lean on the same tempo check.
 */
function clockOf(practice: string, { drill }: Terms, { pair, estimate }: PlayedTally): string {
  const tempo = estimate?.pace?.tempo;
  return tempo === undefined
    ? `${practice} ${pair.players.toSorted().join(' ')} ${drill}`
    : `${tempo} ${drill}`;
}

const countedOf = (terms: Terms, tally: PlayedTally): number =>
  shares(terms, tally).reduce((sum, { touches }) => sum + sumTouches(touches), 0);

/**
 * Which part of a pair's touches the player at a place strikes: as many of the drill's pattern as
 * the role has, half in a rally struck in turn. The players of a trio change roles, so a third each;
 * on target each strikes as many balls as the others, whoever meets it.
 */
function partOf({ rule, shots }: Terms, players: number, place: number): readonly [number, number] {
  if (players !== 2 || rule === 'on-target') return [1, players];
  const own = shots.filter(({ role }) => role === place).length;
  return 2 * own === shots.length ? [1, 2] : [own, shots.length];
}

/** Whether balls that meet a target are counted: a share of another kind than balls that come back. */
export const isOnTarget = ({ terms }: { terms: { rule: CountingRule } }): boolean =>
  terms.rule === 'on-target';
