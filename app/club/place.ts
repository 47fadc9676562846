/**
 * A place that phones share. Each writes one file of its own and reads those of the others, so that
 * there is nothing to conflict; where two write one file by mistake, the tag tells.
 */
export interface Place {
  /** The files that are there, by their names, with a tag that changes whenever they do. */
  list(): Promise<Map<string, string>>;
  /** A file as it is now; undefined where it still has the tag that is known. */
  read(name: string, known?: string): Promise<{ file: Blob; tag: string } | undefined>;
  /**
   * Writes a file, over the one with the tag that is known, or where there is none.
   *
   * @returns the new tag, or that somebody else wrote it meanwhile
   */
  write(name: string, file: Blob, known?: string): Promise<{ tag: string } | 'changed'>;
}

/**
 * Why a place could not be met. `unreachable`: no network, or nobody answers; `refused`: the name or
 * password is wrong, or nothing may be written; `missing`: there is no such folder; `full`: there is
 * no room left; `elsewhere`: it leads to another server, which is never followed; `strange`: what
 * answers is no such place.
 */
export type PlaceFault = 'unreachable' | 'refused' | 'missing' | 'full' | 'elsewhere' | 'strange';

export class PlaceError extends Error {
  constructor(readonly fault: PlaceFault) {
    super(fault);
    this.name = 'PlaceError';
  }
}
