import type { PracticeQuality } from '../../core/figures/quality-beside-volume.ts';

export const WIDTH = 300;
export const HEIGHT = 150;
/** Room for a framed mark at every edge. */
const EDGE = 12;

/** Volume across from the smallest to the largest, quality upwards from none to all. */
export interface VolumePlot {
  /** In the order of the practices. */
  marks: { x: number; y: number }[];
  least: number;
  most: number;
}

/** Where the marks of some practices stand; undefined where there is none. */
export function volumePlot(practices: readonly PracticeQuality[]): VolumePlot | undefined {
  if (practices.length === 0) return undefined;
  const volumes = practices.map(({ volume }) => volume);
  const [least, most] = [Math.min(...volumes), Math.max(...volumes)];
  const marks = practices.map(({ volume, quality }) => ({
    x: most > least ? EDGE + ((WIDTH - 2 * EDGE) * (volume - least)) / (most - least) : WIDTH / 2,
    y: EDGE + (HEIGHT - 2 * EDGE) * (1 - (quality.share?.share ?? 0)),
  }));
  return { marks, least, most };
}
