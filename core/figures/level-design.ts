import { type Family, families } from '../drill/drill.ts';
import { evidence } from './evidence.ts';
import { LATELY_WEEKS } from './lately.ts';
import type { LevelPriors } from './level-priors.ts';
import type { LevelData, LevelTally } from './level-tallies.ts';
import type { MeanData } from './mean-regression.ts';

/** A level and its change a week, as places among the unknowns of a fit. */
export interface Line {
  level: number;
  change: number;
}

/** A player in a fit: what is common to all kinds of work. */
export interface PlayerColumns extends Line {
  /** Practices that the player has a tally of. */
  practices: number;
}

/** A kind of work in a fit. */
export interface KindColumns {
  level: number;
  tallies: number;
  /** Each drill, with how many tallies are of it. */
  drills: Map<string, { level: number; tallies: number }>;
  /** Those who have a tally of the kind, in the order of their ids: what each adds at this kind. */
  players: Map<string, Line & { tallies: number }>;
}

/** What the unknowns of a fit are, and the rows that tell of them. */
export interface LevelDesign {
  /** In the order of the families. */
  kinds: Map<Family, KindColumns>;
  /** In the order of their ids. */
  players: Map<string, PlayerColumns>;
  /** The tallies that tell something, one a row. */
  tallies: readonly LevelTally[];
  /** Weeks from the earliest of them to the last practice. */
  age: number;
  data: MeanData;
}

const WINDOW_DAYS = 7 * LATELY_WEEKS;

/** What a tally of the window says. */
interface Row {
  tally: LevelTally;
  weeks: number;
  hits: number;
  misses: number;
}

/**
 * The unknowns of the levels and what each tally of the last twelve weeks says of them:
 *
 *   logit of player j's share = kind + drill + (player + player at the kind)
 *     − weeks ago · (change + change at the kind)
 *
 * so that a level is that of the day of the last practice. The share of a tally is the mean of its
 * players', as each strikes as many balls as the others.
 *
 * Tallies without evidence, later than the last practice or 84 days and more before it, and those
 * that name a player twice or nobody are left out. Undefined where none is left.
 */
export function levelDesign(
  { tallies, end }: LevelData,
  priors: LevelPriors,
): LevelDesign | undefined {
  const rows = tallies.flatMap((tally): Row[] => {
    const days = end - tally.day;
    const { players } = tally;
    if (!(days >= 0 && days < WINDOW_DAYS)) return [];
    if (players.length === 0 || new Set(players).size < players.length) return [];
    const told = evidence(tally.success, priors.share);
    return told.hits + told.misses > 0 ? [{ tally, weeks: days / 7, ...told }] : [];
  });
  if (rows.length === 0) return undefined;

  const means: number[] = [];
  const precisions: number[] = [];
  const column = (mean: number, sd: number) => {
    means.push(mean);
    return precisions.push(1 / sd ** 2) - 1;
  };
  const kinds = kindColumns(rows, priors, column);
  const players = playerColumns(rows, priors, column);
  return {
    kinds,
    players,
    tallies: rows.map(({ tally }) => tally),
    age: Math.max(...rows.map(({ weeks }) => weeks)),
    data: {
      hits: Float64Array.from(rows, ({ hits }) => hits),
      misses: Float64Array.from(rows, ({ misses }) => misses),
      means: Float64Array.from(means),
      precisions: Float64Array.from(precisions),
      ...valuesOf(rows, kinds, players),
    },
  };
}

/** Adds an unknown with this mean and sd beforehand, and says its place. */
type AddColumn = (mean: number, sd: number) => number;

/** How often each key comes, in the order of the keys, whatever the order in which they come. */
function counted(keys: readonly string[]): [string, number][] {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => (a < b ? -1 : 1));
}

/** What is of one kind stands together and before what is of all: kinds meet in the players only. */
function kindColumns(rows: readonly Row[], priors: LevelPriors, column: AddColumn) {
  const kinds = new Map<Family, KindColumns>();
  for (const kind of families) {
    const own = rows.filter(({ tally }) => tally.kind === kind);
    if (own.length === 0) continue;
    const level = column(priors.kind, priors.kindSd);
    const drills = counted(own.map(({ tally }) => tally.drill)).map(
      ([drill, tallies]) => [drill, { level: column(0, priors.drillSd), tallies }] as const,
    );
    const players = counted(own.flatMap(({ tally }) => tally.players)).map(
      ([player, tallies]) =>
        [player, { ...lineOf(column, priors.playerKindSd, priors.changeKindSd), tallies }] as const,
    );
    const tallies = own.length;
    kinds.set(kind, { level, tallies, drills: new Map(drills), players: new Map(players) });
  }
  return kinds;
}

function playerColumns(rows: readonly Row[], priors: LevelPriors, column: AddColumn) {
  const practices = new Map<string, Set<string>>();
  for (const { tally } of rows) {
    for (const player of tally.players) {
      const seen = practices.get(player) ?? new Set();
      practices.set(player, seen.add(tally.practice));
    }
  }
  const players = new Map<string, PlayerColumns>();
  for (const player of [...practices.keys()].sort()) {
    const line = lineOf(column, priors.playerSd, priors.changeSd);
    players.set(player, { ...line, practices: practices.get(player)!.size });
  }
  return players;
}

const lineOf = (column: AddColumn, levelSd: number, changeSd: number): Line => ({
  level: column(0, levelSd),
  change: column(0, changeSd),
});

/** The rows as a regression reads them. */
function valuesOf(
  rows: readonly Row[],
  kinds: ReadonlyMap<Family, KindColumns>,
  players: ReadonlyMap<string, PlayerColumns>,
): Pick<MeanData, 'columns' | 'starts' | 'values' | 'valueStarts'> {
  const columns: number[] = [];
  const starts = [0];
  const values: number[] = [];
  const valueStarts = [0];
  for (const { tally, weeks } of rows) {
    const kind = kinds.get(tally.kind)!;
    const many = tally.players.length;
    columns.push(kind.level, kind.drills.get(tally.drill)!.level);
    for (let place = 0; place < many; place++) {
      const own = players.get(tally.players[place]!)!;
      const atKind = kind.players.get(tally.players[place]!)!;
      columns.push(own.level, atKind.level, own.change, atKind.change);
      values.push(1, 1);
      for (let other = 0; other < many; other++) {
        if (other === place) values.push(1, 1, -weeks, -weeks);
        else values.push(0, 0, 0, 0);
      }
    }
    starts.push(columns.length);
    valueStarts.push(values.length);
  }
  return {
    columns: Int32Array.from(columns),
    starts: Int32Array.from(starts),
    values: Float64Array.from(values),
    valueStarts: Int32Array.from(valueStarts),
  };
}
