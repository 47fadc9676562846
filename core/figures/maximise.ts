import { dot } from './linear.ts';

/** How far one step may take an unknown: for logs a factor of seven, beyond which no guess of a curvature holds. */
const FARTHEST = 2;

/**
 * The top of a smooth function by the quasi-Newton method of Broyden, Fletcher, Goldfarb and
 * Shanno with a backtracking line search (Nocedal and Wright, Numerical Optimization, 2006,
 * algorithm 6.1; from memory). It climbs: what it returns is at least as high as the start.
 *
 * Ends where the step's expected gain is below `enough`, or where rounding lets nothing higher be
 * found. For a log-likelihood 1e-18 is a billionth of a standard error.
 *
 * The unknowns are logs or the like: no step takes one of them farther than 2.
 *
 * @param height value and gradient at a point
 * @param start the first point
 * @param inverseCurvature a guess at the inverse of minus the second derivatives, row by row,
 *   positive definite; a good one saves iterations
 * @param enough the gain in height that is not worth a step
 */
export function maximise<Place extends { value: number; gradient: ArrayLike<number> }>(
  height: (point: Float64Array) => Place,
  start: Float64Array,
  inverseCurvature: Float64Array,
  enough = 1e-18,
): Place & { point: Float64Array } {
  const n = start.length;
  const inverse = inverseCurvature.slice();
  const times = (vector: ArrayLike<number>) =>
    Float64Array.from({ length: n }, (_, i) => dot(inverse.subarray(i * n, (i + 1) * n), vector));

  let point = start;
  let place = height(point);
  for (let iteration = 0; iteration < 200; iteration++) {
    let direction = times(place.gradient);
    const longest = direction.reduce((most, d) => Math.max(most, Math.abs(d)), 0);
    if (longest > FARTHEST) direction = direction.map((d) => (d * FARTHEST) / longest);
    const gain = dot(direction, place.gradient);
    if (gain <= enough) break;
    const slack = 1e-13 * (1 + Math.abs(place.value));
    let share = 2;
    let moved: Float64Array;
    let next: Place;
    do {
      share /= 2;
      moved = Float64Array.from(point, (x, i) => x + share * direction[i]!);
      next = height(moved);
    } while (!(next.value >= place.value + 1e-4 * share * gain - slack) && share > 1e-9);
    if (!(next.value >= place.value - slack)) break;

    const step = direction.map((d) => share * d);
    const bend = Float64Array.from(step, (_, i) => place.gradient[i]! - next.gradient[i]!);
    const curve = dot(step, bend);
    // A step along which the slope did not fall tells nothing of a top: keep the old curvature.
    if (curve > 0) {
      const bent = times(bend);
      const scale = (1 + dot(bend, bent) / curve) / curve;
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) {
          inverse[i * n + j]! +=
            scale * step[i]! * step[j]! - (bent[i]! * step[j]! + step[i]! * bent[j]!) / curve;
        }
      }
    }
    point = moved;
    place = next;
  }
  return { ...place, point };
}
