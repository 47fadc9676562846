/**
 * (1 + x) e^{x²/2} Φ(−x) for x ≥ 0 by powers of y = (x − 4)/(x + 4): a function between 0.39 and 0.55
 * all the way to infinity, so an absolute error of the polynomial is a relative error of Φ however far
 * out in the tail. The substitution is Schonfelder's (Chebyshev expansions for the error and related
 * functions, Math. Comp. 32, 1978); the Chebyshev coefficients were computed for this file with mpmath
 * at 40 digits from 120 Chebyshev nodes, and those left out add up to less than 1e-15. They fall so
 * fast that nothing cancels in the powers, whose coefficients these are (by exact fractions).
 */
const TAIL = [
  0.47205320650984395, -0.09670347732652979, 0.013999634724608825, 0.028600364053903857,
  -0.03219783743544878, 0.01793609747038303, -0.005002378475757048, -0.00028562298498267666,
  0.0006948961789017062, -9.443101828630542e-5, -8.784884943485594e-5, 2.1253211605870817e-5,
  1.3614227944303727e-5, -3.440603100585818e-6, -2.5892658602758174e-6, 4.1911310193590346e-7,
  5.236781080471638e-7, -1.5091283543628724e-8, -9.003385067481538e-8, -8.209925301458888e-9,
  8.941661885440675e-9, 1.5858299859752785e-9,
];

/** e^{x²/2} Φ(−x) for 0 ≤ x < Infinity; even and odd powers apart, since they need not wait for each other. */
function scaledTail(x: number): number {
  const y = (x - 4) / (x + 4);
  const square = y * y;
  let even = 0;
  let odd = 0;
  for (let i = TAIL.length - 2; i >= 0; i -= 2) {
    even = even * square + TAIL[i]!;
    odd = odd * square + TAIL[i + 1]!;
  }
  return (even + y * odd) / (1 + x);
}

/**
 * The standard normal distribution function Φ(x): the chance that a standard normal value is at most
 * x. Relative error below 1e-12 from x = −37.5 (4.6e-308) upwards; further out the result is among the
 * doubles that hold fewer digits, and below −38.5 it is 0. NaN is a RangeError.
 */
export function phi(x: number): number {
  if (Number.isNaN(x)) throw new RangeError('x must be a number');
  if (Math.abs(x) === Infinity) return x > 0 ? 1 : 0;
  const tail = Math.exp((-x * x) / 2) * scaledTail(Math.abs(x));
  return x < 0 ? tail : 1 - tail;
}

/**
 * The x with Φ(x) = p, for p strictly between 0 and 1 (else a RangeError), to 1e-14 of the larger of
 * |x| and 1.
 *
 * Newton's method on ln Φ, which is concave: started left of the root it climbs to the root without
 * ever passing it. The start is left of the root because Φ(−x) ≤ ½ e^{−x²/2} for x ≥ 0.
 */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError('p must be strictly between 0 and 1');
  if (p > 0.5) return -normalQuantile(1 - p);
  let x = -Math.sqrt(-2 * Math.log(2 * p));
  for (;;) {
    // ln p − ln Φ(x) over the slope of ln Φ, which is 1 / (√(2π) e^{x²/2} Φ(x)).
    const scaled = scaledTail(-x);
    const step = (Math.log(p) + (x * x) / 2 - Math.log(scaled)) * Math.sqrt(2 * Math.PI) * scaled;
    if (!(step > 1e-15 * (1 - x))) return x + step;
    x += step;
  }
}
