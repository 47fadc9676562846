import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Family } from '../../core/drill/drill.ts';
import { levelOf } from '../../core/figures/level.ts';
import { weeklyChange } from '../../core/figures/level-change.ts';
import { levelDesign } from '../../core/figures/level-design.ts';
import { differenceFromSquad, differenceOfTwo } from '../../core/figures/level-difference.ts';
import { fitLevels } from '../../core/figures/level-fit.ts';
import type { LevelPriors } from '../../core/figures/level-priors.ts';
import type { LevelData } from '../../core/figures/level-tallies.ts';
import { changeWord } from '../../core/figures/level-word.ts';
import { meanRegression } from '../../core/figures/mean-regression.ts';
import { randomFrom } from '../../demo-data/random.ts';
import { levelTally, type PublishedTally, type Sum } from './level-tally.ts';

interface Vector {
  name: string;
  hyper: Record<
    'mu' | 'muSd' | 'drill' | 'player' | 'playerKind' | 'slope' | 'slopeKind' | 'a' | 'b',
    number
  >;
  kappa: number | 'estimate';
  end: number;
  tallies: PublishedTally[];
  expected: {
    kappa: number;
    rowsUsed: number;
    age: number;
    kinds: {
      kind: Family;
      players: {
        player: string;
        tallies: number;
        level: Sum & { share: number; low: number; high: number };
        difference: Sum;
        change4: Sum;
        change8: Sum;
        rise: number;
        word: string;
      }[];
      firstTwo: Sum & { a: string; b: string; aAbove: number };
    }[];
    overall: { player: string; change8: Sum; rise: number; word: string }[];
  };
}

/*
 * levels.json was made by conditioning an explicit joint normal distribution of all logits (numpy),
 * the mode found by Newton's method on its stationarity equation: neither the normal equations nor
 * the code of this project.
 */
const { vectors } = JSON.parse(readFileSync(new URL('levels.json', import.meta.url), 'utf8')) as {
  vectors: Vector[];
};

const priorsOf = ({ hyper }: Vector): LevelPriors => ({
  kind: hyper.mu,
  kindSd: hyper.muSd,
  drillSd: hyper.drill,
  playerSd: hyper.player,
  playerKindSd: hyper.playerKind,
  changeSd: hyper.slope,
  changeKindSd: hyper.slopeKind,
  share: { a: hyper.a, b: hyper.b },
});

const dataOf = (vector: Vector): LevelData => ({
  onTarget: vector.hyper.mu === 0,
  end: vector.end,
  tallies: vector.tallies.map(levelTally),
});

const fitOf = (vector: Vector) =>
  fitLevels(dataOf(vector), {
    priors: priorsOf(vector),
    enough: 1e-10,
    ...(vector.kappa !== 'estimate' && { dispersion: vector.kappa }),
  })!;

describe('the levels of the vectors', () => {
  it('are of eight squads, one with a dispersion that is estimated', () => {
    expect(vectors).toHaveLength(8);
    expect(vectors.filter(({ kappa }) => kappa === 'estimate')).toHaveLength(1);
  });

  it.each(vectors.map((vector) => [vector.name, vector] as const))('agree: %s', (_, vector) => {
    const fit = fitOf(vector);
    const { expected } = vector;
    const tolerance = vector.kappa === 'estimate' ? 1e-6 : 1e-9;
    const near = (actual: number | undefined, wanted: number, what: string) =>
      expect(Math.abs(actual! - wanted), `${what}: ${actual} for ${wanted}`).toBeLessThanOrEqual(
        tolerance,
      );
    const nearSum = (actual: Sum | undefined, wanted: Sum, what: string, times = 1) => {
      near(times * actual!.mean, wanted.mean, `${what}, mean`);
      near(times * actual!.sd, wanted.sd, `${what}, sd`);
    };

    near(fit.dispersion, expected.kappa, 'kappa');
    near(fit.age, expected.age, 'age');
    expect(fit.tallies).toHaveLength(expected.rowsUsed);
    expect([...fit.kinds.keys()].toSorted()).toEqual(
      expected.kinds.map(({ kind }) => kind).toSorted(),
    );
    for (const { kind, players, firstTwo } of expected.kinds) {
      expect([...fit.kinds.get(kind)!.players.keys()]).toEqual(
        players.map(({ player }) => player).toSorted(),
      );
      for (const wanted of players) {
        const { player } = wanted;
        const of = (what: string) => `${what} of ${player} at ${kind}`;
        expect(fit.kinds.get(kind)?.players.get(player)?.tallies).toBe(wanted.tallies);
        const level = levelOf(fit, player, kind)!;
        nearSum(level, wanted.level, of('level'));
        near(level.share, wanted.level.share, of('share'));
        near(level.low, wanted.level.low, of('low'));
        near(level.high, wanted.level.high, of('high'));
        nearSum(differenceFromSquad(fit, player, kind), wanted.difference, of('difference'));
        const weekly = weeklyChange(fit, player, kind)!;
        nearSum(weekly, wanted.change4, of('change over 4'), 4);
        nearSum(weekly, wanted.change8, of('change over 8'), 8);
        near(weekly.rise, wanted.rise, of('rise'));
        expect(changeWord(fit, player, kind), of('word')).toBe(wanted.word);
      }
      const two = differenceOfTwo(fit, firstTwo.a, firstTwo.b, kind)!;
      nearSum(two, firstTwo, 'first two');
      near(two.above, firstTwo.aAbove, 'first above second');
    }
    expect([...fit.players.keys()]).toEqual(
      expected.overall.map(({ player }) => player).toSorted(),
    );
    for (const { player, change8, rise, word } of expected.overall) {
      const weekly = weeklyChange(fit, player)!;
      nearSum(weekly, change8, `overall change of ${player}`, 8);
      near(weekly.rise, rise, `overall rise of ${player}`);
      expect(changeWord(fit, player), `overall word of ${player}`).toBe(word);
    }
  });
});

describe('the search for the levels of a vector', () => {
  it.each(vectors.map((vector) => [vector.name, vector] as const))(
    'ends at the same top from wherever it starts: %s',
    (_, vector) => {
      const { data } = levelDesign(dataOf(vector), priorsOf(vector))!;
      const random = randomFrom(1);
      const { coefficients: top } = meanRegression(data, 1.2, 1e-9);
      for (let start = 0; start < 40; start++) {
        // 2.5 prior sds wide.
        const from = data.means.map((mean, i) =>
          random.normal(mean, 2.5 / Math.sqrt(data.precisions[i]!)),
        );
        const { coefficients } = meanRegression(data, 1.2, 1e-9, from);
        const off = coefficients.map((w, i) => Math.abs(w - top[i]!));
        expect(Math.max(...off)).toBeLessThan(1e-6);
      }
    },
  );
});
