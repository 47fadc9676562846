import type { LinePoint } from '../../core/figures/level-line.ts';

/** Less than this from bottom to top would make a mountain of every wave. */
const LEAST_RANGE = 0.1;
const EDGE = 3;

/** Paths of a line and its band that fill a picture of this size. */
export function alongLine(
  line: readonly LinePoint[],
  width: number,
  height: number,
): { band: string; path: string } {
  const weeks = Math.max(...line.map(({ weeksAgo }) => weeksAgo), Number.MIN_VALUE);
  const low = Math.min(...line.map((point) => point.low));
  const high = Math.max(...line.map((point) => point.high));
  const room = Math.max(0, LEAST_RANGE - (high - low)) / 2;
  const x = ({ weeksAgo }: LinePoint) => round(EDGE + (width - 2 * EDGE) * (1 - weeksAgo / weeks));
  const y = (share: number) =>
    round(
      EDGE + ((height - 2 * EDGE) * (high + room - share)) / Math.max(high - low + 2 * room, 1e-9),
    );
  const through = (of: 'share' | 'low' | 'high', points: readonly LinePoint[]) =>
    points.map((point) => `${x(point)} ${y(point[of])}`).join('L');
  return {
    path: `M${through('share', line)}`,
    band: `M${through('high', line)}L${through('low', line.toReversed())}Z`,
  };
}

const round = (n: number) => Math.round(10 * n) / 10;
