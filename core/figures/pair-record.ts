import { mustCount, mustMeasure } from '../arguments.ts';

/** What two players did together: their sets of one drill over some minutes of live clock. */
export interface PairRecord {
  a: string;
  b: string;
  /** Minutes of live clock. */
  exposure: number;
  sets: number;
  /** Which drill it was; records without one are all taken for the same. */
  drill?: string;
}

/** The drill a record belongs to; '' where none is named. */
export const drillOf = (record: PairRecord) => record.drill ?? '';

/**
 * The records that tell players apart, in their order: without those of no exposure, and without
 * those of a drill in which nobody has made a set yet, where everyone looks alike.
 *
 * A record of a player with himself, an exposure that is negative or infinite, sets that are not a
 * whole number from 0, and sets at exposure 0 are a RangeError.
 */
export function tellingRecords(records: readonly PairRecord[]): PairRecord[] {
  const withSets = new Set<string>();
  for (const record of records) {
    mustMeasure('exposure', record.exposure);
    mustCount('sets', record.sets);
    if (record.a === record.b) throw new RangeError(`a and b are both ${record.a}`);
    if (record.sets > 0 && record.exposure === 0) {
      throw new RangeError(`exposure is 0 where ${record.sets} sets were made`);
    }
    if (record.sets > 0) withSets.add(drillOf(record));
  }
  return records.filter((record) => record.exposure > 0 && withSets.has(drillOf(record)));
}
