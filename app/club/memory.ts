import { signal } from '@preact/signals';
import type { Account } from './webdav.ts';

/** An erasure of another phone's that would take something away here: it waits for the coach. */
export interface Asked {
  kind: 'player-erased' | 'practice-erased';
  of: string;
}

/** What this phone knows of the place it shares. None of it is part of the ledger. */
export interface Memory {
  /** By folder of the phone, or by WebDAV. */
  by: 'folder' | 'webdav';
  account?: Account;
  /** What this phone was called when it wrote there, the present name too. */
  names: string[];
  /** The tag of each file as it was read or written last. */
  tags: Record<string, string>;
  /** Files that could not be taken in as they are, and why. */
  faults: Record<string, string>;
  /** The greatest entry that is in the own file. */
  written: string;
  /** When all of the ledger was last looked through for what is to be written, in milliseconds since 1970. */
  looked?: number;
  /** The phones that had a file there then. */
  phones?: string[];
  /** When this phone was last there, in milliseconds since 1970. */
  met?: number;
  asked: Asked[];
}

/** Where it is kept: a phone without it meets nobody, and loads nothing of this. */
const KEY = 'rally-ledger-place';

function stored(): Memory | undefined {
  try {
    const memory = JSON.parse(localStorage.getItem(KEY) ?? 'null') as Memory | null;
    return memory?.by ? memory : undefined;
  } catch {
    return undefined;
  }
}

export const memory = signal<Memory | undefined>(stored());

export const begin = (by: Memory['by'], account?: Account): void =>
  remember({
    ...{ by, names: [], tags: {}, faults: {}, written: '', asked: [] },
    ...(account && { account }),
  });

export function remember(now: Memory | undefined): void {
  memory.value = now;
  try {
    if (now) localStorage.setItem(KEY, JSON.stringify(now));
    else localStorage.removeItem(KEY);
  } catch {
    // Refused storage: it holds until the page is closed.
  }
}
