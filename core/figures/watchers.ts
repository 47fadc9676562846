import type { Summary } from '../ledger/summary.ts';
import { kappa } from './agreement.ts';
import { grouped } from './grouped.ts';
import { isTold, momentOf } from './looks.ts';

/** Fewer shared looks tell nothing of two watchers: our choice. */
const FEWEST_SHARED = 20;
/** From here on agreement beyond chance is fair at the least, by the words of Landis and Koch 1977. */
const FAIR_KAPPA = 0.4;
/** The agreement that is asked of observers of play (van der Mars 1989; from memory). */
const ENOUGH_AGREEMENT = 0.8;

/**
 * What can be said of two watchers: too few shared looks; they mean the same; they do not; or nearly
 * all looks came out the same, so that agreeing on them tells little.
 */
export type WatchersWord = 'too-few' | 'agree' | 'differ' | 'one-sided';

export interface Watchers {
  focus: string;
  /** Looks that both answered. */
  looks: number;
  /** Share of them that both called the same. */
  agreement: number;
  /** Cohen's kappa; undefined where chance alone would make them agree. */
  kappa?: number;
  word: WatchersWord;
}

/**
 * How far two watchers agree on each focus, over all practices that both watched: of the two phones
 * that share most looks at it. Both drew the same moments, so a look is shared where player and
 * second are the same; looks that one of them could not see are left out.
 */
export function watchersOf(summaries: readonly Summary[]): Watchers[] {
  const pairs = summaries.flatMap(({ rounds }) =>
    rounds.flatMap(({ looks = [] }) =>
      grouped(looks.filter(isTold), momentOf).flatMap((same) => {
        const told = same.toSorted((a, b) => (a.by < b.by ? -1 : 1));
        return told.flatMap((one, at) =>
          told.slice(at + 1).map((other) => ({
            focus: one.focus,
            who: `${one.by} ${other.by}`,
            yes: [one.saw === 'yes', other.saw === 'yes'] as const,
          })),
        );
      }),
    ),
  );
  return grouped(pairs, ({ focus }) => focus).map((own) => {
    const most = grouped(own, ({ who }) => who).reduce((a, b) => (b.length > a.length ? b : a));
    const count = (one: boolean, other: boolean) =>
      most.filter(({ yes }) => yes[0] === one && yes[1] === other).length;
    const found = kappa([
      [count(true, true), count(true, false)],
      [count(false, true), count(false, false)],
    ])!;
    return {
      focus: own[0]!.focus,
      looks: most.length,
      agreement: found.agreement,
      ...(found.kappa !== undefined && { kappa: found.kappa }),
      word: wordFor(most.length, found),
    };
  });
}

function wordFor(
  looks: number,
  { agreement, kappa }: { agreement: number; kappa?: number },
): WatchersWord {
  if (looks < FEWEST_SHARED) return 'too-few';
  if (kappa !== undefined && kappa >= FAIR_KAPPA) return 'agree';
  return agreement >= ENOUGH_AGREEMENT ? 'one-sided' : 'differ';
}
