import type { OpenRound } from './practice.ts';

/**
 * The rounds of a practice, each with every look at its players, whichever phone made it. Two phones
 * can each play its next round: nobody is in two rounds at once, so what was seen of a player
 * belongs to the round that counts for that player (see counted-once.ts).
 */
export function lookedAtOnce(rounds: readonly OpenRound[]): OpenRound[] {
  const counted = rounds.filter(({ clock, struck }) => clock && !struck);
  if (!counted.some(({ looks }) => looks)) return [...rounds];
  return rounds.map((round) => {
    if (!counted.includes(round)) return round;
    const { looks: _, ...own } = round;
    const players = new Set(round.tallies.flatMap(({ pair }) => pair.players));
    const looks = counted
      .filter(({ slot }) => slot === round.slot)
      .flatMap((each) => each.looks ?? [])
      .filter(({ player }) => players.has(player));
    return looks.length > 0 ? { ...own, looks } : own;
  });
}
