/** Spoils files in all the ways that phones, mail and strangers do, and always in the same order. */
export class Mutator {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** A whole number from 0, below another (mulberry32). */
  below(end: number): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let t = this.#state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) % end;
  }

  /** The file after one to four spoilings. */
  mutate(file: Uint8Array): Uint8Array {
    let bytes = file;
    for (let more = this.below(4); more >= 0; more--) bytes = this.#spoil(bytes);
    return bytes;
  }

  #spoil(bytes: Uint8Array): Uint8Array {
    const at = this.below(bytes.length + 1);
    const to = Math.min(bytes.length, at + this.below(200));
    const joined = (...parts: Uint8Array[]) => Uint8Array.from(parts.flatMap((part) => [...part]));
    switch (this.below(9)) {
      case 0: // One bit is flipped.
        return bytes.map((byte, place) => (place === at ? byte ^ (1 << this.below(8)) : byte));
      case 1: // It ends too early.
        return bytes.slice(0, at);
      case 2: // A piece is missing.
        return joined(bytes.slice(0, at), bytes.slice(to));
      case 3: // A piece is there twice.
        return joined(bytes.slice(0, to), bytes.slice(at));
      case 4: // A piece is anything.
        return joined(
          bytes.slice(0, at),
          Uint8Array.from({ length: to - at }, () => this.below(256)),
          bytes.slice(to),
        );
      case 5:
        return joined(bytes.slice(0, at), this.#odd(), bytes.slice(at));
      case 6:
        return this.#lines(bytes);
      default:
        return this.#values(bytes);
    }
  }

  #odd(): Uint8Array {
    const text = ODD[this.below(ODD.length)] ?? '';
    return new TextEncoder().encode(text);
  }

  /** Two lines change places, or one is there again elsewhere. */
  #lines(bytes: Uint8Array): Uint8Array {
    const lines = new TextDecoder().decode(bytes).split('\n');
    const [one, other] = [this.below(lines.length), this.below(lines.length)];
    const moved = lines.splice(one, this.below(2));
    lines.splice(other, 0, ...moved, ...(this.below(3) === 0 ? moved : []));
    return new TextEncoder().encode(lines.join('\n'));
  }

  /** The value of a field becomes another, or a field gets another name. */
  #values(bytes: Uint8Array): Uint8Array {
    const text = new TextDecoder().decode(bytes);
    const fields = [...text.matchAll(/"(\w+)":("[^"]*"|[\d.]+|true|false)/g)];
    const field = fields[this.below(Math.max(1, fields.length))];
    if (!field) return bytes;
    const value = VALUES[this.below(VALUES.length)] ?? 'null';
    const put =
      this.below(4) === 0
        ? `"${NAMES[this.below(NAMES.length)]}":${field[2]}`
        : `"${field[1]}":${value}`;
    const changed = text.slice(0, field.index) + put + text.slice(field.index + field[0].length);
    return new TextEncoder().encode(changed);
  }
}

const NAMES = ['__proto__', 'constructor', 'prototype', '\\u005f_proto__', 'toString', 'x', ''];

const VALUES = [
  ...['null', 'true', '0', '-1', '1e308', '-1e308', '0.1', '1e9', '{}', '[]', '""', '"x"'],
  ...['"__proto__"', '"constructor"', '"../../x"', '"a/b"', '"\\u0000"', '"\\ud800"', '"é"'],
  ...['"zzzzzzzzz-zzz-somebody"', '"000000000-000-somebody"', '"2026-02-30"', '"0000-00-00"'],
  `"${'x'.repeat(41)}"`,
  `"${'x'.repeat(30_000)}"`,
  `${'['.repeat(40)}${']'.repeat(40)}`,
  `${'['.repeat(9_000)}${']'.repeat(9_000)}`,
  '{"__proto__":{"x":1}}',
  '[{"role":0,"stroke":"serve"}]',
];

const ODD = [
  ...['\n', '\r\n', '\r', '\0', '\uFEFF', ',', ';', '\t', '"', '""', '\\', '{', '}', '[', ']'],
  ...['=1+1', '@x', '-1', '\u202E', '\u200B', '\u2028', '  ', 'é', '🎾', '\uFFFD'],
  ...['{"rally-ledger":1}\n', '{"rally-ledger":2}\n', '{"entries":0}\n', '{"entries":-1}\n'],
  'x'.repeat(25_000),
  '\n'.repeat(1_000),
];
