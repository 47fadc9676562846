import type { Summary } from '../ledger/summary.ts';
import type { Look, Sight } from '../round/look.ts';
import { grouped } from './grouped.ts';

/** One look that told something, and where it was taken. */
export interface Seen {
  practice: string;
  /** YYYY-MM-DD. */
  date: string;
  round: string;
  drill: string;
  player: string;
  focus: string;
  held: boolean;
}

/**
 * Every look that told something, one a moment: where two phones watched one practice and both
 * answered, the word of the one that answered more of that practice stands; the other's is for
 * watchers.ts. A look that could not be seen is none, and neither is one that nobody answered.
 */
export function looksOf(summaries: readonly Summary[]): Seen[] {
  return summaries.flatMap(({ practice, date, rounds }) => {
    const answered = rounds.flatMap(({ looks = [] }) => looks).filter(isTold);
    if (answered.length === 0) return [];
    const answers = new Map<string, number>();
    for (const { by } of answered) answers.set(by, (answers.get(by) ?? 0) + 1);
    const speaksFirst = (a: Look, b: Look) =>
      answers.get(b.by)! - answers.get(a.by)! || (a.by < b.by ? -1 : 1);
    return rounds.flatMap(({ id, terms, looks = [] }) =>
      grouped(looks.filter(isTold), momentOf).map((same) => {
        const { player, focus, saw } = same.toSorted(speaksFirst)[0]!;
        const where = { practice, date, round: id, drill: terms.drill };
        return { ...where, player, focus, held: saw === 'yes' };
      }),
    );
  });
}

/** What the looks of several watchers at one moment of a round have in common. */
export const momentOf = ({ player, focus, second }: Look): string => `${player} ${focus} ${second}`;

/** Whether a look was seen. */
export const isTold = ({ saw }: { saw: Sight }): boolean => saw !== 'unseen';
