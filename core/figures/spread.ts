/**
 * The value below which a share of a distribution over whole numbers lies, where each number's
 * weight is spread evenly over half a unit to both sides of it. `weights[i]` belongs to first + i;
 * their sum is above 0 and need not be 1. `share` is strictly between 0 and 1.
 */
export function quantile(weights: Float64Array, first: number, share: number): number {
  let sum = 0;
  for (const weight of weights) sum += weight;
  let rest = share * sum;
  let last = 0;
  for (let i = 0; i < weights.length; i++) {
    const weight = weights[i]!;
    if (weight <= 0) continue;
    if (rest <= weight) return first + i - 0.5 + rest / weight;
    rest -= weight;
    last = i;
  }
  // Only rounding in the sum leads here.
  return first + last + 0.5;
}
