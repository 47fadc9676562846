import type { PracticePoint } from '../../core/figures/practice-trend.ts';
import type { Trend } from '../../core/figures/trend.ts';
import { sharesAround } from './shares-around.ts';

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

/**
 * Where the dots and the line of a trend stand; undefined where there is no point. The line has the
 * trend's slope and the height at which as many dots are above it as below.
 */
export function plotOf(points: readonly PracticePoint[], trend?: Trend): Plot | undefined {
  if (points.length === 0) return undefined;
  const values = points.map(({ value }) => value);
  const days = points.map(({ at }) => at);
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const [bottom, top] = sharesAround(Math.min(...values), Math.max(...values));
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
