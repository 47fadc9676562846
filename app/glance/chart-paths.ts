import type { LinePoint } from '../../core/figures/level-line.ts';
import { sharesAround } from '../parts/shares-around.ts';

const WIDTH = 300;
const HEIGHT = 200;
/** Room for half a dot at every edge. */
const EDGE = 6;

/** A practice, so many days before the end of the line. */
interface Dot {
  daysAgo: number;
  /** 0 to 1. */
  value: number;
}

/** Where a line, its band and the practices stand in a picture of its own units. */
export function lineChart(line: readonly LinePoint[], dots: readonly Dot[]) {
  const values = [
    ...line.flatMap(({ low, high }) => [low, high]),
    ...dots.map(({ value }) => value),
  ];
  const [bottom, top] = sharesAround(Math.min(...values), Math.max(...values));
  const weeks = Math.max(...line.map(({ weeksAgo }) => weeksAgo));
  const x = (weeksAgo: number) =>
    weeks > 0 ? round(EDGE + (WIDTH - 2 * EDGE) * (1 - weeksAgo / weeks)) : WIDTH / 2;
  const y = (share: number) => round(EDGE + ((HEIGHT - 2 * EDGE) * (top - share)) / (top - bottom));
  const through = (of: 'share' | 'low' | 'high', points: readonly LinePoint[]) =>
    points.map((point) => `${x(point.weeksAgo)} ${y(point[of])}`).join('L');
  return {
    ...{ bottom, top, width: WIDTH, height: HEIGHT },
    path: `M${through('share', line)}`,
    band: `M${through('high', line)}L${through('low', line.toReversed())}Z`,
    dots: dots.map(({ daysAgo, value }) => `M${x(daysAgo / 7)} ${y(value)}h0`).join(''),
  };
}

const round = (n: number) => Math.round(10 * n) / 10;
