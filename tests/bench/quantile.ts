/** The value below which that share of the values lies; of an even number in the middle the upper one. */
export const quantile = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[
    Math.min(values.length - 1, Math.floor(share * values.length))
  ] ?? Number.NaN;
