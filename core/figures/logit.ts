/** The share whose logit is x, with the logarithms of it and of the rest: finite for any finite x. */
export function fromLogit(x: number): { share: number; logShare: number; logRest: number } {
  const rest = Math.log1p(Math.exp(-Math.abs(x)));
  const logShare = Math.min(0, x) - rest;
  return { share: Math.exp(logShare), logShare, logRest: Math.min(0, -x) - rest };
}

/** So many values at equal distances, both ends among them; 2 or more. */
export const even = (count: number, from: number, to: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
