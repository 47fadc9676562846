import { daysBetween } from '../calendar.ts';
import { type Drill, type Family, families, type Stroke, strokes } from '../drill/drill.ts';
import { LOOK_WEEKS, slippingFoci } from '../figures/focus-held.ts';
import { type LastPractised, lastPractised, roundsUntil } from '../figures/last-practised.ts';
import { lastWeeks } from '../figures/review.ts';
import { type SetlessCounts, tooHard } from '../figures/too-hard.ts';
import type { Summary } from '../ledger/summary.ts';

/** After so many days nothing is more overdue still: four weeks; ours. */
const LONGEST_DAYS = 28;

/** What the ledger says, before a practice, of what should be practised next. */
export interface WhatIsDue {
  /** Of the whole squad. */
  squad: LastPractised;
  /** Of each player who is here, in their order. */
  here: { player: string; last: LastPractised }[];
  /**
   * How overdue a family or stroke is for those who are here: 0 where everyone had it today, 1
   * where nobody had it in four weeks, each player weighing the same. The squad's own where nobody
   * is here yet.
   */
  overdue(what: Family | Stroke): number;
  /** The same for one player, here or not: 1 for one who never had it. */
  overdueFor(player: string, what: Family | Stroke): number;
  /** Whole days since a drill was last played; undefined where it never was. */
  drillDays(drill: string): number | undefined;
  /** How overdue a drill is, in the same way: 1 where it was not played in four weeks. */
  drillOverdue(drill: string): number;
  /** The focus that the squad holds most surely less often than before, where there is one. */
  slipping?: string;
  /** A focus that the squad holds less often than before, and that was looked at in this drill lately. */
  slips(drill: string): string | undefined;
  /** How many counts of a drill had no set, where it is too hard. */
  hard(drill: Pick<Drill, 'id' | 'rule' | 'size'>): SetlessCounts | undefined;
  /** The drills of the last day that had a practice. */
  lastDrills: ReadonlySet<string>;
  /** 1 for a family of the last practice, 2 for one of that before …; Infinity where it never was. */
  practicesSince(family: Family): number;
}

/**
 * @param summaries in any order; what is later than `today` is passed over
 * @param here players who are here
 */
export function whatIsDue(
  summaries: readonly Summary[],
  today: string,
  here: readonly string[],
): WhatIsDue {
  const { squad, players } = lastPractised(summaries, today);
  const drillDates = new Map<string, string>();
  const dates = new Set<string>();
  const rounds = roundsUntil(summaries, today);
  for (const { date, round } of rounds) {
    dates.add(date);
    const { drill } = round.terms;
    if (!(drillDates.get(drill)! >= date)) drillDates.set(drill, date);
  }
  const lastDate = [...dates].sort().at(-1);
  const lastFor = (player: string) => players.get(player) ?? { families: {}, strokes: {} };
  const own = here.map((player) => ({ player, last: lastFor(player) }));
  const asked = own.length > 0 ? own.map(({ last }) => last) : [squad];
  const share = (date: string | undefined) =>
    date === undefined ? 1 : Math.min(1, daysBetween(date, today) / LONGEST_DAYS);

  const until = summaries.filter(({ date }) => date <= today);
  const foci = slippingFoci(until);
  const slipping = new Map<string, string>();
  for (const focus of foci.toReversed()) {
    for (const { rounds } of lastWeeks(until, LOOK_WEEKS).now) {
      for (const { terms, looks = [] } of rounds) {
        if (looks.some((look) => look.focus === focus)) slipping.set(terms.drill, focus);
      }
    }
  }

  const overdue = new Map(
    [...families, ...strokes].map((what: Family | Stroke) => [
      what,
      asked.reduce((sum, last) => sum + share(lastOf(last, what)), 0) / asked.length,
    ]),
  );

  return {
    squad,
    here: own,
    overdue: (what) => overdue.get(what)!,
    overdueFor: (player, what) => share(lastOf(lastFor(player), what)),
    drillDays: (drill) => {
      const date = drillDates.get(drill);
      return date === undefined ? undefined : daysBetween(date, today);
    },
    drillOverdue: (drill) => share(drillDates.get(drill)),
    ...(foci[0] !== undefined && { slipping: foci[0] }),
    slips: (drill) => slipping.get(drill),
    hard: (drill) => tooHard(until, drill),
    lastDrills: new Set(
      [...drillDates].filter(([, date]) => date === lastDate).map(([drill]) => drill),
    ),
    practicesSince: (family) => {
      const last = squad.families[family];
      if (last === undefined) return Number.POSITIVE_INFINITY;
      return 1 + [...dates].filter((date) => date > last).length;
    },
  };
}

const isFamily = (what: Family | Stroke): what is Family =>
  (families as readonly string[]).includes(what);

/** The date of a family or stroke. */
const lastOf = ({ families, strokes }: LastPractised, what: Family | Stroke): string | undefined =>
  isFamily(what) ? families[what] : strokes[what];
