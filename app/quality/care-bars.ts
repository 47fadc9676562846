import type { ShoulderLoad, ShoulderStroke } from '../../core/figures/shoulder-load.ts';

/** How high each week and the usual one stand, as parts of the tallest; undefined for no week. */
export function careBars(
  { weeks, usual }: ShoulderLoad,
  stroke: ShoulderStroke,
): { bars: (number | undefined)[]; usual?: number } {
  const struck = weeks.map((week) => week.struck?.[stroke]);
  const most = Math.max(1, usual?.[stroke] ?? 0, ...struck.map((count) => count ?? 0));
  return {
    bars: struck.map((count) => (count === undefined ? undefined : count / most)),
    ...(usual && { usual: usual[stroke] / most }),
  };
}
