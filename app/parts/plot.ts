import type { PracticePoint } from '../../core/figures/practice-trend.ts';
import type { Trend } from '../../core/figures/trend.ts';

/** A picture of a share over practices, in units of its own: WIDTH to the right, HEIGHT down. */
export interface Plot {
  /** The shares at the bottom and at the top, whole tenths. */
  bottom: number;
  top: number;
  /** One for each practice. */
  dots: { x: number; y: number }[];
  /** From the first practice to the last. */
  line?: { from: { x: number; y: number }; to: { x: number; y: number } };
}

export const WIDTH = 300;
export const HEIGHT = 100;
/** Room for half a dot at every edge. */
const EDGE = 6;
/** Less than this from bottom to top would make a mountain of every wave. */
const LEAST_RANGE = 0.2;

/**
 * Where the dots and the line of a trend stand; undefined where there is no point. The line has the
 * trend's slope and the height at which as many dots are above it as below.
 */
export function plotOf(points: readonly PracticePoint[], trend?: Trend): Plot | undefined {
  if (points.length === 0) return undefined;
  const values = points.map(({ value }) => value);
  const days = points.map(({ at }) => at);
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const [bottom, top] = range(Math.min(...values), Math.max(...values));
  const place = (at: number, value: number) => ({
    x: last > first ? EDGE + ((WIDTH - 2 * EDGE) * (at - first)) / (last - first) : WIDTH / 2,
    y: EDGE + ((HEIGHT - 2 * EDGE) * (top - value)) / (top - bottom),
  });
  const plot = { bottom, top, dots: points.map(({ at, value }) => place(at, value)) };
  if (!trend) return plot;
  const rests = points.map(({ at, value }) => value - trend.slope * at).sort((a, b) => a - b);
  const middle =
    (rests[Math.floor(rests.length / 2)]! + rests[Math.ceil(rests.length / 2) - 1]!) / 2;
  const on = (at: number) => place(at, middle + trend.slope * at);
  return { ...plot, line: { from: on(first), to: on(last) } };
}

/** Whole tenths around the values, apart enough and within 0 to 1. */
function range(least: number, most: number): [bottom: number, top: number] {
  const tenth = (value: number) => Math.round(10 * value) / 10;
  let bottom = Math.floor(10 * least + 1e-9) / 10;
  let top = Math.ceil(10 * most - 1e-9) / 10;
  while (top - bottom < LEAST_RANGE - 1e-9) {
    if (bottom > 0) bottom = tenth(bottom - 0.1);
    if (top < 1 && top - bottom < LEAST_RANGE - 1e-9) top = tenth(top + 0.1);
  }
  return [bottom, top];
}
