import * as z from 'zod/mini';
import { courtSizeNames } from '../court/court.ts';
import type { Entry } from './entry.ts';

export const units = ['metres', 'feet'] as const;

/** Most courts that one squad is spread over: no more than it can have pairs. */
export const MOST_COURTS = 12;

/** What holds for a squad until it is set otherwise. */
export const SquadFacts = {
  /** The courts that the squad plays on. */
  size: z.enum(courtSizeNames),
  /** How many courts it has; not known where left out. */
  courts: z.optional(z.number().check(z.int(), z.minimum(1), z.maximum(MOST_COURTS))),
  /** In which lengths are shown. */
  units: z.enum(units),
};
const Settings = z.object(SquadFacts);
export type SquadSettings = z.infer<typeof Settings>;

/** The full court in metres, the number of courts not known. */
export const usualSettings: SquadSettings = { size: 'full', units: 'metres' };

/** The settings that stand, of entries sorted by id. */
export function foldSettings(entries: Iterable<Entry>): SquadSettings {
  let settings = usualSettings;
  for (const entry of entries) {
    if (entry.kind !== 'squad-set') continue;
    const { size, courts, units } = entry;
    settings = { size, ...(courts !== undefined && { courts }), units };
  }
  return settings;
}
