import { isReserved } from '../id.ts';
import { isRecord } from '../is-record.ts';
import { type AnyEntry, readEntry } from '../ledger/entry.ts';
import { isPractised, join } from '../ledger/join.ts';
import { BACKUP_VERSION } from './backup.ts';

/** Ten seasons of four practices a week are some 700,000. */
const MOST_ENTRIES = 1_000_000;
/** Characters; the longest entry of this version, a drill with all its words, has some 3,000. */
export const LONGEST_LINE = 20_000;
/** Lists and fields within each other; the deepest entry of this version has five. */
const DEEPEST = 12;

/**
 * Why a file cannot be taken. `heading`: it is no file of a ledger; `version`: it is of a newer
 * form; `long`: a line is; `json`: a line is none; `reserved`: a field has a name that no entry may
 * use; `deep`: too much stands within each other; `entry`: a field is missing or wrong; `many`:
 * there are too many entries; `cut`: the ending is missing; `count`: the ending tells another
 * number; `after`: something follows the ending.
 */
export type BackupReason =
  | 'heading'
  | 'version'
  | 'long'
  | 'json'
  | 'reserved'
  | 'deep'
  | 'entry'
  | 'many'
  | 'cut'
  | 'count'
  | 'after';

/** The first place that is wrong. */
export interface BackupFault {
  /** From 1. */
  line: number;
  /** The path of the field, where one is wrong. */
  field?: string;
  reason: BackupReason;
}

/** What a file brings: entries sorted by id, each once. */
export interface Brought {
  standing: AnyEntry[];
  practices: Map<string, AnyEntry[]>;
  entries: number;
}

/** Reads a file line by line, however long it is; the first fault refuses the whole. */
export class BackupReader {
  #line = 0;
  #entries = 0;
  #ended = false;
  #standing: AnyEntry[] = [];
  #practices = new Map<string, AnyEntry[]>();

  /** Reads the next line, without its break; tells what is wrong with it. */
  read(text: string): BackupFault | undefined {
    this.#line += 1;
    if (text.length > LONGEST_LINE) return this.fault('long');
    if (this.#ended) return text.trim() === '' ? undefined : this.fault('after');
    const value = parse(text);
    if (this.#line === 1) return this.#readHeading(value);
    if (!isRecord(value)) return this.fault('json');
    if ('entries' in value && !('kind' in value)) {
      this.#ended = true;
      return value.entries === this.#entries ? undefined : this.fault('count', 'entries');
    }
    return this.#readEntry(value);
  }

  /** What the lines brought, or that the file was cut short. */
  end(): Brought | BackupFault {
    if (this.#line === 0) {
      this.#line = 1;
      return this.fault('heading');
    }
    if (!this.#ended) {
      this.#line += 1;
      return this.fault('cut');
    }
    return {
      standing: join(this.#standing, []),
      practices: new Map([...this.#practices].map(([id, own]) => [id, join(own, [])])),
      entries: this.#entries,
    };
  }

  /** A fault at the line that is being read. */
  fault<Reason extends string>(reason: Reason, field?: string) {
    return {
      line: Math.max(1, this.#line),
      ...(field !== undefined && { field }),
      reason,
    };
  }

  #readHeading(value: unknown): BackupFault | undefined {
    const version = isRecord(value) ? value['rally-ledger'] : undefined;
    if (!Number.isInteger(version)) return this.fault('heading');
    return version === BACKUP_VERSION ? undefined : this.fault('version', 'rally-ledger');
  }

  #readEntry(value: Record<string, unknown>): BackupFault | undefined {
    const flaw = flawIn(value, [], 0);
    if (flaw) return this.fault(flaw.reason, flaw.path.join('.'));
    const reading = readEntry(value);
    if (reading.as === 'damaged') return this.fault('entry', reading.path);
    this.#entries += 1;
    if (this.#entries > MOST_ENTRIES) return this.fault('many');
    const { entry } = reading;
    if (!isPractised(entry)) {
      this.#standing.push(entry);
      return undefined;
    }
    const own = this.#practices.get(entry.practice);
    if (own) own.push(entry);
    else this.#practices.set(entry.practice, [entry]);
    return undefined;
  }
}

function parse(text: string): unknown {
  try {
    // A mark at the start of a text, which mail and some editors add.
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}

type Flaw = { reason: 'reserved' | 'deep'; path: string[] };

/** The first field, however deep, that no entry may have. */
function flawIn(value: object, path: string[], depth: number): Flaw | undefined {
  for (const [name, each] of Object.entries(value)) {
    if (isReserved(name)) return { reason: 'reserved', path: [...path, name] };
    if (typeof each !== 'object' || each === null) continue;
    if (depth === DEEPEST) return { reason: 'deep', path: [...path, name] };
    const flaw = flawIn(each, [...path, name], depth + 1);
    if (flaw) return flaw;
  }
  return undefined;
}
