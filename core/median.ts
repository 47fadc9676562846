/**
 * The middle value, or the mean of the middle two; undefined of no values.
 *
 * @throws RangeError for a value that is not a number
 */
export function median(values: readonly number[]): number | undefined {
  if (values.some(Number.isNaN)) throw new RangeError('values holds one that is not a number');
  const sorted = values.toSorted((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)];
  const lower = sorted[Math.ceil(sorted.length / 2) - 1];
  return upper === undefined || lower === undefined ? undefined : (lower + upper) / 2;
}
