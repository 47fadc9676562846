/**
 * The logarithms of [x]_j = x (x + 1) … (x + j − 1) for j = 0 … most, x above 0. They give a
 * Beta(a, b) chance of a given order of h hits and m misses, [a]_h [b]_m / [a + b]_(h + m), and with
 * x = 1 the factorials.
 */
export function logRising(x: number, most: number): Float64Array {
  const logs = new Float64Array(most + 1);
  for (let j = 1; j <= most; j++) logs[j] = logs[j - 1]! + Math.log(x + j - 1);
  return logs;
}
