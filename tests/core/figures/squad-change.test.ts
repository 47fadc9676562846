import { describe, expect, test } from 'vitest';
import { weeklyChange } from '../../../core/figures/level-change.ts';
import { fitLevels } from '../../../core/figures/level-fit.ts';
import { needsOf } from '../../../core/figures/level-needs.ts';
import { levelTallies } from '../../../core/figures/level-tallies.ts';
import { squadChange, squadWord } from '../../../core/figures/squad-change.ts';
import { seedsFrom } from './level-measures.ts';
import { dataOf, tallyOf } from './levels-made.ts';
import { type SeasonPlan, simulateSeason } from './simulated-season.ts';

const played = (plan: SeasonPlan) => {
  const season = simulateSeason(plan);
  return { ...season, fit: fitLevels(levelTallies(season.summaries, false)!)! };
};

describe('the change of the squad', () => {
  const { fit, players } = played({ seed: 61, practices: 18 });

  test('is the mean of its players’ changes', () => {
    const each = players.map((player) => weeklyChange(fit, player)!.mean);
    const mean = each.reduce((sum, change) => sum + change, 0) / each.length;
    expect(squadChange(fit, players)!.mean).toBeCloseTo(mean, 12);
    expect(squadChange(fit, [players[0]!])).toEqual(weeklyChange(fit, players[0]!));
  });

  test('is surer than that of any one of them', () => {
    const { sd } = squadChange(fit, players)!;
    for (const player of players) expect(sd).toBeLessThan(weeklyChange(fit, player)!.sd);
  });

  test('is undefined where nobody was seen, and its word is then too few', () => {
    expect(squadChange(fit, ['nobody'])).toBeUndefined();
    expect(squadWord(fit, ['nobody'])).toBe('too-few');
  });

  test('has no word below six practices', () => {
    const early = played({ seed: 62, practices: 5 });
    expect(squadWord(early.fit, early.players)).toBe('too-few');
  });

  // 0 of 40 and 32 of 40 on other seeds.
  test('is seldom said of a squad that stays as it is, and mostly of one that rises', () => {
    const wordsOf = (rise: number) =>
      seedsFrom(6_200, 8).map((seed) => {
        const squad = played({ seed, practices: 36, rise: () => ({ all: rise }) });
        return squadWord(squad.fit, squad.players);
      });
    const flat = wordsOf(0).filter((word) => word === 'rising' || word === 'falling');
    expect(flat.length).toBeLessThanOrEqual(1);
    expect(wordsOf(0.6).filter((word) => word === 'rising').length).toBeGreaterThanOrEqual(6);
  });
});

describe('what a player needs', () => {
  test('is on the side of the truth, in nine of ten squads and more', () => {
    let said = 0;
    let right = 0;
    for (const seed of seedsFrom(6_300, 12)) {
      const { fit, players, truth } = played({ seed, practices: 18 });
      const [need] = needsOf(fit, players).filter(({ below, sure }) => below >= 0.3 && sure >= 0.9);
      if (!need) continue;
      const kinds = need.kinds.map(({ kind }) => kind);
      const standing = (kind: (typeof kinds)[number]) =>
        truth(need.player, kind, 0) -
        players.reduce((sum, player) => sum + truth(player, kind, 0), 0) / players.length;
      const others = kinds.filter((kind) => kind !== need.kind).map(standing);
      said += 1;
      if (standing(need.kind) < others.reduce((sum, x) => sum + x, 0) / others.length) right += 1;
    }
    expect(said).toBeGreaterThan(5);
    expect(right / said).toBeGreaterThanOrEqual(0.9);
  });

  test('comes surest first, and holds a player to own other kinds only', () => {
    const { fit, players } = played({ seed: 63, practices: 18 });
    const needs = needsOf(fit, players);
    expect(needs.map(({ sure }) => sure)).toEqual(
      needs.map(({ sure }) => sure).sort((a, b) => b - a),
    );
    // Everyone has a kind that is below the others, the best of the squad too.
    expect(new Set(needs.map(({ player }) => player)).size).toBe(players.length);
    expect(needs.every(({ below, sure }) => below > 0 && sure > 0.5)).toBe(true);
  });

  test('is not said of a kind of which next to nothing was seen', () => {
    const { fit, players } = played({ seed: 64, practices: 1, rounds: 4 });
    expect(needsOf(fit, players)).toEqual([]);
  });

  test('is not said of a kind at which nobody else was seen: there is no squad to stand to', () => {
    const days = [0, 3, 7, 10, 14];
    const rally = { kind: 'groundstrokes', drill: 'g' } as const;
    const fit = fitLevels(
      dataOf(
        days.flatMap((day) => [
          tallyOf(day, 'ann bob', 95, rally),
          tallyOf(day, 'bob cid', 55, rally),
          tallyOf(day, 'cid ann', 95, rally),
          tallyOf(day, 'ann', 70),
        ]),
      ),
    )!;
    expect(needsOf(fit, ['ann'])).toEqual([]);
  });
});
