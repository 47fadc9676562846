import { daysBetween } from '../calendar.ts';
import { roundsUntil } from '../figures/last-practised.ts';
import type { Summary } from '../ledger/summary.ts';
import type { Pair } from '../round/pair.ts';

/** After so many days a meeting counts half. */
export const HALF_LIFE_DAYS = 14;

/** Who played with whom lately: rounds together, each of which fades. */
export interface Meetings {
  /**
   * Rounds that two players had together, in either order; in a trio, where each two hit in one set
   * of three, a third of a round. One of today counts 1, one of two weeks ago a half.
   */
  together(a: string, b: string): number;
  /** Rounds in which a player was in the trio, fading in the same way. */
  inTrio(player: string): number;
}

/** Meetings as they stand on a day; what is later is passed over. */
export function meetingsOf(summaries: readonly Summary[], today: string): Meetings {
  const meetings = new Faded();
  for (const { date, round } of roundsUntil(summaries, today)) {
    meetings.add(
      round.tallies.map(({ pair }) => pair),
      0.5 ** (daysBetween(date, today) / HALF_LIFE_DAYS),
    );
  }
  return meetings;
}

class Faded implements Meetings {
  /** By the one of two whose id comes first, then by the other. */
  private readonly pairs = new Map<string, Map<string, number>>();
  private readonly trios = new Map<string, number>();

  add(pairs: readonly Pair[], counts: number): void {
    for (const { players } of pairs) {
      const each = players.length > 2 ? counts / 3 : counts;
      for (const [at, a] of players.entries()) {
        if (players.length > 2) this.trios.set(a, this.inTrio(a) + counts);
        for (const b of players.slice(at + 1)) {
          const [one, other] = inOrder(a, b);
          const met = this.pairs.get(one) ?? new Map<string, number>();
          this.pairs.set(one, met);
          met.set(other, (met.get(other) ?? 0) + each);
        }
      }
    }
  }

  together(a: string, b: string): number {
    const [one, other] = inOrder(a, b);
    return this.pairs.get(one)?.get(other) ?? 0;
  }

  inTrio(player: string): number {
    return this.trios.get(player) ?? 0;
  }
}

const inOrder = (a: string, b: string): [string, string] => (a < b ? [a, b] : [b, a]);
