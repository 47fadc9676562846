import { fromBase45, toBase45 } from './base45.ts';
import { crc32 } from './crc32.ts';

/**
 * A transfer as numbered frames, each the text of one QR code. They may be seen in any order, again
 * and again, and not all at the first turn.
 *
 * A frame is base45 of: `RL`, the version of this form, what is transferred, the transfer's id (the
 * CRC-32 of all its bytes), index from 0, total, a CRC-32 over all of these and what follows, and
 * its share of the bytes. Numbers are big-endian, of 1, 1, 4, 2, 2 and 4 bytes.
 */
const VERSION = 1;
const HEAD = 16;

/** A QR code of version 15 at level M holds 600 such characters (ISO/IEC 18004), which are 400 bytes. */
const FRAME_BYTES = 400;
const SHARE = FRAME_BYTES - HEAD;

/** A turn of so many at five a second takes a minute: nobody holds a phone still for longer. */
export const MOST_FRAMES = 300;

/** What is transferred: packed entries of a ledger. A later version may transfer something else. */
const ENTRIES = 0;

/** The frames of these bytes; undefined where they would be too many. */
export function toFrames(bytes: Uint8Array): string[] | undefined {
  const total = Math.max(1, Math.ceil(bytes.length / SHARE));
  if (total > MOST_FRAMES) return undefined;
  const transfer = crc32(bytes);
  return Array.from({ length: total }, (_, index) => {
    const share = bytes.subarray(index * SHARE, (index + 1) * SHARE);
    const frame = new Uint8Array(HEAD + share.length);
    const view = new DataView(frame.buffer);
    frame.set([0x52, 0x4c, VERSION, ENTRIES]);
    view.setUint32(4, transfer);
    view.setUint16(8, index);
    view.setUint16(10, total);
    frame.set(share, HEAD);
    view.setUint32(12, sumOf(frame));
    return toBase45(frame);
  });
}

/** The CRC-32 of a frame but for the place where it stands itself. */
function sumOf(frame: Uint8Array): number {
  const rest = new Uint8Array(frame.length - 4);
  rest.set(frame.subarray(0, 12));
  rest.set(frame.subarray(HEAD), 12);
  return crc32(rest);
}

/**
 * What a code that was seen is: `foreign`, none of this app; `version`, of a newer form; `damaged`,
 * cut or changed, or at odds with its transfer; `endless`, of more frames than any transfer has; or
 * one of a transfer, which may now be whole.
 */
export type Seen =
  | { as: 'foreign' | 'version' | 'damaged' | 'endless' }
  | { as: 'frame'; transfer: number; have: number; total: number; first: boolean }
  | { as: 'whole'; transfer: number; bytes: Uint8Array };

/** Transfers that are gathered beside each other: a second sender in sight spoils nothing. */
const MOST_TRANSFERS = 3;

interface Gathered {
  total: number;
  shares: Map<number, Uint8Array>;
}

/** Gathers frames until a transfer is whole. */
export class FrameGatherer {
  readonly #transfers = new Map<number, Gathered>();

  take(text: string): Seen {
    const frame = fromBase45(text);
    if (!frame || frame.length < 4 || frame[0] !== 0x52 || frame[1] !== 0x4c) {
      return { as: 'foreign' };
    }
    if (frame[2] !== VERSION || frame[3] !== ENTRIES) return { as: 'version' };
    if (frame.length < HEAD) return { as: 'damaged' };
    const view = new DataView(frame.buffer);
    if (view.getUint32(12) !== sumOf(frame)) return { as: 'damaged' };
    const [transfer, index, total] = [view.getUint32(4), view.getUint16(8), view.getUint16(10)];
    if (total === 0 || total > MOST_FRAMES || index >= total) return { as: 'endless' };
    const known = this.#transfers.get(transfer);
    if (known && known.total !== total) return { as: 'damaged' };
    const own = known ?? { total, shares: new Map() };
    this.#transfers.delete(transfer);
    this.#transfers.set(transfer, own);
    const [oldest] = this.#transfers.keys();
    if (this.#transfers.size > MOST_TRANSFERS && oldest !== undefined) {
      this.#transfers.delete(oldest);
    }
    own.shares.set(index, frame.subarray(HEAD));
    if (own.shares.size < total) {
      return { as: 'frame', transfer, have: own.shares.size, total, first: !known };
    }
    const bytes = joined(own);
    if (crc32(bytes) === transfer) return { as: 'whole', transfer, bytes };
    this.#transfers.delete(transfer);
    return { as: 'damaged' };
  }
}

function joined({ total, shares }: Gathered): Uint8Array {
  const all = Array.from({ length: total }, (_, index) => shares.get(index) ?? new Uint8Array());
  const bytes = new Uint8Array(all.reduce((sum, share) => sum + share.length, 0));
  let at = 0;
  for (const share of all) {
    bytes.set(share, at);
    at += share.length;
  }
  return bytes;
}
