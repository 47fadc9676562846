/**
 * Bytes as text that a QR code holds in its alphanumeric mode: two bytes in three characters
 * (RFC 9285).
 */

const ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
const BASE = ALPHABET.length;
const VALUES = new Map([...ALPHABET].map((letter, value) => [letter, value]));

export function toBase45(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 2) {
    const [one = 0, other] = [bytes[at], bytes[at + 1]];
    let value = other === undefined ? one : 256 * one + other;
    for (let digit = other === undefined ? 2 : 3; digit > 0; digit--) {
      text += ALPHABET[value % BASE];
      value = Math.floor(value / BASE);
    }
  }
  return text;
}

/** Undefined where the text is not base45: another letter, a value too large, or a letter left over. */
export function fromBase45(text: string): Uint8Array | undefined {
  if (text.length % 3 === 1) return undefined;
  const bytes = new Uint8Array(2 * Math.floor(text.length / 3) + (text.length % 3 === 2 ? 1 : 0));
  for (let at = 0, to = 0; at < text.length; at += 3, to += 2) {
    const group = text.slice(at, at + 3);
    let value = 0;
    for (const letter of [...group].reverse()) {
      const digit = VALUES.get(letter);
      if (digit === undefined) return undefined;
      value = value * BASE + digit;
    }
    if (value > (group.length === 3 ? 0xffff : 0xff)) return undefined;
    if (group.length === 3) bytes[to] = value >> 8;
    bytes[group.length === 3 ? to + 1 : to] = value & 0xff;
  }
  return bytes;
}
