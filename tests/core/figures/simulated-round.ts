/**
 * Rounds played shot by shot by simulated pairs. It shares nothing with the program, so that what the
 * program concludes from a round's counts can be held against what happened in it.
 */

export type Random = () => number;

/** Bob Jenkins' small fast counter (sfc32), from memory: even numbers in [0, 1), the same for a seed. */
export function randomNumbers(seed: number): Random {
  let a = 0x9e3779b9;
  let b = 0x243f6a88;
  let c = seed | 0;
  let counter = 1;
  const next = () => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let i = 0; i < 15; i++) next();
  return next;
}

/** Standard normal (Box and Muller 1958). */
export const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** Gamma of the given mean and coefficient of variation, which must be below 1 (Marsaglia and Tsang 2000). */
export function gamma(random: Random, mean: number, variation: number): number {
  if (mean === 0) return 0;
  const shape = 1 / variation ** 2;
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal(random);
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - random()) < x * x * 0.5 + d * (1 - v + Math.log(v)))
      return (d * v * mean) / shape;
  }
}

const lognormal = (random: Random, median: number, sdLog: number): number =>
  median * Math.exp(sdLog * normal(random));

/** A pair's constants in one round. */
export interface Pair {
  /** Chance that a shot succeeds. */
  success: number;
  /** Mean seconds of a shot, of a re-feed after a miss and of the pause after a set. */
  tempo: number;
  refeed: number;
  pause: number;
}

/** A pair of this success share with the clock of juniors: tempo, re-feed and pause vary by pair. */
export const pairOf = (random: Random, success: number): Pair => ({
  success,
  tempo: lognormal(random, 1.53, 0.127),
  refeed: lognormal(random, 5.66, 0.27),
  pause: lognormal(random, 4.24, 0.27),
});

/** A success share like those of juniors: Beta(4, 1), by its inverse. */
export const juniorSuccess = (random: Random): number => random() ** (1 / 4);

export interface Played {
  shots: number;
  sets: number;
  misses: number;
  /** How far the unfinished set had come at the horn. */
  showing: number;
  /** Longest run that was not a whole set. */
  best: number;
  /** When each set was tapped: 0.2 s off its end, never after the horn. */
  times: number[];
}

export interface Drill {
  startsAgain: boolean;
  size: number;
  seconds: number;
  /** The rally in progress at the horn is played to its end. */
  playedOut?: boolean;
}

export function playRound(random: Random, pair: Pair, drill: Drill): Played {
  const { startsAgain, size, seconds, playedOut = false } = drill;
  const played: Played = { shots: 0, sets: 0, misses: 0, showing: 0, best: 0, times: [] };
  let at = 0;
  let run = 0;
  for (;;) {
    at += gamma(random, pair.tempo, 0.15);
    if (at > seconds && !(playedOut && run > 0)) break;
    played.shots++;
    if (random() < pair.success) {
      run++;
      if (run < size) {
        played.best = Math.max(played.best, run);
      } else {
        played.sets++;
        played.times.push(Math.min(seconds, at + 0.2 * normal(random)));
        run = 0;
        at += gamma(random, pair.pause, 0.4);
      }
    } else {
      played.misses++;
      if (startsAgain) run = 0;
      at += gamma(random, pair.refeed, 0.4);
    }
  }
  played.showing = run;
  return played;
}
