import { readFileSync } from 'node:fs';

/** A squad whose cheapest pairs another implementation has found; made by matchings.py. */
export interface MatchingCase {
  n: number;
  kind: keyof typeof kinds;
  seed: number;
  /** Exact least cost in units of 2^-80; null where nobody can pair everyone. */
  optimum: string | null;
}

const file = JSON.parse(readFileSync(new URL('matchings.json', import.meta.url), 'utf8'));
export const matchingCases: MatchingCase[] = file.cases;
export const matchingSource: string = file.source;

/** The generator of matchings.py. */
function mulberry32(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

type Draw = () => number;

/** How a squad's costs are drawn, word for word as in matchings.py. */
export const kinds = {
  whole: (draw: Draw) => Math.floor(draw() * 21),
  ties: (draw: Draw) => Math.floor(draw() * 3),
  alike: () => 7,
  negative: (draw: Draw) => Math.floor(draw() * 21) - 20,
  fractional: (draw: Draw) => draw() * 2 - 1,
  tenths: (draw: Draw) => Math.floor(draw() * 10) / 10,
  forbidden: (draw: Draw) => (draw() < 0.82 ? Infinity : Math.floor(draw() * 21)),
  mixed: (draw: Draw) => (draw() < 0.5 ? Infinity : draw() * 4 - 2),
  trios: (draw: Draw, i: number, j: number) =>
    Math.floor(i / 3) === Math.floor(j / 3) ? 0 : 1 + Math.floor(draw() * 3),
  products: (_: Draw, i: number, j: number) => (i + 1) * (j + 1),
  scales: (draw: Draw) => draw() * 2 ** (Math.floor(draw() * 60) - 30),
} as const;

/** A symmetric table of costs, drawn row by row above the diagonal. */
export function drawCosts({ n, kind, seed }: Omit<MatchingCase, 'optimum'>): number[][] {
  const draw = mulberry32(seed);
  const cost = Array.from({ length: n }, () => Array<number>(n).fill(0));
  for (let i = 0; i < n; i += 1) {
    for (let j = i + 1; j < n; j += 1) {
      const value = kinds[kind](draw, i, j);
      cost[i]![j] = value;
      cost[j]![i] = value;
    }
  }
  return cost;
}
