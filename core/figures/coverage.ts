import { daysBetween, isoWeek, type Week, weekStep } from '../calendar.ts';
import { type Family, families, familyOf, type Stroke, strokes } from '../drill/drill.ts';
import type { Summary } from '../ledger/summary.ts';
import { shares } from './counted.ts';
import { lastPractised, roundsUntil, strokesAt } from './last-practised.ts';

/**
 * From how many days on something is overdue, and overdue for long. Common practice, no source: a
 * squad that practises on one day a week comes to everything within eight days if it leaves nothing
 * out; the limits themselves are ours.
 */
export const OVERDUE = { after: 8, longAfter: 14 } as const;

export type Due = 'no' | 'overdue' | 'long-overdue';

/** How overdue something is that was last practised so many days ago. */
export function dueAfter(days: number): Due {
  if (days > OVERDUE.longAfter) return 'long-overdue';
  return days > OVERDUE.after ? 'overdue' : 'no';
}

/** One of the rounds that a number comes from. */
export interface RoundBehind {
  practice: string;
  date: string;
  round: string;
  /** Which round of its block, from 0. */
  ordinal: number;
  drill: string;
  /** What the drill was called then, where it had a name of its own. */
  name?: string;
  /** Touches that this round adds. */
  touches: number;
}

/** One week of a family or stroke. */
export interface CoverageCell {
  /** Touches in completed sets; undefined for a week without any round, which says nothing. */
  touches?: number;
  /** Oldest first; also those in which no set was completed. */
  rounds: RoundBehind[];
}

export interface CoverageLine {
  /** As many as `Coverage.weeks`, in their order. */
  weeks: CoverageCell[];
  /** Touches of all these weeks; undefined where none of them had a round. */
  touches?: number;
  /** Days since it was last practised, however long ago; undefined where it never was. */
  days?: number;
  /**
   * By `OVERDUE`; what was never practised counts from the first round there was. Undefined where
   * there was none at all.
   */
  due?: Due;
}

export interface Coverage {
  /** Oldest first; the last is the week of today. */
  weeks: Week[];
  /** In the order of `families`, each with its strokes in the order of `strokes`. */
  families: (CoverageLine & { family: Family; strokes: (CoverageLine & { stroke: Stroke })[] })[];
}

/**
 * How much of each family and stroke was practised in the last weeks, and how long ago, by the
 * squad or by one player. Touches are those in completed sets (see counted.ts), each in the line of
 * its own stroke and that stroke's family, whichever drill it was struck in; a family is practised
 * by rounds of its own drills (see last-practised.ts).
 *
 * @param summaries in any order; what is later than `today` is passed over
 * @param today YYYY-MM-DD
 * @param options.weeks ISO weeks with the present one, 4 unless given
 * @param options.player whose; the squad's where left out
 * @throws RangeError for weeks that are not a whole number from 1 to 53, or a `today` that is no date
 */
export function coverage(
  summaries: readonly Summary[],
  today: string,
  options: { weeks?: number; player?: string } = {},
): Coverage {
  const { weeks: count = 4, player } = options;
  if (!(Number.isInteger(count) && count >= 1 && count <= 53)) {
    throw new RangeError(`weeks must be a whole number from 1 to 53, not ${count}`);
  }
  const { day, ...thisWeek } = isoWeek(today);
  const cellOf = (date: string) => count - 1 - Math.floor((daysBetween(date, today) + 7 - day) / 7);

  const empty = () => Array.from({ length: count }, (): CoverageCell => ({ rounds: [] }));
  const cells = new Map(
    [...families, ...strokes].map((line) => [line as Family | Stroke, empty()]),
  );
  const lately = summaries.filter(({ date }) => cellOf(date) >= 0);
  const played = roundsUntil(lately, today)
    .map((at) => ({ ...at, struck: struckIn(at.round, player) }))
    .filter(({ struck }) => struck !== undefined)
    .sort(inOrderOfPlay);
  for (const { practice, date, round, struck } of played) {
    const at = cellOf(date);
    for (const line of cells.values()) line[at]!.touches ??= 0;
    for (const [line, touches] of struck!) {
      const cell = cells.get(line)![at]!;
      cell.touches! += touches;
      cell.rounds.push({
        practice,
        date,
        round: round.id,
        ordinal: round.ordinal,
        drill: round.terms.drill,
        ...(round.terms.name !== undefined && { name: round.terms.name }),
        touches,
      });
    }
  }

  const known = lastPractised(summaries, today);
  const last = player === undefined ? known.squad : known.players.get(player);
  const lineOf = (line: Family | Stroke, date: string | undefined): CoverageLine => {
    const weeks = cells.get(line)!;
    const some = weeks.filter((cell) => cell.touches !== undefined);
    const since = date ?? last?.first;
    return {
      weeks,
      ...(some.length > 0 && { touches: some.reduce((sum, cell) => sum + cell.touches!, 0) }),
      ...(date !== undefined && { days: daysBetween(date, today) }),
      ...(since !== undefined && { due: dueAfter(daysBetween(since, today)) }),
    };
  };
  return {
    weeks: Array.from({ length: count }, (_, at) => weekStep(thisWeek, at + 1 - count)),
    families: families.map((family) => ({
      family,
      ...lineOf(family, last?.families[family]),
      strokes: strokes
        .filter((stroke) => familyOf[stroke] === family)
        .map((stroke) => ({ stroke, ...lineOf(stroke, last?.strokes[stroke]) })),
    })),
  };
}

interface Played {
  date: string;
  opened: string;
  round: { ordinal: number };
}

function inOrderOfPlay(a: Played, b: Played): number {
  if (a.date !== b.date) return a.date < b.date ? -1 : 1;
  if (a.opened !== b.opened) return a.opened < b.opened ? -1 : 1;
  return a.round.ordinal - b.round.ordinal;
}

/**
 * The lines that a round belongs to, with what it adds to each: the strokes of its pattern, their
 * families, and the family of the drill. Undefined where the player was not in the round.
 */
function struckIn(
  { terms, seconds, tallies }: Summary['rounds'][number],
  player: string | undefined,
): Map<Family | Stroke, number> | undefined {
  const struck = new Map<Family | Stroke, number>([[terms.family, 0]]);
  const add = (line: Family | Stroke, touches: number) =>
    struck.set(line, (struck.get(line) ?? 0) + touches);
  let there = false;
  for (const tally of tallies) {
    const { players } = tally.pair;
    if (player !== undefined && !players.includes(player)) continue;
    there = true;
    shares(terms, tally, seconds).forEach((share, place) => {
      if (player !== undefined && share.player !== player) return;
      for (const stroke of strokesAt(terms, players, place, tally.turned)) {
        const touches = share.touches[stroke] ?? 0;
        add(stroke, touches);
        add(familyOf[stroke], touches);
      }
    });
  }
  return there ? struck : undefined;
}
