import { describe, expect, test } from 'vitest';
import { HEIGHT, plotOf, WIDTH } from '../../../app/parts/plot.ts';
import { trend } from '../../../core/figures/trend.ts';

const points = (...values: readonly (readonly [at: number, value: number])[]) =>
  values.map(([at, value]) => ({ date: '2026-03-02', at, value }));

describe('the picture of a trend', () => {
  test('of no practice is none', () => {
    expect(plotOf([])).toBeUndefined();
  });

  test('has a dot for every practice, the earliest left and the largest share on top', () => {
    const { dots, bottom, top } = plotOf(points([0, 0.62], [7, 0.97], [14, 0.8]))!;
    expect([bottom, top]).toEqual([0.6, 1]);
    expect(dots).toHaveLength(3);
    expect(dots[0]!.x).toBeLessThan(dots[1]!.x);
    expect(dots[1]!.x - dots[0]!.x).toBeCloseTo(dots[2]!.x - dots[1]!.x, 9);
    expect(dots[1]!.y).toBeLessThan(dots[2]!.y);
    for (const { x, y } of dots) {
      expect(x > 0 && x < WIDTH && y > 0 && y < HEIGHT).toBe(true);
    }
  });

  test('of one practice, or of several on one day, stands in the middle', () => {
    expect(plotOf(points([3, 0.5]))?.dots[0]?.x).toBe(WIDTH / 2);
    expect(plotOf(points([3, 0.5], [3, 0.6]))?.dots[1]?.x).toBe(WIDTH / 2);
  });

  test.each([
    [[0.85, 0.86], 0.7, 0.9],
    [[0.95, 1], 0.8, 1],
    [[0, 0.02], 0, 0.2],
    [[1, 1], 0.8, 1],
    [[0.5, 0.5], 0.4, 0.6],
    [[0.7, 0.8], 0.6, 0.8],
  ])(
    'of shares %j reaches from %f to %f, so that no wave becomes a mountain',
    (values, from, to) => {
      const { bottom, top } = plotOf(points([0, values[0]!], [1, values[1]!]))!;
      expect(bottom).toBeCloseTo(from, 12);
      expect(top).toBeCloseTo(to, 12);
    },
  );

  test('has the line of the trend, with as many dots above it as below', () => {
    const all = points([0, 0.6], [7, 0.75], [14, 0.7], [21, 0.9], [28, 0.8], [35, 0.95]);
    const { dots, line } = plotOf(all, trend(all))!;
    expect(line!.to.y).toBeLessThan(line!.from.y);
    const lineAt = (x: number) =>
      line!.from.y +
      ((line!.to.y - line!.from.y) * (x - line!.from.x)) / (line!.to.x - line!.from.x);
    const above = dots.filter(({ x, y }) => y < lineAt(x) - 1e-9).length;
    const below = dots.filter(({ x, y }) => y > lineAt(x) + 1e-9).length;
    expect(above).toBe(below);
    expect(above).toBeGreaterThan(0);
  });

  test('has no line where there is no trend to draw', () => {
    expect(plotOf(points([0, 0.6], [7, 0.75]))).not.toHaveProperty('line');
  });
});
