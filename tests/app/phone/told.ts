import { isoWeek, weekDays } from '../../../core/calendar.ts';
import { tallyRows } from '../../../core/exchange/tallies.ts';
import { attendance } from '../../../core/figures/attendance.ts';
import { coverage } from '../../../core/figures/coverage.ts';
import { byDrill, byPlayer } from '../../../core/figures/totals.ts';
import { whatIsDue } from '../../../core/planning/what-is-due.ts';
import type { Page } from './page.ts';

/** What the screens of a page would tell now, by the figures that they show. */
export function told({ app }: Page) {
  const { practices, clock, estimates } = app;
  const { year, week } = isoWeek(clock.today());
  const days = weekDays(year, week);
  const inWeek = estimates.estimated.value.filter(({ date }) => days.includes(date));
  const rows = tallyRows(inWeek, {
    player: (id) => id,
    drill: (terms) => terms.drill,
    focus: (id) => id,
  });
  const sum = (sets: Iterable<{ sets: number }>) =>
    [...sets].reduce((all, one) => all + one.sets, 0);
  const covered = coverage(practices.summaries.value, clock.today());
  return {
    /** Sets of the squad in the present week. */
    sets: sum(byDrill(inWeek).values()),
    /** Sets of each player in it. */
    own: new Map([...byPlayer(inWeek)].map(([player, { sets }]) => [player, sets])),
    /** Rounds of each drill in it. */
    rounds: Object.fromEntries([...byDrill(inWeek)].map(([drill, { rounds }]) => [drill, rounds])),
    /** Who was there, by date. */
    there: attendance(inWeek),
    /** Rows of the table that is handed over, without its heading. */
    rows: rows.slice(1),
    /** Touches of each family in the present week. */
    covered: Object.fromEntries(
      covered.families.map(({ family, weeks }) => [family, weeks.at(-1)?.touches]),
    ),
    /** Days since each family was practised. */
    days: Object.fromEntries(covered.families.map(({ family, days }) => [family, days])),
    /** Days since a drill was played, as proposals see it. */
    drillDays: (drill: string) =>
      whatIsDue(practices.summaries.value, clock.today(), []).drillDays(drill),
  };
}
