import { nullSpace } from './linear.ts';
import { drillOf, type PairRecord, tellingRecords } from './pair-record.ts';

/*
 * Why the effect of a player cannot be told from a partner's. All three read the records that
 * `fitPartners` reads (`tellingRecords`, with its errors) and give the players in the order of
 * their ids, so that the same squad always gets the same words.
 */

/** Whom each player has played with. */
function partnersOf(records: readonly PairRecord[]): Map<string, Set<string>> {
  const partners = new Map<string, Set<string>>();
  const met = (player: string, partner: string) =>
    partners.set(player, (partners.get(player) ?? new Set()).add(partner));
  for (const { a, b } of tellingRecords(records)) {
    met(a, b);
    met(b, a);
  }
  return new Map([...partners].sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Players who have had one partner only, and whom. Two who only ever played together are both in it. */
export function neverParted(records: readonly PairRecord[]): { player: string; partner: string }[] {
  return [...partnersOf(records)].flatMap(([player, partners]) => {
    const [partner, another] = partners;
    return partner !== undefined && another === undefined ? [{ player, partner }] : [];
  });
}

/**
 * The players split into groups that never met: nobody in one has played with anybody in another.
 * One group where everyone hangs together, none where no record tells anything.
 */
export function groups(records: readonly PairRecord[]): string[][] {
  const partners = partnersOf(records);
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

/**
 * The players split into classes such that the records alone tell the difference of any two in the
 * same class, and of no two in different ones. One class where everyone can be compared.
 *
 * In a ring of four those who sit opposite are a class: raise one pair of them, lower the other,
 * and every record stays what it was. Groups on different drills are told apart by nothing either:
 * an easier drill looks like better players. In general: two players differ alike in every vector
 * that the design matrix (drills, then players) sends to 0.
 */
export function comparable(records: readonly PairRecord[]): string[][] {
  const telling = tellingRecords(records);
  const columns = new Map<string, number>();
  const column = (kind: 'drill' | 'player', id: string) => {
    const key = `${kind} ${id}`;
    if (!columns.has(key)) columns.set(key, columns.size);
    return columns.get(key)!;
  };
  const rows = telling.map((record) => [
    column('drill', drillOf(record)),
    column('player', record.a),
    column('player', record.b),
  ]);
  // XᵀX of the design X sends the same vectors to 0 as X does, and is small.
  const width = columns.size;
  const gram = new Float64Array(width * width);
  for (const row of rows) for (const i of row) for (const j of row) gram[i * width + j]! += 1;
  const vectors = nullSpace(gram);
  const classes = new Map<string, string[]>();
  for (const player of partnersOf(records).keys()) {
    const i = columns.get(`player ${player}`)!;
    const key = vectors.map((vector) => Math.round(1e6 * vector[i]!)).join();
    classes.set(key, [...(classes.get(key) ?? []), player]);
  }
  return [...classes.values()];
}
