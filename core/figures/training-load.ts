import type { Summary } from '../ledger/summary.ts';
import { weekLoad } from './load.ts';

/** A player's week by what was said of effort and minutes. */
export interface TrainingWeek {
  /** Practices that the player was at. */
  practices: number;
  /** Of those, how many have no effort or no minutes. */
  untold: number;
  /** Effort times minutes of each of the seven days, as far as it was said; rest days are 0. */
  days: number[];
  /** Sum of the days; undefined while some practice is untold, and where there was none. */
  load?: number;
  /** Undefined as well where all days are equal, and while the week is not over. */
  monotony?: number;
  strain?: number;
}

/**
 * The training load of a player's week: the effort of a practice (0 to 10) times its minutes (Foster
 * 1998; see load.ts for monotony, strain, and the deviation that is used). It knows of this squad's
 * practices only, so a match or another club's practice is missing in it.
 *
 * @param days the seven dates of the week, YYYY-MM-DD
 * @param isOver whether the last of them has passed
 */
export function trainingWeek(
  summaries: readonly Summary[],
  days: readonly string[],
  isOver: boolean,
  player: string,
): TrainingWeek {
  const own = summaries.filter(
    ({ date, attended }) => days.includes(date) && attended.includes(player),
  );
  const loads = own.map(({ date, efforts }) => {
    const { effort, minutes } = efforts?.[player] ?? {};
    return {
      date,
      load: effort === undefined || minutes === undefined ? undefined : effort * minutes,
    };
  });
  const untold = loads.filter(({ load }) => load === undefined).length;
  const byDay = days.map((day) =>
    loads.reduce((sum, { date, load = 0 }) => (date === day ? sum + load : sum), 0),
  );
  const told = { practices: own.length, untold, days: byDay };
  if (own.length === 0 || untold > 0) return told;
  const { load, monotony, strain } = weekLoad(byDay);
  return {
    ...told,
    load,
    ...(isOver && monotony !== undefined && { monotony, strain: strain! }),
  };
}
