import { type Family, families } from '../../../core/drill/drill.ts';
import { levelOf, Z_OF_80 } from '../../../core/figures/level.ts';
import { changeOver, weeklyChange } from '../../../core/figures/level-change.ts';
import { differenceFromSquad, differenceOfTwo } from '../../../core/figures/level-difference.ts';
import { fitLevels, type LevelFit } from '../../../core/figures/level-fit.ts';
import { levelTallies } from '../../../core/figures/level-tallies.ts';
import { changeWord } from '../../../core/figures/level-word.ts';
import { type SeasonPlan, type SimulatedSeason, simulateSeason } from './simulated-season.ts';

/** What came out of some seasons, each a list of cases that hold or not. */
export interface Measures {
  /** Whether an 80% interval holds the truth. */
  level: boolean[];
  difference: boolean[];
  change: boolean[];
  /** Level and difference less the truth, logits. */
  levelErrors: number[];
  /** Words of a kind, and over all kinds, with the change of all kinds in twelve weeks. */
  words: { word: string; rise: number }[];
  overall: { word: string; rise: number }[];
  /** Of each two players how far they are truly apart, and whether they are told apart rightly or wrongly. */
  pairs: { apart: number; told: boolean; wrongly: boolean }[];
  dispersions: number[];
}

export const seasonFit = ({ summaries }: SimulatedSeason, onTarget = false): LevelFit =>
  fitLevels(levelTallies(summaries, onTarget)!)!;

/** So many seasons of a plan, from seeds that follow each other, and what the model made of them. */
export function measure(plan: Omit<SeasonPlan, 'seed'>, seeds: readonly number[]): Measures {
  const found: Measures = {
    ...{ level: [], difference: [], change: [], levelErrors: [] },
    ...{ words: [], overall: [], pairs: [], dispersions: [] },
  };
  for (const seed of seeds) {
    const season = simulateSeason({ ...plan, seed });
    add(found, season, seasonFit(season, plan.onTarget));
  }
  return found;
}

function add(found: Measures, season: SimulatedSeason, fit: LevelFit): void {
  found.dispersions.push(fit.dispersion);
  const span = Math.min(56, season.days);
  for (const kind of families) {
    const work = fit.kinds.get(kind);
    if (!work) continue;
    const names = [...work.players.keys()];
    const average = [...work.drills].reduce(
      (sum, [drill, { tallies }]) =>
        sum + (tallies / work.tallies) * season.drillLevel(kind, drill),
      0,
    );
    const now = new Map(names.map((player) => [player, season.truth(player, kind, 0)]));
    const squad = meanOf([...now.values()]);
    const lately = new Map(
      names.map((player) => [player, meanOf(lastDays(season, player, kind, span))]),
    );
    const squadLately = meanOf([...lately.values()]);
    for (const [place, player] of names.entries()) {
      const rise = season.rises[season.players.indexOf(player)]?.all ?? 0;
      const level = levelOf(fit, player, kind)!;
      const own = fit.onTarget ? now.get(player)! : (now.get(player)! + squad) / 2;
      const error = level.mean - (average + own);
      found.levelErrors.push(error);
      found.level.push(Math.abs(error) <= Z_OF_80 * level.sd);
      const { mean, sd } = differenceFromSquad(fit, player, kind)!;
      found.difference.push(Math.abs(mean - (lately.get(player)! - squadLately)) <= Z_OF_80 * sd);
      const change = changeOver(fit, 8, player, kind);
      if (change && span === 56) {
        const true8 = now.get(player)! - season.truth(player, kind, span);
        found.change.push(Math.abs(change.mean - true8) <= Z_OF_80 * change.sd);
      }
      found.words.push({ word: changeWord(fit, player, kind), rise });
      for (const other of names.slice(place + 1)) {
        const apart = lately.get(player)! - lately.get(other)!;
        const two = differenceOfTwo(fit, player, other, kind)!;
        const wrongly = two.toldApart && two.mean * apart < 0;
        found.pairs.push({ apart: Math.abs(apart), told: two.toldApart && !wrongly, wrongly });
      }
    }
  }
  for (const [place, player] of season.players.entries()) {
    if (!weeklyChange(fit, player)) continue;
    found.overall.push({ word: changeWord(fit, player), rise: season.rises[place]?.all ?? 0 });
  }
}

function lastDays(season: SimulatedSeason, player: string, kind: Family, span: number): number[] {
  return Array.from({ length: span + 1 }, (_, day) => season.truth(player, kind, day));
}

export const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export const shareOf = (cases: readonly boolean[]): number =>
  cases.filter(Boolean).length / cases.length;

/** So many numbers that follow each other. */
export const seedsFrom = (first: number, many: number): number[] =>
  Array.from({ length: many }, (_, i) => first + i);
