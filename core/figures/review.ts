import { addDays } from '../calendar.ts';
import { type Family, families, type Terms } from '../drill/drill.ts';
import type { Summary } from '../ledger/summary.ts';
import { type Change, changeOf, type SquadPace } from './change.ts';
import { grouped } from './grouped.ts';
import { type PooledConsistency, pooledConsistency } from './pooled.ts';
import { type Rates, ratesOf } from './rates.ts';
import { isOnTarget, type Stint } from './stints.ts';

/** Work that can be put together: one family, and either balls that come back or balls that meet a target. */
export interface KindOfWork {
  family: Family;
  onTarget: boolean;
}

/** What some stints of one kind of work come to. */
export interface WorkReview extends KindOfWork {
  rates: Rates;
  consistency?: PooledConsistency;
}

/** What some stints of one drill come to. */
export interface DrillReview {
  /** Those of the last of the stints, so that a drill has its newest name. */
  terms: Terms;
  rates: Rates;
  consistency?: PooledConsistency;
  /** One for each size that it was counted in, the smallest first: their sets take different time. */
  sizes: { size: number; rates: Rates }[];
}

/** The stints by kind of work, in the order of the families; kinds without any are left out. */
export function byWork(stints: readonly Stint[]): (KindOfWork & { stints: Stint[] })[] {
  const kinds = families.flatMap((family) =>
    [false, true].map((onTarget) => ({ family, onTarget, stints: [] as Stint[] })),
  );
  for (const stint of stints) {
    const first = 2 * families.indexOf(stint.terms.family);
    kinds[isOnTarget(stint) ? first + 1 : first]!.stints.push(stint);
  }
  return kinds.filter((kind) => kind.stints.length > 0);
}

export const reviewWork = (stints: readonly Stint[]): WorkReview[] =>
  byWork(stints).map(({ family, onTarget, stints: own }) => ({
    family,
    onTarget,
    rates: ratesOf(own),
    ...consistencyIn(own),
  }));

/** Every drill of the stints, in the order in which they first come. */
export const reviewDrills = (stints: readonly Stint[]): DrillReview[] =>
  grouped(stints, ({ terms }) => `${terms.drill} ${terms.rule}`).map((own) => {
    const rates = ratesOf(own);
    const bySize = grouped(own, ({ terms }) => String(terms.size));
    return {
      terms: own.at(-1)!.terms,
      rates,
      ...consistencyIn(own),
      sizes: bySize
        .map((same) => ({
          size: same[0]!.terms.size,
          rates: bySize.length === 1 ? rates : ratesOf(same),
        }))
        .sort((a, b) => a.size - b.size),
    };
  });

function consistencyIn(stints: readonly Stint[]): { consistency?: PooledConsistency } {
  const consistency = pooledConsistency(stints);
  return consistency ? { consistency } : {};
}

/** A player's change at one kind of work, and at one drill and size of it. */
export interface ChangeReview extends KindOfWork {
  change?: Change;
  drills: { terms: Terms; change: Change }[];
}

/**
 * How a player's rates changed from one span to another: for each kind of work, and for each drill
 * and size in which both spans have a round. Kinds of which a span has none are left out.
 *
 * @param pace what the squad makes of a second, over both spans
 */
export function reviewChange(
  before: readonly Stint[],
  after: readonly Stint[],
  pace: SquadPace,
): ChangeReview[] {
  const earlier = byWork(before);
  return byWork(after).flatMap(({ family, onTarget, stints }) => {
    const known = earlier.find((work) => work.family === family && work.onTarget === onTarget);
    if (!known) return [];
    const change = changeOf(known.stints, stints, pace);
    const drills = grouped(stints, ({ countedAs }) => countedAs).flatMap((own) => {
      const { terms, countedAs } = own[0]!;
      const alike = known.stints.filter((stint) => stint.countedAs === countedAs);
      const found = changeOf(alike, own, pace);
      return found ? [{ terms, change: found }] : [];
    });
    return [{ family, onTarget, ...(change && { change }), drills }];
  });
}

/** The practices of so many weeks up to the last one, and those of as many weeks before. */
export interface Spans {
  now: Summary[];
  before: Summary[];
}

/**
 * The last weeks of some practices: their end is the date of the last practice, not today, so that a
 * holiday empties no screen.
 *
 * @param summaries in any order
 */
export function lastWeeks(summaries: readonly Summary[], weeks: number): Spans {
  const last = summaries
    .map(({ date }) => date)
    .toSorted()
    .at(-1);
  if (last === undefined) return { now: [], before: [] };
  const [first, earlier] = [addDays(last, 1 - 7 * weeks), addDays(last, 1 - 14 * weeks)];
  return {
    now: summaries.filter(({ date }) => date >= first),
    before: summaries.filter(({ date }) => date >= earlier && date < first),
  };
}
