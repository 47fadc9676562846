import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { levelOf } from '../../core/figures/level.ts';
import { fitLevels } from '../../core/figures/level-fit.ts';
import { trend } from '../../core/figures/trend.ts';
import { type FittedCase, levelTally } from '../reference/level-tally.ts';
import { quantile } from './quantile.ts';
import type { Row } from './row.ts';

const here = (file: string) => fileURLToPath(new URL(`../reference/${file}`, import.meta.url));

/** What `level-fits.R --times` tells. */
interface Told {
  /** Milliseconds of a fit, and of a test. */
  fit: number;
  test: number;
  /** A series, and Kendall's p of it. */
  values: number[];
  p: number;
}

/** Milliseconds of one run in the middle of 25, as R's are taken. */
function middleOf(run: () => unknown): number {
  const times = Array.from({ length: 30 }, () => {
    const began = performance.now();
    for (let again = 0; again < 10; again++) run();
    return (performance.now() - began) / 10;
  });
  return quantile(times.slice(5), 0.5);
}

/** The farthest of some numbers from those of R, as a part of them. */
const farthest = (pairs: readonly (readonly [own: number, wanted: number])[]): number =>
  Math.max(...pairs.map(([own, wanted]) => Math.abs(own / wanted - 1)));

/** The model of levels and the test of a trend beside R's on the same data; no rows where R is not here. */
export function besideR(): Row[] {
  const asked = spawnSync('Rscript', [here('level-fits.R'), '--times'], { encoding: 'utf8' });
  if (asked.status !== 0) {
    console.error('  left out: Rscript with mgcv is not on this machine');
    return [];
  }
  const told = JSON.parse(asked.stdout) as Told;
  const { cases } = JSON.parse(readFileSync(here('level-fits.json'), 'utf8')) as {
    cases: [FittedCase];
  };
  const [{ onTarget, kappa, end, tallies, expected }] = cases;
  const data = { onTarget, end, tallies: tallies.map(levelTally) };
  const fit = () => fitLevels(data, { dispersion: kappa, enough: 1e-10 })!;
  const points = told.values.map((value, at) => ({ at, value }));
  const test = () => trend(points)!;
  const fitted = fit();
  return [
    {
      figure: `levels of ${tallies.length} tallies`,
      unit: 'ms',
      measured: middleOf(fit),
      reference: { name: 'R, mgcv', measured: told.fit },
      most: 1,
    },
    {
      figure: 'their farthest from R’s, in millionths',
      unit: '',
      measured:
        1e6 *
        farthest(
          expected.map(({ kind, player, level }) => [levelOf(fitted, player, kind)!.sd, level.sd]),
        ),
      most: 1,
    },
    {
      figure: `a trend of ${points.length} practices`,
      unit: 'ms',
      measured: middleOf(test),
      reference: { name: 'R, cor.test', measured: told.test },
      most: 1,
    },
    {
      figure: 'its p’s farthest from R’s, in millionths',
      unit: '',
      measured: 1e6 * farthest([[test().p, told.p]]),
      most: 1,
    },
  ];
}
