import type { AnyEntry } from '../ledger/entry.ts';

/**
 * A file of entries: a backup of everything, or one practice that is handed over. One line each, in
 * any order: a heading, the entries as JSON, and an ending that says how many there are, so that a
 * file that was cut short is known for one.
 */

/** The version of this form; entries of kinds that came later need no new one. */
export const BACKUP_VERSION = 1;

export const headingLine = (): string => `${JSON.stringify({ 'rally-ledger': BACKUP_VERSION })}\n`;
export const entryLine = (entry: AnyEntry): string => `${JSON.stringify(entry)}\n`;
export const endingLine = (entries: number): string => `${JSON.stringify({ entries })}\n`;
