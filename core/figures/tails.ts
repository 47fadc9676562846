/**
 * A family of counts, told by how each probability grows out of the one before it:
 * P(j) / P(j − 1) = θ · growth(j). Sums of such probabilities relative to one of them need neither
 * factorials nor a gamma function, and lose no digits at large counts.
 */
export type Growth = (j: number) => number;

/** Poisson counts; θ is their mean. */
export const poisson: Growth = (j) => 1 / j;

/** Successes in a number of tries; θ is the odds of one success, p / (1 − p). */
export const binomial =
  (tries: number): Growth =>
  (j) =>
    (tries - j + 1) / j;

export type Side = 'or-more' | 'or-less';

/** A term below this share of the sum is far down the falling side: it and the rest change no digit. */
const NEGLIGIBLE = 1e-20;

/**
 * The probabilities on one side of a count, in units of the count's own, and their moment: each
 * times its distance from the count.
 */
function beyond(count: number, theta: number, growth: Growth, side: Side) {
  let term = 1;
  let weight = 0;
  let moment = 0;
  const step = side === 'or-more' ? 1 : -1;
  for (let j = count + step; j >= 0; j += step) {
    const ratio = step > 0 ? theta * growth(j) : 1 / (theta * growth(j + 1));
    term *= ratio;
    weight += term;
    moment += term * (j - count);
    if (term <= weight * NEGLIGIBLE) break;
  }
  return { weight, moment };
}

/**
 * The chance of `count` or more (or of `count` or less) at θ, and the slope of its logarithm in ln θ.
 * In an exponential family that slope is the mean of the counts inside the tail minus the mean of all.
 * `count` is a whole number that the family allows, θ is positive.
 */
export function tail(count: number, theta: number, growth: Growth, side: Side) {
  const above = beyond(count, theta, growth, 'or-more');
  const below = beyond(count, theta, growth, 'or-less');
  const [inside, outside] = side === 'or-more' ? [above, below] : [below, above];
  const within = 1 + inside.weight;
  const chance = 1 / (1 + outside.weight / within);
  const slope =
    ((inside.moment / within) * outside.weight - outside.moment) / (within + outside.weight);
  return { chance, slope };
}

/**
 * The θ at which `count` or more (or less) has the given chance, between 0 and ½, to 1e-13 of itself.
 *
 * Newton's method on the log of the chance as a function of ln θ, which is concave in both families: a
 * step from beyond the root, where the chance is too small, comes back without passing the root, and
 * so does every step after it. Only the first step can overshoot. `start` must be near enough to the
 * root for that one step to be harmless; the score limits are, at any count and any level.
 */
export function thetaWithTail(
  count: number,
  growth: Growth,
  side: Side,
  chance: number,
  start: number,
): number {
  let theta = start;
  for (;;) {
    const now = tail(count, theta, growth, side);
    const step = Math.log(chance / now.chance) / now.slope;
    theta *= Math.exp(step);
    // Newton's error after a step is of the order of the step squared, times the count.
    if (!(Math.abs(step) > 1e-13)) return theta;
  }
}
