import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase45, toBase45 } from '../../../core/exchange/base45.ts';

const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

/** RFC 9285, sections 4.3 and 4.4. */
const VECTORS = [
  ['AB', 'BB8'],
  ['Hello!!', '%69 VD92EX0'],
  ['base-45', 'UJCLQE7W581'],
  ['ietf!', 'QED8WEX0'],
] as const;

describe('base45', () => {
  test.each(VECTORS)('of %s is %s, as RFC 9285 has it, and back', (text, coded) => {
    expect(toBase45(bytes(text))).toBe(coded);
    expect(fromBase45(coded)).toEqual(bytes(text));
  });

  // RFC 9285, section 6: FGW is 65,535, and GGW would be 65,536.
  test('takes the largest value and refuses one beyond it, as RFC 9285 asks', () => {
    expect(fromBase45('FGW')).toEqual(Uint8Array.of(255, 255));
    expect(fromBase45('GGW')).toBeUndefined();
    expect(fromBase45(':::')).toBeUndefined();
    expect(fromBase45('::')).toBeUndefined();
  });

  test.each(['A', 'AAAA', 'ab8', 'BB8\n', 'BÉ8', '#00'])('is not %j', (text) => {
    expect(fromBase45(text)).toBeUndefined();
  });

  test('gives back any bytes, in three characters for two', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 500 }), (any) => {
        const text = toBase45(any);
        expect(text.length).toBe(Math.ceil(1.5 * any.length));
        expect(fromBase45(text)).toEqual(any);
      }),
    );
  });

  test('reads no text that it would not write itself', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 30 }), (text) => {
        const read = fromBase45(text);
        if (read) expect(toBase45(read)).toBe(text);
      }),
    );
  });
});
