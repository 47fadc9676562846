import { expect, it } from 'vitest';
import { maximise } from '../../../core/figures/maximise.ts';

/** Rosenbrock's curved valley (1960) upside down: a ridge whose top, 0, is at (1, 1). */
const ridge = ([x, y]: ArrayLike<number> & Iterable<number>) => ({
  value: -((1 - x!) ** 2) - 100 * (y! - x! ** 2) ** 2,
  gradient: [2 * (1 - x!) + 400 * x! * (y! - x! ** 2), -200 * (y! - x! ** 2)],
});
const identity = Float64Array.of(1, 0, 0, 1);

it('finds the top at the end of a curved ridge', () => {
  const top = maximise(ridge, Float64Array.of(-1.2, 1), identity);
  expect(top.point[0]).toBeCloseTo(1, 8);
  expect(top.point[1]).toBeCloseTo(1, 8);
  expect(top.value).toBeCloseTo(0, 15);
});

it('stays where it stands on the top', () => {
  const start = Float64Array.of(1, 1);
  expect(maximise(ridge, start, identity).point).toEqual(start);
});

it('takes one step to the top of a parabola whose curvature it is told', () => {
  let looks = 0;
  const top = maximise(
    ([x]) => {
      looks += 1;
      return { value: -4 * (x! - 1.5) ** 2, gradient: [-8 * (x! - 1.5)] };
    },
    Float64Array.of(0),
    Float64Array.of(1 / 8),
  );
  expect(top.point[0]).toBe(1.5);
  expect(looks).toBe(2);
});

it('climbs far in steps of 2 at most', () => {
  const seen: number[] = [];
  const top = maximise(
    ([x]) => {
      seen.push(x!);
      return { value: -((x! - 30) ** 2), gradient: [-2 * (x! - 30)] };
    },
    Float64Array.of(0),
    Float64Array.of(1),
  );
  expect(top.point[0]).toBeCloseTo(30, 8);
  seen.forEach((x, i) => {
    if (i > 0) expect(x - seen[i - 1]!).toBeLessThanOrEqual(2);
  });
});

it('does not climb for less than is worth a step', () => {
  const start = Float64Array.of(0);
  const top = maximise(
    ([x]) => ({ value: -(x! ** 2) + 0.02 * x!, gradient: [-2 * x! + 0.02] }),
    start,
    Float64Array.of(0.5),
    1e-3,
  );
  expect(top.point).toEqual(start);
});

it('comes back from where the function is not a number', () => {
  // ln x − x, top at 1; the curvature is guessed 100 times too small.
  const top = maximise(
    ([x]) => ({ value: Math.log(x!) - x!, gradient: [1 / x! - 1] }),
    Float64Array.of(1.9),
    Float64Array.of(100),
  );
  expect(top.point[0]).toBeCloseTo(1, 8);
});
