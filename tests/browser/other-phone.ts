import { endingLine, entryLine, headingLine } from '../../core/exchange/backup.ts';
import { type Entry, makeEntry, type Saying } from '../../core/ledger/entry.ts';
import { nextStamp, writerOf } from '../../core/ledger/stamp.ts';

/** A phone of which only its entries are seen: what it wrote comes as a file. */
export class OtherPhone {
  readonly entries: Entry[] = [];
  #last = '';

  /**
   * @param name ten letters
   * @param at milliseconds since 1970 of its first entry; one a second follows
   */
  constructor(
    readonly name: string,
    public at: number,
  ) {}

  write(...sayings: Saying[]): Entry[] {
    return sayings.map((saying) => {
      this.#last = nextStamp(this.#last, this.at, writerOf(this.name, 'window'));
      const entry = makeEntry(saying, this.#last, this.at);
      this.entries.push(entry);
      this.at += 1_000;
      return entry;
    });
  }

  /** Its entries, and others that it holds, as a file. */
  file(...others: Entry[]) {
    const all = [...others, ...this.entries];
    const text = [headingLine(), ...all.map(entryLine), endingLine(all.length)].join('');
    return { name: 'theirs.txt', mimeType: 'text/plain', buffer: Buffer.from(text) };
  }
}
