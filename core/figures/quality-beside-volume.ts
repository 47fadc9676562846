import type { Terms } from '../drill/drill.ts';
import type { Summary } from '../ledger/summary.ts';
import { type Held, heldIn } from './focus-held.ts';
import { grouped } from './grouped.ts';
import { looksOf } from './looks.ts';
import { pairStints } from './stints.ts';

/** A round's sets beside what was seen in it. */
export interface RoundQuality extends Held {
  /** Its place among the rounds of the practice, from 0. */
  ordinal: number;
  terms: Terms;
  /** Of all pairs that were heard. */
  sets: number;
  focus: string;
}

/** A practice's volume beside its quality. */
export interface PracticeQuality {
  practice: string;
  /** YYYY-MM-DD. */
  date: string;
  /** Touches of the squad in completed sets, in all its rounds. */
  volume: number;
  /** The looks at the focus. */
  quality: Held;
}

/** The rounds of a practice in which somebody looked, each with its sets and looks. */
export function roundsBesideQuality(summary: Summary): RoundQuality[] {
  const seen = looksOf([summary]);
  return summary.rounds.flatMap(({ id, ordinal, terms, tallies }) =>
    grouped(
      seen.filter(({ round }) => round === id),
      ({ focus }) => focus,
    ).map((looks) => ({
      ordinal,
      terms,
      sets: tallies.reduce((sum, { sets }) => sum + sets, 0),
      focus: looks[0]!.focus,
      ...heldIn(looks),
    })),
  );
}

/**
 * Each practice in which a focus was looked at often enough: its volume beside the share held, in the
 * order of the summaries. Shares of two foci are shares of different things, so it is one focus at a
 * time.
 */
export function qualityBesideVolume(
  summaries: readonly Summary[],
  focus: string,
): PracticeQuality[] {
  const seen = looksOf(summaries).filter((look) => look.focus === focus);
  return summaries.flatMap((summary) => {
    const quality = heldIn(seen.filter(({ practice }) => practice === summary.practice));
    if (!quality.share) return [];
    const volume = pairStints([summary]).reduce((sum, { counted }) => sum + counted, 0);
    return [{ practice: summary.practice, date: summary.date, volume, quality }];
  });
}

/** Foci that were looked at, those with most looks first. */
export const fociLookedAt = (summaries: readonly Summary[]): string[] =>
  grouped(looksOf(summaries), ({ focus }) => focus)
    .sort((a, b) => b.length - a.length)
    .map(([first]) => first!.focus);
