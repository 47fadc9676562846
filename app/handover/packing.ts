import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';

/** No practice is as long: what unpacks to more was made to fill a phone. */
export const MOST_BYTES = 1_048_576;
/** Packed bytes that are unpacked in one go: at the very most they become a thousand times as many. */
const PORTION = 512;

/** A text packed for a code or a link (RFC 1951). */
export const pack = (text: string): Uint8Array => deflateSync(strToU8(text), { level: 9 });

/**
 * The text that was packed. `damaged` where the bytes are none that were packed so, `large` where it
 * would be longer than 1 MiB: no more than that, and one portion, is ever unpacked.
 */
export function unpack(bytes: Uint8Array): { text: string } | 'damaged' | 'large' {
  const parts: Uint8Array[] = [];
  let size = 0;
  let ended = false;
  const inflate = new Inflate((part, final) => {
    size += part.length;
    if (size <= MOST_BYTES) parts.push(part);
    ended ||= final;
  });
  try {
    for (let at = 0; at < bytes.length && size <= MOST_BYTES; at += PORTION) {
      inflate.push(bytes.subarray(at, at + PORTION), at + PORTION >= bytes.length);
    }
    if (size > MOST_BYTES) return 'large';
    if (!ended) return 'damaged';
    const whole = new Uint8Array(size);
    let at = 0;
    for (const part of parts) {
      whole.set(part, at);
      at += part.length;
    }
    return { text: strFromU8(whole) };
  } catch {
    return 'damaged';
  }
}
