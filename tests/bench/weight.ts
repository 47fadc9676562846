import { firstLoadBytes, wholeBytes } from '../browser/weight.ts';
import type { Row } from './row.ts';

/** What a phone fetches, packed as hosts pack it. */
export const weight = (): Row[] => [
  {
    figure: 'JavaScript of the first load, gzip',
    unit: 'kB',
    measured: firstLoadBytes() / 1000,
    most: 45,
  },
  {
    figure: 'all that is kept for offline, gzip',
    unit: 'kB',
    measured: wholeBytes() / 1000,
    most: 250,
  },
];
