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
  let now: Balls = { families: new Map(), players: new Map() };
  const before: Balls[] = [];
  const ofPlayer = new Map<string, number[]>();
  for (const [own, practices] of weeksBack(summaries)) {
    if (own > name) continue;
    if (own === name) {
      now = ballsIn(practices);
      for (const player of now.players.keys()) ofPlayer.set(player, []);
      continue;
    }
    const wanted = [...ofPlayer.values()].some((known) => known.length < WEEKS);
    if (before.length >= WEEKS && !wanted) break;
    const balls = ballsIn(practices);
    if (before.length < WEEKS) before.push(balls);
    for (const [player, known] of ofPlayer) {
      const count = balls.players.get(player);
      if (count !== undefined && known.length < WEEKS) known.push(count);
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

/** The weeks in which anything was played, the latest first, each with its practices; a week is read only once it is asked for. */
function* weeksBack(summaries: readonly Summary[]): Generator<[name: string, Summary[]]> {
  const played = summaries
    .filter(({ rounds }) => rounds.length > 0)
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const nameBefore = (end: number) => weekName(isoWeek(played[end - 1]!.date));
  for (let end = played.length; end > 0; ) {
    const name = nameBefore(end);
    let first = end - 1;
    while (first > 0 && nameBefore(first) === name) first -= 1;
    yield [name, played.slice(first, end)];
    end = first;
  }
}

interface Balls {
  families: Map<Family, number>;
  players: Map<string, number>;
}

function ballsIn(practices: readonly Summary[]): Balls {
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
