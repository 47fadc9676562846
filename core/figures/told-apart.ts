import { drillOf, type PairRecord, tellingRecords } from './pair-record.ts';
import { comparableClasses, groupsThatMet, partnersOf, type Together } from './separable.ts';

/*
 * Why the effect of a player cannot be told from a partner's. All three read the records that
 * `fitPartners` reads (`tellingRecords`, with its errors).
 */

const played = (records: readonly PairRecord[]): Together[] =>
  tellingRecords(records).map((record) => ({
    players: [record.a, record.b],
    drill: drillOf(record),
  }));

/** Players who have had one partner only, and whom. Two who only ever played together are both in it. */
export function neverParted(records: readonly PairRecord[]): { player: string; partner: string }[] {
  return [...partnersOf(played(records))].flatMap(([player, partners]) => {
    const [partner, another] = partners;
    return partner !== undefined && another === undefined ? [{ player, partner }] : [];
  });
}

/** The players split into groups that never met, see `groupsThatMet`. */
export const groups = (records: readonly PairRecord[]): string[][] =>
  groupsThatMet(played(records));

/** The players split into classes that can be compared, see `comparableClasses`. */
export const comparable = (records: readonly PairRecord[]): string[][] =>
  comparableClasses(played(records));
