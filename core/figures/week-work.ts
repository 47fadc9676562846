import { isoWeek, type Week, weekName } from '../calendar.ts';
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
  const name = weekName(week);
  const weeks = new Map<string, Summary[]>();
  for (const summary of summaries) {
    const own = weekName(isoWeek(summary.date));
    if (own > name || summary.rounds.length === 0) continue;
    weeks.set(own, [...(weeks.get(own) ?? []), summary]);
  }
  const earlier = [...weeks.keys()].filter((own) => own < name).sort();
  const ballsOf = new Map(
    [...weeks].map(([own, practices]) => [own, { practices, ...ballsIn(practices) }]),
  );
  const now = ballsOf.get(name);
  const beside = (balls: number, usual: number | undefined): WeekWork => ({
    balls,
    ...(usual !== undefined && { usual }),
  });
  const before = earlier.slice(-WEEKS).map((own) => ballsOf.get(own)!);
  return {
    families: families.map((family) => ({
      family,
      ...beside(
        now?.families.get(family) ?? 0,
        median(before.map((own) => own.families.get(family) ?? 0)),
      ),
    })),
    players: new Map(
      [...(now?.players ?? [])].map(([player, balls]) => {
        const own = earlier.flatMap((each) => ballsOf.get(each)!.players.get(player) ?? []);
        return [player, beside(balls, median(own.slice(-WEEKS)))];
      }),
    ),
  };
}

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
