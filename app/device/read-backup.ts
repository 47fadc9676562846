import {
  type BackupFault,
  BackupReader,
  type Brought,
  LONGEST_LINE,
} from '../../core/exchange/backup-reader.ts';

/** What is done with a file before it is given up. */
export interface Limits {
  /** Bytes of the file as it is. */
  file: number;
  /** Bytes of its text, counted while it unpacks. */
  text: number;
  /** Milliseconds from the first byte to the last line. */
  time: number;
}

/** Ten seasons are some 130 MB of text and 12 MB packed; a slow phone reads them in a minute. */
const LIMITS: Limits = { file: 100_000_000, text: 300_000_000, time: 180_000 };

/**
 * Why a file was refused: a fault of its entries, or of the file as a whole. `large`: it is longer
 * than any ledger; `packing`: it does not unpack; `letters`: it is no text; `slow`: the phone would
 * take too long over it; `unread`: the phone did not let it be read.
 */
export type Refusal =
  | BackupFault
  | { line: number; reason: 'large' | 'packing' | 'letters' | 'slow' | 'unread' };

/**
 * Reads a file of entries, packed or not, and writes nothing. It is unpacked, decoded and checked
 * piece by piece, and left at the first fault or limit.
 */
export async function readBackup(file: Blob, limits = LIMITS): Promise<Brought | Refusal> {
  const reader = new BackupReader();
  if (file.size > limits.file) return reader.fault('large');
  let packed = false;
  try {
    packed = await isPacked(file);
    if (packed && !('DecompressionStream' in globalThis)) return reader.fault('packing');
    return await readText(packed ? unpacked(file) : file.stream(), reader, limits);
  } catch (error) {
    if (error instanceof DOMException && error.name.startsWith('Not'))
      return reader.fault('unread');
    // Only the decoders throw beside that.
    return reader.fault(packed && !(error instanceof LettersError) ? 'packing' : 'letters');
  }
}

const unpacked = (file: Blob) => file.stream().pipeThrough(new DecompressionStream('gzip'));

/** The first two bytes of everything that gzip has packed (RFC 1952). */
async function isPacked(file: Blob): Promise<boolean> {
  const [first, second] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  return first === 0x1f && second === 0x8b;
}

class LettersError extends Error {}

async function readText(
  bytes: ReadableStream<Uint8Array>,
  reader: BackupReader,
  limits: Limits,
): Promise<Brought | Refusal> {
  const started = performance.now();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  const source = bytes.getReader();
  let size = 0;
  let rest = '';
  let breath = started;
  try {
    for (;;) {
      const { done, value } = await source.read();
      size += value?.length ?? 0;
      if (size > limits.text) return reader.fault('large');
      const lines = (rest + decode(decoder, value)).split('\n');
      rest = lines.pop() ?? '';
      if (done && rest !== '') lines.push(rest);
      for (const line of lines) {
        const fault = reader.read(line.endsWith('\r') ? line.slice(0, -1) : line);
        if (fault) return fault;
      }
      if (done) return reader.end();
      // A line that never ends is not gathered.
      if (rest.length > LONGEST_LINE) return reader.read(rest) ?? reader.fault('long');
      if (performance.now() - started > limits.time) return reader.fault('slow');
      if (performance.now() - breath > BREATH_MS) {
        await new Promise((resolve) => setTimeout(resolve));
        breath = performance.now();
      }
    }
  } finally {
    source.cancel().catch(() => {});
  }
}

/** A long file must not hold the screen for longer than this. */
const BREATH_MS = 50;

function decode(decoder: TextDecoder, bytes: Uint8Array | undefined): string {
  try {
    return bytes ? decoder.decode(bytes, { stream: true }) : decoder.decode();
  } catch {
    throw new LettersError();
  }
}
