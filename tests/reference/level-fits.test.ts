import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { levelOf } from '../../core/figures/level.ts';
import { weeklyChange } from '../../core/figures/level-change.ts';
import { differenceFromSquad, differenceOfTwo } from '../../core/figures/level-difference.ts';
import { fitLevels } from '../../core/figures/level-fit.ts';
import { type FittedCase, levelTally, type Sum } from './level-tally.ts';

/* Made by level-fits.R: mgcv where everyone is alone, else R's own derivatives. */
const { source, cases } = JSON.parse(
  readFileSync(new URL('level-fits.json', import.meta.url), 'utf8'),
) as { source: string; cases: FittedCase[] };

describe(`levels and changes agree to six digits with ${source}`, () => {
  it('in four squads', () => {
    expect(cases).toHaveLength(4);
  });

  it.each(cases.map((given) => [given.name, given] as const))('%s', (_, given) => {
    const { onTarget, kappa, end, tallies, expected } = given;
    const fit = fitLevels(
      {
        onTarget,
        end,
        tallies: tallies.map(levelTally),
      },
      { dispersion: kappa, enough: 1e-10 },
    )!;
    const near = (actual: Sum | undefined, wanted: Sum, what: string) => {
      for (const of of ['mean', 'sd'] as const) {
        const off = Math.abs(actual![of] - wanted[of]);
        expect(off, `${of} of ${what}: ${actual![of]} for ${wanted[of]}`).toBeLessThan(
          1e-6 * Math.max(0.1, Math.abs(wanted[of])),
        );
      }
    };
    expect(expected.length).toBeGreaterThan(10);
    for (const { kind, player, other, ...wanted } of expected) {
      const of = (what: string) => `${what} of ${player} at ${kind}`;
      near(levelOf(fit, player, kind), wanted.level, of('level'));
      near(differenceFromSquad(fit, player, kind), wanted.difference, of('difference'));
      near(differenceOfTwo(fit, player, other, kind), wanted.apart, of('difference from another'));
      near(weeklyChange(fit, player, kind), wanted.week, of('change'));
    }
  });
});
