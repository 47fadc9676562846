import { daysBetween } from '../calendar.ts';
import { type Drill, type Stroke, strokes } from '../drill/drill.ts';
import { OVERDUE } from '../figures/coverage.ts';
import { lastPractised } from '../figures/last-practised.ts';
import type { Summary } from '../ledger/summary.ts';

/** A player's days since a stroke; without days where it was never struck. */
export interface Missed {
  player: string;
  days?: number;
  /** Whether it is overdue, see `OVERDUE`; for one who never struck it, since the first round. */
  overdue: boolean;
}

/** A stroke, and who has gone without it for how long. */
export interface StrokeLeftOut {
  stroke: Stroke;
  /** Days since anyone of the squad struck it; undefined where nobody ever did. */
  days?: number;
  /** Everyone who was asked for and ever played, in the order given. */
  players: Missed[];
}

/**
 * What was left out, and by whom: each stroke with the days since each player struck it, in the order
 * of the strokes.
 *
 * @param summaries in any order; what is later than `today` is passed over
 */
export function leftOut(
  summaries: readonly Summary[],
  today: string,
  players: readonly string[],
): StrokeLeftOut[] {
  const known = lastPractised(summaries, today);
  const since = (date: string | undefined) =>
    date === undefined ? undefined : daysBetween(date, today);
  return strokes.map((stroke) => {
    const days = since(known.squad.strokes[stroke]);
    return {
      stroke,
      ...(days !== undefined && { days }),
      players: players.flatMap((player): Missed[] => {
        const last = known.players.get(player);
        if (!last) return [];
        const own = since(last.strokes[stroke]);
        return [
          {
            player,
            ...(own !== undefined && { days: own }),
            overdue: (own ?? since(last.first) ?? 0) > OVERDUE.after,
          },
        ];
      }),
    };
  });
}

/** The stroke that most have gone without for too long, the longest of them; undefined where none has. */
export const mostLeftOut = (strokes: readonly StrokeLeftOut[]): StrokeLeftOut | undefined =>
  strokes
    .map((line) => ({ line, many: line.players.filter(({ overdue }) => overdue).length }))
    .filter(({ many }) => many > 0)
    .sort(
      (a, b) =>
        b.many - a.many ||
        (b.line.days ?? Number.POSITIVE_INFINITY) - (a.line.days ?? Number.POSITIVE_INFINITY) ||
        0,
    )[0]?.line;

/** The drill to put in so that a stroke is struck: of those that have it the one not played for longest. */
export function drillFor(
  stroke: Stroke,
  drills: readonly Drill[],
  daysSince: (drill: string) => number | undefined,
): Drill | undefined {
  const waits = ({ id }: Drill) => daysSince(id) ?? Number.POSITIVE_INFINITY;
  return drills
    .filter(({ shots }) => shots.some((shot) => shot.stroke === stroke))
    .reduce<Drill | undefined>(
      (best, drill) => (best === undefined || waits(drill) > waits(best) ? drill : best),
      undefined,
    );
}
