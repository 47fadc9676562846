/**
 * A stream of numbers from 0 up to, but never, 1 that look random and are the same for the same
 * seed, on every phone: the seed's letters by FNV-1a (Fowler, Noll and Vo), then Mulberry32 (Ettinger
 * 2017); both from memory. For drawing lots, and for nothing that must be kept secret.
 */
export function drawnFrom(seed: string): () => number {
  let state = 0x811c9dc5;
  for (let at = 0; at < seed.length; at++) {
    state = Math.imul(state ^ seed.charCodeAt(at), 0x01000193);
  }
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
