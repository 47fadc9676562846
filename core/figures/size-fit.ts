import { takesAdvice } from '../drill/counting-rules.ts';
import type { Terms } from '../drill/drill.ts';
import type { Summary } from '../ledger/summary.ts';
import { median } from '../median.ts';
import type { Pace } from '../round/tempo.ts';
import { carriedOver } from './consistency.ts';
import { grouped } from './grouped.ts';
import type { LevelFit } from './level-fit.ts';
import { paceMedians } from './pace-known.ts';
import { pairShare } from './pair-share.ts';
import { adviseSize, setsBySize } from './setsize.ts';
import { pairStints, type Stint } from './stints.ts';

/** How the size of a drill's sets suits those who played it. */
export interface SizeFit {
  /** As it was played last. */
  terms: Terms;
  /** YYYY-MM-DD of that. */
  date: string;
  /** Pairs that played it on that day. */
  pairs: number;
  /** Sets that a pair of them is to expect in a round at the size it was played in. */
  expected: number;
  /** The size that suits the middle one of them, and what is to be expected at it. */
  size: number;
  fitting: number;
  verdict: 'hard' | 'easy' | 'fits';
}

/** So many sets in a round keep a pair both busy and proud: ours, about the target of four. */
export const FITTING_SETS = { least: 2, most: 6 } as const;

/**
 * Whether each drill in a row was too hard or too easy: what is to be expected, by the model of
 * levels, of the pairs that played it on its last day. In the order in which they were first played.
 * Drills by other rules are left out: a sequence has its own length, and on target there are no sets.
 *
 * @param fit of balls that come back
 * @param summaries oldest first
 * @param seconds live clock of the round to come
 * @param pace what was measured of a drill
 */
export function sizeFits(
  fit: LevelFit,
  summaries: readonly Summary[],
  seconds: number,
  pace: (drill: string) => Pace | undefined,
): SizeFit[] {
  const played = pairStints(summaries).filter(({ terms }) => takesAdvice(terms.rule));
  return grouped(played, ({ terms }) => terms.drill).flatMap((stints) => {
    const last = stints.at(-1)!;
    const lastDay = stints.filter(
      ({ date, countedAs }) => date === last.date && countedAs === last.countedAs,
    );
    const pairs = grouped(lastDay, ({ players }) => players.toSorted().join(' '));
    return fitOf(
      fit,
      last,
      pairs.map(([stint]) => stint!.players),
      {
        seconds,
        ...paceMedians(pace(last.terms.drill)),
      },
    );
  });
}

function fitOf(
  fit: LevelFit,
  { terms, date }: Stint,
  pairs: readonly (readonly string[])[],
  clock: { seconds: number } & Pace,
): SizeFit[] {
  const shares = pairs.flatMap((players) => {
    const share = pairShare(fit, terms, players);
    return share ? [{ ...carriedOver(share), ...clock }] : [];
  });
  if (shares.length === 0) return [];
  const bySize = shares.map(setsBySize);
  const setsAt = (size: number) =>
    bySize.reduce((sum, setsOf) => sum + setsOf(size), 0) / bySize.length;
  const expected = setsAt(terms.size);
  const size = Math.round(median(shares.map((share) => adviseSize(share).size))!);
  const verdict =
    expected < FITTING_SETS.least ? 'hard' : expected > FITTING_SETS.most ? 'easy' : 'fits';
  return [{ terms, date, pairs: shares.length, expected, size, fitting: setsAt(size), verdict }];
}
