import { type Family, families } from '../drill/drill.ts';
import { type Difference, differenceFromSquad, middleOf } from './level-difference.ts';
import type { LevelFit } from './level-fit.ts';
import { levelParts, type Part, squadParts } from './level-parts.ts';
import { phi } from './normal.ts';

/** A kind of work that lies below a player's other kinds. */
export interface Need {
  player: string;
  kind: Family;
  /** How far below, in logits: 0.5 is about five balls in a hundred. */
  below: number;
  /** The chance that it is below. */
  sure: number;
  /** How the player stands to the squad at each kind that was seen. */
  kinds: ({ kind: Family } & Difference)[];
}

/** Fewer rounds of a kind than this say nothing of it. */
const ENOUGH_TALLIES = 3;

/**
 * What each player needs: the kinds of work that lie below the player's own others, once it is taken
 * off how hard the squad finds each; over the last eight weeks. It holds a child against nobody but
 * itself. The surest come first: in simulated squads the first one that is 0.3 below with a chance of
 * 0.9 was truly below in 151 of 153 cases, by 0.15 or more in 124. A kind of fewer than three rounds,
 * one at which nobody else was seen, and a player of fewer than two kinds are left out.
 */
export function needsOf(fit: LevelFit, players: readonly string[]): Need[] {
  const middle = middleOf(fit);
  return players
    .flatMap((player) => {
      const kinds = families.flatMap((kind) => {
        const tallies = fit.kinds.get(kind)?.players.get(player)?.tallies ?? 0;
        const difference = differenceFromSquad(fit, player, kind);
        return difference && tallies >= ENOUGH_TALLIES ? [{ kind, ...difference }] : [];
      });
      if (kinds.length < 2) return [];
      const standing = (kind: Family, times: number): Part[] => [
        ...levelParts(fit, player, kind, times, middle),
        ...squadParts(fit, kind, -times, middle),
      ];
      return kinds.map(({ kind }): Need => {
        const others = kinds.filter((other) => other.kind !== kind);
        const { mean, sd } = fit.sum([
          ...standing(kind, -1),
          ...others.flatMap((other) => standing(other.kind, 1 / others.length)),
        ]);
        return { player, kind, below: mean, sure: phi(mean / sd), kinds };
      });
    })
    .filter(({ below }) => below > 0)
    .sort((a, b) => b.sure - a.sure);
}
