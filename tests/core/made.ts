import type { Terms } from '../../core/drill/drill.ts';
import { nextStamp } from '../../core/ledger/stamp.ts';
import { type PlayedRound, SUMMARY_VERSION, type Summary } from '../../core/ledger/summary.ts';

/** Ten in a row from the baseline, unless told otherwise. */
export const termsWith = (over: Partial<Terms> = {}): Terms => ({
  drill: 'rally',
  family: 'groundstrokes',
  rule: 'in-a-row',
  size: 10,
  shots: [
    { role: 0, stroke: 'groundstroke' },
    { role: 1, stroke: 'groundstroke' },
  ],
  ...over,
});

/** The lob and the overhead that answers it. */
export const lobTerms = termsWith({
  drill: 'lob',
  family: 'overheads-and-lobs',
  rule: 'sequence',
  size: 2,
  shots: [
    { role: 0, stroke: 'lob' },
    { role: 1, stroke: 'overhead' },
  ],
});

/** A serve into a target, for the one who struck it. */
export const serveTerms = termsWith({
  drill: 'serve',
  family: 'serves-and-returns',
  rule: 'on-target',
  size: 1,
  shots: [
    { role: 0, stroke: 'serve' },
    { role: 1, stroke: 'serve' },
  ],
});

/** A played round; each pair is its players and its sets, or each player's own on target. */
export function roundWith(
  ordinal: number,
  terms: Terms,
  pairs: readonly (readonly [players: string[], sets: number | Record<string, number>])[],
  seconds = 120,
): PlayedRound {
  return {
    id: `round-${ordinal}`,
    ordinal,
    terms,
    seconds,
    settled: true,
    tallies: pairs.map(([players, sets], place) => ({
      pair: { letter: 'ABCDEFGHIJKL'[place] ?? '', players },
      ...(typeof sets === 'number'
        ? { sets }
        : { sets: Object.values(sets).reduce((sum, own) => sum + own, 0), byPlayer: sets }),
      times: [],
      late: 0,
      doubtful: 0,
      open: 0,
    })),
  };
}

export const practiceWith = (date: string, rounds: PlayedRound[], id = date): Summary => ({
  version: SUMMARY_VERSION,
  practice: id,
  date,
  opened: nextStamp('', Date.parse(date), 'writer-one'),
  attended: [...new Set(rounds.flatMap((r) => r.tallies.flatMap((t) => t.pair.players)))],
  rounds,
});
