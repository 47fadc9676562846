/** How many of these rounds each player was in; a pair that waited for a court was not. */
export function roundsPlayed(
  rounds: Iterable<{ tallies: readonly { pair: { players: readonly string[] } }[] }>,
): Map<string, number> {
  const played = new Map<string, number>();
  for (const { tallies } of rounds) {
    for (const player of tallies.flatMap(({ pair }) => pair.players)) {
      played.set(player, (played.get(player) ?? 0) + 1);
    }
  }
  return played;
}
