import type { Tally } from '../round/tally.ts';
import type { OpenRound } from './practice.ts';

/**
 * The rounds of a practice with every player counted once at a time. Two phones that hold one
 * practice can each play its next round, with pairs of their own or with the same: nobody is in two
 * rounds at once, so of the counts that share a player the one that the coach chose stands, or else
 * the largest, and the others are kept aside in the round they were made in. Rounds are at once where their phones took them for the
 * same round of the practice.
 */
export function countedOnce(rounds: readonly OpenRound[]): OpenRound[] {
  const counted = rounds.filter(({ clock, struck }) => clock && !struck);
  const aside = new Set<Tally>();
  for (const slot of new Set(counted.map((round) => round.slot))) {
    const atOnce = counted.filter((round) => round.slot === slot);
    /** In which round each player counts. */
    const playing = new Map<string, OpenRound>();
    const counts = atOnce.flatMap((round) => round.tallies.map((tally) => ({ round, tally })));
    // A stable sort: of equal counts that of the round which was started first.
    const stands = (a: Tally, b: Tally) =>
      Number(b.chosen ?? false) - Number(a.chosen ?? false) || b.sets - a.sets;
    for (const { round, tally } of counts.sort((a, b) => stands(a.tally, b.tally))) {
      const { players } = tally.pair;
      const isElsewhere = (player: string) => (playing.get(player) ?? round) !== round;
      if (players.some(isElsewhere)) aside.add(tally);
      else for (const player of players) playing.set(player, round);
    }
  }
  if (aside.size === 0) return [...rounds];
  return rounds.map((round) => {
    const set = round.tallies.filter((tally) => aside.has(tally));
    if (set.length === 0) return round;
    return {
      ...round,
      tallies: round.tallies.filter((tally) => !aside.has(tally)),
      aside: set,
    };
  });
}
