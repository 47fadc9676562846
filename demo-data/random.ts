/** A stream of numbers that look random and are the same for the same seed. */
export interface Random {
  /** From 0 up to, but never, 1. */
  unit(): number;
  /** A whole number from 0 to n − 1. */
  below(n: number): number;
  chance(probability: number): boolean;
  normal(mean: number, sd: number): number;
  /** A value whose logarithm is normal, by its median and the sd of the logarithm. */
  logNormal(median: number, sdLog: number): number;
  /** A Gamma value by its mean and coefficient of variation (below 1). */
  gamma(mean: number, variation: number): number;
  shuffled<T>(items: readonly T[]): T[];
  /** Ten characters, as the app draws its ids. */
  id(): string;
}

const ID_LETTERS = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789';

/** The stream of a seed, which may be any whole number; its lowest 32 bits are used. */
export function randomFrom(seed: number): Random {
  if (!Number.isInteger(seed)) throw new RangeError(`seed must be a whole number, not ${seed}`);
  const unit = mulberry32(seed);
  const below = (n: number) => Math.floor(unit() * n);
  // Box and Muller 1958; 1 − u is never 0, which has no logarithm.
  const standard = () => Math.sqrt(-2 * Math.log(1 - unit())) * Math.cos(2 * Math.PI * unit());

  /** Marsaglia and Tsang 2000, without their shortcut: shape 1 and more, scale 1. */
  const standardGamma = (shape: number): number => {
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = standard();
      const v = (1 + c * x) ** 3;
      if (v > 0 && Math.log(1 - unit()) < (x * x) / 2 + d - d * v + d * Math.log(v)) return d * v;
    }
  };

  return {
    unit,
    below,
    chance: (probability) => unit() < probability,
    normal: (mean, sd) => mean + sd * standard(),
    logNormal: (median, sdLog) => median * Math.exp(sdLog * standard()),
    gamma: (mean, variation) => standardGamma(1 / variation ** 2) * mean * variation ** 2,
    shuffled: (items) => {
      const order = [...items];
      for (let last = order.length - 1; last > 0; last -= 1) {
        const other = below(last + 1);
        [order[last], order[other]] = [order[other]!, order[last]!];
      }
      return order;
    },
    id: () => Array.from({ length: 10 }, () => ID_LETTERS[below(ID_LETTERS.length)]).join(''),
  };
}

/** Mulberry32 (Tommy Ettinger, in the public domain; written from memory): 32 bits of state. */
function mulberry32(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
