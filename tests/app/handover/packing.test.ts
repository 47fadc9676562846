import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MOST_BYTES, pack, unpack } from '../../../app/handover/packing.ts';

describe('a text that was packed', () => {
  test('comes back to the letter, whatever it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(unpack(pack(text))).toEqual({ text });
      }),
    );
  });

  test('is read where another program packed it (RFC 1951)', () => {
    expect(unpack(new Uint8Array(deflateRawSync('Pip, Juno')))).toEqual({ text: 'Pip, Juno' });
  });

  test('is refused where it would grow beyond a megabyte, long before it has grown', () => {
    const bomb = new Uint8Array(deflateRawSync(Buffer.alloc(400_000_000), { level: 9 }));
    expect(bomb.length).toBeLessThan(500_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(unpack(bomb)).toBe('large');
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20 * MOST_BYTES);
  });

  test('may be a megabyte, and no byte more', () => {
    expect(unpack(pack('a'.repeat(MOST_BYTES)))).toHaveProperty('text');
    expect(unpack(pack('a'.repeat(MOST_BYTES + 1)))).toBe('large');
  });

  test('is damaged where it was cut, or any bytes stand for it, and never an error', () => {
    const packed = pack('{"rally-ledger":1}\n'.repeat(40));
    for (let length = 0; length < packed.length; length++) {
      expect(unpack(packed.subarray(0, length))).toBe('damaged');
    }
    fc.assert(
      fc.property(fc.uint8Array(), (any) => {
        expect(['damaged', 'large', 'object']).toContain(
          typeof unpack(any) === 'object' ? 'object' : unpack(any),
        );
      }),
    );
  });
});
