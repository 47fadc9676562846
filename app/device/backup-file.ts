import { endingLine, entryLine, headingLine } from '../../core/exchange/backup.ts';
import type { AnyEntry } from '../../core/ledger/entry.ts';

/** Text of so many characters still goes through every phone's share sheet, and is read by people. */
const PLAIN = 5_000_000;

/**
 * A file of all these entries, and how many they are. A long one is packed where the phone can:
 * that goes out as a download, for share sheets take texts and refuse what is packed.
 */
export async function makeBackup(
  portions: AsyncIterable<readonly AnyEntry[]>,
  name: string,
): Promise<{ file: File; entries: number }> {
  const parts: string[] = [headingLine()];
  let entries = 0;
  let length = 0;
  for await (const portion of portions) {
    const text = portion.map(entryLine).join('');
    parts.push(text);
    entries += portion.length;
    length += text.length;
  }
  parts.push(endingLine(entries));
  const packs = length > PLAIN && 'CompressionStream' in globalThis;
  return { file: packs ? await packedFile(parts, name) : textFile(parts, name), entries };
}

/** A file of one practice, at once: a share sheet opens for nothing but a tap. */
export const practiceFile = (entries: readonly AnyEntry[], name: string): File =>
  textFile([headingLine(), ...entries.map(entryLine), endingLine(entries.length)], name);

/** Phones share texts; a name that ends in .json many refuse. */
export const textFile = (parts: string[], name: string): File =>
  new File(parts, `${name}.txt`, { type: 'text/plain' });

async function packedFile(parts: string[], name: string): Promise<File> {
  const stream = new Blob(parts).stream().pipeThrough(new CompressionStream('gzip'));
  const blob = await new Response(stream).blob();
  return new File([blob], `${name}.txt.gz`, { type: 'application/gzip' });
}
