import type { Terms } from '../drill/drill.ts';
import { sumEstimates } from '../figures/all-touches.ts';
import { consistencyInterval } from '../figures/consistency.ts';
import { heldIn } from '../figures/focus-held.ts';
import { looksOf, type Seen } from '../figures/looks.ts';
import { type Stint, tallyStints } from '../figures/stints.ts';
import type { Summary } from '../ledger/summary.ts';
import { isHeardOf } from '../round/tally.ts';
import type { CsvCell } from './csv.ts';

/** The columns of the table of tallies. Programs read them: a new one goes to the end. */
export const TALLY_COLUMNS = [
  'date',
  /** 1 for the first practice of that date in the file, 2 for a second one. */
  'practice',
  /** From 1. */
  'round',
  'drill',
  'family',
  'counting_rule',
  'set_size',
  'player',
  'partners',
  /** 1 or 2; `turns` in a trio, whose players change roles after each set, and where a pair turned. */
  'role',
  'sets',
  'touches_counted',
  /** The player's own: two thirds of the round's in a trio. */
  'live_seconds',
  'sets_per_minute',
  /** Of the pair, whatever was decided of them. */
  'late_marks',
  'doubtful_marks',
  /** Left for whoever reads the table to judge. */
  'quality',
  /** The player's part of all touches of the round, by the model; empty until it was asked. */
  'touches_estimated',
  /** Whole numbers that hold them four times in five. */
  'touches_low',
  'touches_high',
  /** The pair's share of shots that come back; on target the player's own that meet it. */
  'consistency',
  'consistency_low',
  'consistency_high',
  /** `tapped`, `called` at the horn, `corrected` afterwards, or `not heard`: then there is no count. */
  'counted_by',
  /** The drill's own, which stays where its name is changed or the language is another. */
  'drill_id',
  /** What was looked at in the round; empty where nothing was. */
  'focus',
  /** Looks at the player in it, and in how many of them the focus was held. */
  'looks',
  'held',
  /** The same of everyone in the round. */
  'round_looks',
  'round_held',
] as const;
export type TallyColumn = (typeof TALLY_COLUMNS)[number];

/** What players, drills and foci are called in a table. */
export interface Naming {
  player(id: string): string;
  drill(terms: Terms): string;
  focus(id: string): string;
}

/**
 * The table of tallies, header first, then one row for each player of each round, by date, round,
 * pair and place in the pair. Practices of one date stay in the order given; one without a round
 * has no number.
 */
export function tallyRows(summaries: readonly Summary[], naming: Naming): CsvCell[][] {
  const rows: CsvCell[][] = [[...TALLY_COLUMNS]];
  const onDate = new Map<string, number>();
  const seen = looksOf(summaries);
  for (const { practice: id, date, rounds } of summaries.toSorted((a, b) =>
    inOrder(a.date, b.date),
  )) {
    if (rounds.length === 0) continue;
    const practice = (onDate.get(date) ?? 0) + 1;
    onDate.set(date, practice);
    for (const { id: round, ordinal, terms, seconds, unwatched, focus, tallies } of rounds.toSorted(
      byOrdinal,
    )) {
      const looks = seen.filter((look) => look.practice === id && look.round === round);
      for (const tally of tallies.toSorted((a, b) => inOrder(a.pair.letter, b.pair.letter))) {
        const { players } = tally.pair;
        const stints = tallyStints(
          { practice: id, date, terms, seconds, ...(unwatched && { unwatched }) },
          tally,
        );
        stints.forEach((stint, place) => {
          const { sets, counted, seconds: own } = stint;
          const player = players[place] ?? '';
          const heard = isHeardOf(tally, player);
          const row: Partial<Record<TallyColumn, CsvCell>> = {
            date,
            practice,
            round: ordinal + 1,
            drill: naming.drill(terms),
            family: terms.family,
            counting_rule: terms.rule,
            set_size: terms.size,
            player: naming.player(player),
            partners: players
              .filter((other) => other !== player)
              .map((other) => naming.player(other))
              .join(' + '),
            role: players.length === 2 && tally.turned === undefined ? place + 1 : 'turns',
            sets: heard ? sets : undefined,
            touches_counted: heard ? rounded(counted, 1) : undefined,
            live_seconds: rounded(own, 1),
            sets_per_minute: heard && own > 0 ? rounded((60 * sets) / own, 2) : undefined,
            late_marks: tally.late,
            doubtful_marks: tally.doubtful,
            quality: undefined,
            ...(heard && estimateCells(stint)),
            counted_by: heard ? (tally.origin ?? 'tapped') : 'not heard',
            drill_id: terms.drill,
            ...(focus !== undefined && lookCells(naming.focus(focus), looks, player)),
          };
          rows.push(TALLY_COLUMNS.map((column) => row[column]));
        });
      }
    }
  }
  return rows;
}

function lookCells(focus: string, looks: readonly Seen[], player: string) {
  const own = heldIn(looks.filter((look) => look.player === player));
  const all = heldIn(looks);
  return {
    focus,
    ...{ looks: own.looks, held: own.held, round_looks: all.looks, round_held: all.held },
  };
}

function estimateCells(stint: Stint) {
  const { all } = sumEstimates([stint]);
  const { success } = stint;
  const limits = success && consistencyInterval(success);
  return {
    touches_estimated: all && rounded(all.touches, 1),
    touches_low: all?.low,
    touches_high: all?.high,
    consistency: success && rounded(success.consistency, 3),
    consistency_low: limits && rounded(limits.low, 3),
    consistency_high: limits && rounded(limits.high, 3),
  };
}

const inOrder = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
const byOrdinal = (a: { ordinal: number }, b: { ordinal: number }) => a.ordinal - b.ordinal;
const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));
