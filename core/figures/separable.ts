import { nullSpace } from './linear.ts';

/*
 * Who can be told from whom by who played with whom. All three give the players in the order of
 * their ids, so that the same squad always gets the same words.
 */

/** One, two or three who played a drill together. */
export interface Together {
  players: readonly string[];
  drill: string;
}

/** Whom each player has played with, nobody for one who only ever played alone. */
export function partnersOf(played: readonly Together[]): Map<string, Set<string>> {
  const partners = new Map<string, Set<string>>();
  for (const { players } of played) {
    for (const player of players) {
      const own = partners.get(player) ?? new Set();
      partners.set(player, own);
      for (const partner of players) if (partner !== player) own.add(partner);
    }
  }
  return new Map([...partners].sort(([a], [b]) => (a < b ? -1 : 1)));
}

/**
 * The players split into groups that never met: nobody in one has played with anybody in another.
 * One group where everyone hangs together, none where nobody played.
 */
export function groupsThatMet(played: readonly Together[]): string[][] {
  const partners = partnersOf(played);
  const seen = new Set<string>();
  const found: string[][] = [];
  for (const first of partners.keys()) {
    if (seen.has(first)) continue;
    seen.add(first);
    const group = [first];
    for (const player of group) {
      for (const partner of partners.get(player)!) {
        if (!seen.has(partner)) group.push(partner);
        seen.add(partner);
      }
    }
    found.push(group.sort());
  }
  return found;
}

/** A drill weighs as much in a row as its players together; in sixths all weights are whole. */
const DRILL_WEIGHT = 6;

/**
 * The players split into classes such that what was played alone tells the difference of any two in
 * the same class, and of no two in different ones. One class where everyone can be compared.
 *
 * In a ring of four those who sit opposite are a class: raise one pair of them, lower the other,
 * and everything stays what it was. Groups on different drills are told apart by nothing either:
 * an easier drill looks like better players. In general: two players differ alike in every vector
 * that the design matrix (drills, then the mean of the players) sends to 0.
 */
export function comparableClasses(played: readonly Together[]): string[][] {
  const columns = new Map<string, number>();
  const column = (kind: 'drill' | 'player', id: string) => {
    const key = `${kind} ${id}`;
    if (!columns.has(key)) columns.set(key, columns.size);
    return columns.get(key)!;
  };
  const rows = played.map(({ players, drill }) => [
    [column('drill', drill), DRILL_WEIGHT] as const,
    ...players.map((id) => [column('player', id), DRILL_WEIGHT / players.length] as const),
  ]);
  // XᵀX of the design X sends the same vectors to 0 as X does, and is small.
  const width = columns.size;
  const gram = new Float64Array(width * width);
  for (const row of rows) {
    for (const [i, x] of row) for (const [j, y] of row) gram[i * width + j]! += x * y;
  }
  const vectors = nullSpace(gram);
  const classes = new Map<string, string[]>();
  for (const player of partnersOf(played).keys()) {
    const i = columns.get(`player ${player}`)!;
    const key = vectors.map((vector) => Math.round(1e6 * vector[i]!)).join();
    classes.set(key, [...(classes.get(key) ?? []), player]);
  }
  return [...classes.values()];
}
