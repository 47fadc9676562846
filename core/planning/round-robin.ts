export { cheapestPairs } from './cheapest-pairs.ts';

/**
 * Rounds in which everyone meets everyone once: the Berger tables (FIDE Handbook C.05, Annex 1), in
 * which whoever is named first changes so evenly that a role of a drill can follow the order. One
 * player keeps the last seat and the others move on by half a table each round.
 *
 * n players give n - 1 rounds, or n where n is odd: then one sits out each round. Players are
 * told apart by their place in the list, not by value.
 */
export function roundRobin<T>(players: readonly T[]): [T, T][][] {
  const seats = players.length + (players.length % 2);
  const moving = seats - 1;
  return Array.from({ length: Math.max(0, moving) }, (_, round) => {
    const moved = (seat: number) => (seat + (round * seats) / 2) % moving;
    const lastSeat = round % 2 === 0 ? [moved(0), moving] : [moving, moved(0)];
    const tables = [lastSeat];
    for (let seat = 1; seat < seats / 2; seat += 1)
      tables.push([moved(seat), moved(moving - seat)]);
    return tables
      .filter((table) => table.every((seat) => seat < players.length))
      .map(([first, second]): [T, T] => [players[first!]!, players[second!]!]);
  });
}
