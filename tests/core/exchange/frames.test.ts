import { crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { encode } from 'uqr';
import { describe, expect, test } from 'vitest';
import { fromBase45, toBase45 } from '../../../core/exchange/base45.ts';
import { crc32 } from '../../../core/exchange/crc32.ts';
import { FrameGatherer, MOST_FRAMES, toFrames } from '../../../core/exchange/frames.ts';

const bytesOf = (length: number, salt = 1) =>
  Uint8Array.from({ length }, (_, at) => (at * 31 + salt * 7 + (at >> 3)) & 0xff);

/** A frame with some of its bytes changed, and its sum made right again. */
function forged(text: string, change: (frame: DataView) => void): string {
  const frame = fromBase45(text)!;
  const view = new DataView(frame.buffer);
  change(view);
  const rest = new Uint8Array(frame.length - 4);
  rest.set(frame.subarray(0, 12));
  rest.set(frame.subarray(16), 12);
  view.setUint32(12, crc32(rest));
  return toBase45(frame);
}

describe('the CRC-32', () => {
  test('of 123456789 is CBF43926, the check value of its catalogue', () => {
    expect(crc32(Uint8Array.from('123456789', (digit) => digit.charCodeAt(0)))).toBe(0xcbf43926);
  });

  test.runIf(zlibCrc32)('of any bytes is that of zlib', () => {
    fc.assert(
      fc.property(fc.uint8Array(), (any) => {
        expect(crc32(any)).toBe(zlibCrc32(any));
      }),
    );
  });
});

describe('a transfer', () => {
  test('arrives whole from frames in any order, with some seen again and some lost at first', () => {
    fc.assert(
      fc.property(
        fc.uint8Array({ minLength: 1, maxLength: 4000 }),
        fc.array(fc.nat(), { maxLength: 60 }),
        (bytes, picks) => {
          const frames = toFrames(bytes)!;
          const seen = [...picks.map((pick) => frames[pick % frames.length]!), ...frames];
          const gatherer = new FrameGatherer();
          const whole = seen.map((text) => gatherer.take(text)).find(({ as }) => as === 'whole');
          expect(whole).toMatchObject({ bytes });
        },
      ),
    );
  });

  test('fits a QR code of version 15 at level M in every frame, and no smaller one needs more', () => {
    const frames = toFrames(bytesOf(3000))!;
    expect(frames).toHaveLength(8);
    const codes = frames.map((frame) => encode(frame, { ecc: 'M', boostEcc: false }));
    expect(Math.max(...codes.map(({ version }) => version))).toBe(15);
  });

  test('says how far it has come, and takes a frame that is seen again for one', () => {
    const frames = toFrames(bytesOf(1500))!;
    const gatherer = new FrameGatherer();
    expect(gatherer.take(frames[2]!)).toMatchObject({
      as: 'frame',
      have: 1,
      total: 4,
      first: true,
    });
    expect(gatherer.take(frames[2]!)).toMatchObject({ have: 1, total: 4, first: false });
    expect(gatherer.take(frames[0]!)).toMatchObject({ have: 2, total: 4 });
  });

  test('is kept apart from another that is shown beside it, and both arrive', () => {
    const [one, other] = [bytesOf(1000, 1), bytesOf(1000, 2)];
    const mixed = toFrames(one)!.flatMap((frame, at) => [frame, toFrames(other)![at]!]);
    const gatherer = new FrameGatherer();
    const whole = mixed.map((text) => gatherer.take(text)).filter(({ as }) => as === 'whole');
    expect(whole.map((seen) => 'bytes' in seen && seen.bytes)).toEqual([one, other]);
  });

  test('of too many frames is not made', () => {
    expect(toFrames(bytesOf(384 * MOST_FRAMES))).toHaveLength(MOST_FRAMES);
    expect(toFrames(bytesOf(384 * MOST_FRAMES + 1))).toBeUndefined();
  });
});

describe('a hostile code', () => {
  const [frame = ''] = toFrames(bytesOf(1500))!;
  const seen = (text: string) => new FrameGatherer().take(text).as;

  test.each(['', 'https://club.example/', 'HELLO', '::::::', 'BB8'])(
    'that is none of this app is foreign: %j',
    (text) => expect(seen(text)).toBe('foreign'),
  );

  test('of a newer form is told from one that is damaged', () => {
    expect(seen(forged(frame, (view) => view.setUint8(2, 2)))).toBe('version');
    expect(seen(forged(frame, (view) => view.setUint8(3, 9)))).toBe('version');
  });

  test('with endless totals, none, or an index beyond them is refused', () => {
    for (const [at, value] of [
      [10, 65_535],
      [10, MOST_FRAMES + 1],
      [10, 0],
      [8, 4],
    ] as const) {
      expect(seen(forged(frame, (view) => view.setUint16(at, value)))).toBe('endless');
    }
  });

  test('of which one bit was flipped is damaged or foreign, and never taken', () => {
    fc.assert(
      fc.property(fc.nat(399), fc.nat(7), (byte, bit) => {
        const bytes = fromBase45(frame)!;
        bytes[byte] = (bytes[byte] ?? 0) ^ (1 << bit);
        expect(['damaged', 'foreign', 'version']).toContain(seen(toBase45(bytes)));
      }),
    );
  });

  test('that claims another total, or another share, does not spoil the transfer', () => {
    const frames = toFrames(bytesOf(1500))!;
    const gatherer = new FrameGatherer();
    gatherer.take(frames[0]!);
    const liar = forged(frames[1]!, (view) => view.setUint16(10, 9));
    expect(gatherer.take(liar).as).toBe('damaged');
    const false3 = forged(frames[3]!, (view) => view.setUint8(20, 0xff - view.getUint8(20)));
    expect([false3, frames[1]!, frames[2]!].map((text) => gatherer.take(text).as)).toEqual([
      'frame',
      'frame',
      'damaged',
    ]);
    const again = frames.map((text) => gatherer.take(text).as);
    expect(again.at(-1)).toBe('whole');
  });

  test('of any text at all is never an error', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(seen(text)).toBe('foreign');
      }),
    );
  });
});
