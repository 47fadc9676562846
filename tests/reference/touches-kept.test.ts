import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { estimateShots, type TouchesRound } from '../../core/figures/touches.ts';

const columns = ['shots', 'sd', 'low', 'high', 'consistency', 'consistencySd', 'misses'] as const;

type Kept = [round: TouchesRound, was: number[], implausible?: true];

/**
 * What this project's own first code for touches said of 400 random rounds (`source` names its
 * commit): all rules, with and without times, showing, best, counted misses, a last rally played out,
 * a measured tempo, other priors, and counts that the clock hardly allows. Estimates are kept on
 * phones beside the version of the model, so under the same version they must not move.
 */
const file: { source: string; columns: string[]; rounds: Kept[] } = JSON.parse(
  readFileSync(new URL('touches-kept.json', import.meta.url), 'utf8'),
);

const TOLERANCE = 1e-7;
/** A standard deviation near 0 is all rounding. */
const ROUNDING = 1e-9;

describe('touches under the same version of the model', () => {
  it('stay what they were for every kind of round', () => {
    expect(file.columns).toEqual(columns);
    expect(file.rounds).toHaveLength(400);
    for (const [round, was, implausible = false] of file.rounds) {
      const found = estimateShots(round);
      const told = JSON.stringify(round);
      expect(found.implausible, told).toBe(implausible);
      columns.forEach((column, i) => {
        const known = was[i]!;
        expect(Math.abs(found[column] - known), `${column} of ${told}`).toBeLessThanOrEqual(
          TOLERANCE * known + ROUNDING,
        );
      });
    }
  });
});
