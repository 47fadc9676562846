import { daysBetween, isoWeek, type Week, weekStep } from '../calendar.ts';
import { countsByPlayer } from '../drill/counting-rules.ts';
import type { Stroke } from '../drill/drill.ts';
import type { Summary } from '../ledger/summary.ts';
import { median } from '../median.ts';
import { isHeardOf } from '../round/tally.ts';
import { shares, sumTouches } from './counted.ts';
import { roundsUntil } from './last-practised.ts';
import { tallyStints } from './stints.ts';

/** The strokes above the head that are counted a week. */
export const shoulderStrokes = ['overhead', 'serve'] as const satisfies readonly Stroke[];
export type ShoulderStroke = (typeof shoulderStrokes)[number];

export interface ShoulderWeek {
  week: Week;
  /** Whole balls, missed ones too as far as the model knows; undefined where the player played no round. */
  struck?: Record<ShoulderStroke, number>;
  /** Rounds that nobody heard, so that more were struck than is known. */
  unheard: number;
}

export interface ShoulderLoad {
  /** The last six, oldest first; the last is the week of today. */
  weeks: ShoulderWeek[];
  /** The player's own usual week; undefined of fewer than three weeks with a round. */
  usual?: Record<ShoulderStroke, number>;
}

/** Weeks that are shown. */
const SHOWN_WEEKS = 6;
/** The usual is the middle one of the weeks with a round out of so many before this one; ours. */
const USUAL_WEEKS = 12;
const FEWEST_WEEKS = 3;

/**
 * How many overheads and serves a player struck in each of the last weeks, beside the own usual week.
 * Of a stroke it is what completed sets prove, and of all other touches by the model the stroke's part
 * in what the player strikes in the drill. A bare count: what it means for a shoulder is not known.
 *
 * @param summaries in any order; what is later than `today` is passed over
 * @param today YYYY-MM-DD
 */
export function shoulderLoad(
  summaries: readonly Summary[],
  today: string,
  player: string,
): ShoulderLoad {
  const { day, ...thisWeek } = isoWeek(today);
  const weeks = Array.from(
    { length: USUAL_WEEKS + 1 },
    (_, at): ShoulderWeek & { exact?: Record<ShoulderStroke, number> } => ({
      week: weekStep(thisWeek, at - USUAL_WEEKS),
      unheard: 0,
    }),
  );
  for (const { practice, date, round } of roundsUntil(summaries, today)) {
    const at = USUAL_WEEKS - Math.floor((daysBetween(date, today) + 7 - day) / 7);
    const week = weeks[at];
    if (!week) continue;
    for (const tally of round.tallies) {
      const { players } = tally.pair;
      const place = players.indexOf(player);
      if (place < 0) continue;
      week.exact ??= { overhead: 0, serve: 0 };
      const everyones =
        countsByPlayer(round.terms.rule) || players.length > 2 || tally.turned !== undefined;
      const strokes = round.terms.shots
        .filter(({ role }) => everyones || role === place)
        .map(({ stroke }) => stroke);
      if (!isHeardOf(tally, player)) {
        if (shoulderStrokes.some((stroke) => strokes.includes(stroke))) week.unheard += 1;
        continue;
      }
      const own = shares(round.terms, tally, round.seconds)[place]!.touches;
      const { offset, part, estimate } = tallyStints({ practice, date, ...round }, tally)[place]!;
      const all = estimate ? offset + part * estimate.shots : 0;
      const beyond = Math.max(0, all - sumTouches(own));
      for (const stroke of shoulderStrokes) {
        const part = strokes.filter((each) => each === stroke).length / (strokes.length || 1);
        week.exact[stroke] += (own[stroke] ?? 0) + beyond * part;
      }
    }
  }
  const told = weeks.map(({ exact, ...week }) => ({
    ...week,
    ...(exact && {
      struck: { overhead: Math.round(exact.overhead), serve: Math.round(exact.serve) },
    }),
  }));
  const before = told.slice(0, -1).flatMap(({ struck }) => (struck ? [struck] : []));
  const usualOf = (stroke: ShoulderStroke) => median(before.map((struck) => struck[stroke]))!;
  return {
    weeks: told.slice(-SHOWN_WEEKS),
    ...(before.length >= FEWEST_WEEKS && {
      usual: { overhead: usualOf('overhead'), serve: usualOf('serve') },
    }),
  };
}
