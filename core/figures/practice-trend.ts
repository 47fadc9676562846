import { daysBetween } from '../calendar.ts';
import { grouped } from './grouped.ts';
import { pooledMean } from './pooled.ts';
import type { Stint } from './stints.ts';
import { type Trend, type TrendWord, trend, trendWord } from './trend.ts';

/** How consistent someone was in one practice. */
export interface PracticePoint {
  date: string;
  /** Days from the first of the points. */
  at: number;
  /** 0 to 1. */
  value: number;
}

/** A consistency over practices: every practice as a point, the trend through them, its word. */
export interface PracticeTrend {
  points: PracticePoint[];
  /** Undefined below three practices, or where all are of one date. */
  trend?: Trend;
  word: TrendWord;
}

/**
 * A change of five hundredths in four weeks is one that a coach would want to know of: our own
 * choice, no source.
 */
const CHANGE_THAT_MATTERS = { matters: 0.05, span: 28 } as const;

/**
 * The trend of a consistency over practices, one point a practice, from stints in the order of their
 * dates. A practice without an estimate has no point.
 */
export function practiceTrend(stints: readonly Stint[]): PracticeTrend {
  const practices = byPractice(stints);
  const start = stints[0]?.date;
  const points = practices.flatMap((own) => {
    const date = own[0]?.date;
    const value = pooledMean(own);
    if (start === undefined || date === undefined || value === undefined) return [];
    return [{ date, at: dayOf(date) - dayOf(start), value }];
  });
  const found = trend(points);
  return { points, ...(found && { trend: found }), word: trendWord(found, CHANGE_THAT_MATTERS) };
}

/** The dates of a season come again for every player and kind of work, and reading one takes long. */
const days = new Map<string, number>();

function dayOf(date: string): number {
  const known = days.get(date) ?? daysBetween('1970-01-01', date);
  days.set(date, known);
  return known;
}

/** The stints of each practice, in the order in which the practices first appear. */
const byPractice = (stints: readonly Stint[]): Stint[][] =>
  grouped(stints, ({ practice }) => practice);
