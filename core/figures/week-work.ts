import { type Week, weekDays, weekStep } from '../calendar.ts';
import { type Family, families } from '../drill/drill.ts';
import type { Summary } from '../ledger/summary.ts';
import { median } from '../median.ts';
import { sumEstimates } from './all-touches.ts';
import { pairStints, playerStints, type Stint } from './stints.ts';

/** Balls hit in a week, beside what is usual. */
export interface WeekWork {
  /** All touches where they were worked out, else those in completed sets. */
  balls: number;
  /** The middle one of the earlier weeks in which anything was played; undefined where there is none. */
  usual?: number;
}

/** So many earlier weeks are what is usual. */
const WEEKS = 12;

/**
 * What was done in a week, by family and by player, beside the usual week: of the squad that is the
 * middle of the last twelve with a practice, of a player of the last twelve in which the player
 * played. A family that was left out has 0 balls; a player who did not play is not in it.
 *
 * @param summaries in any order, the week's own among them; what is later is passed over
 */
export function weekWork(
  summaries: readonly Summary[],
  week: Week,
): { families: (WeekWork & { family: Family })[]; players: Map<string, WeekWork> } {
  const played = groupByDate(summaries.filter(({ rounds }) => rounds.length > 0));
  const first = [...played.keys()].reduce((early, date) => (date < early ? date : early), LATEST);
  const practicesIn = (days: readonly string[]) => days.flatMap((date) => played.get(date) ?? []);
  const now = ballsIn(practicesIn(weekDays(week.year, week.week)));
  const before: Balls[] = [];
  const ofPlayer = new Map([...now.players.keys()].map((player) => [player, [] as number[]]));
  // Week by week into the past, as far as anybody's usual still wants one.
  for (let each = weekStep(week, -1); ; each = weekStep(each, -1)) {
    const days = weekDays(each.year, each.week);
    if (!(days.at(-1)! >= first)) break;
    const wanted = [...ofPlayer.values()].some((own) => own.length < WEEKS);
    if (before.length >= WEEKS && !wanted) break;
    const practices = practicesIn(days);
    if (practices.length === 0) continue;
    const balls = ballsIn(practices);
    if (before.length < WEEKS) before.push(balls);
    for (const [player, own] of ofPlayer) {
      const count = balls.players.get(player);
      if (count !== undefined && own.length < WEEKS) own.push(count);
    }
  }
  const beside = (balls: number, usual: number | undefined): WeekWork => ({
    balls,
    ...(usual !== undefined && { usual }),
  });
  return {
    families: families.map((family) => ({
      family,
      ...beside(
        now.families.get(family) ?? 0,
        median(before.map((own) => own.families.get(family) ?? 0)),
      ),
    })),
    players: new Map(
      [...now.players].map(([player, balls]) => [
        player,
        beside(balls, median(ofPlayer.get(player) ?? [])),
      ]),
    ),
  };
}

/** After every date. */
const LATEST = '9999-12-31';

function groupByDate(summaries: readonly Summary[]): Map<string, Summary[]> {
  const groups = new Map<string, Summary[]>();
  for (const summary of summaries) {
    const own = groups.get(summary.date);
    if (own) own.push(summary);
    else groups.set(summary.date, [summary]);
  }
  return groups;
}

type Balls = ReturnType<typeof ballsIn>;

function ballsIn(practices: readonly Summary[]) {
  const stints = pairStints(practices);
  return {
    families: new Map(
      families.map((family) => [
        family,
        balls(stints.filter(({ terms }) => terms.family === family)),
      ]),
    ),
    players: new Map([...playerStints(practices)].map(([player, own]) => [player, balls(own)])),
  };
}

function balls(stints: readonly Stint[]): number {
  const { all, counted } = sumEstimates(stints);
  return all?.touches ?? counted;
}
