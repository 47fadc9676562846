import { mustCount } from '../arguments.ts';
import { phi } from './normal.ts';

/** Looks before and after, and in how many of each the focus was held. */
export interface Stretches {
  before: { held: number; looks: number };
  after: { held: number; looks: number };
}

/**
 * How surely a share changed between two stretches of time, as a standard normal value: below 0 where
 * it fell. Of one player this is the "N − 1" chi-squared test of two shares (Campbell 2007, Stat.
 * Med. 26: 3661–3675); of several, each held beside the own looks only, the Mantel-Haenszel test (1959,
 * J. Natl Cancer Inst. 22: 719–748) without continuity correction, so that other players being there
 * is no change.
 *
 * `undefined` where nothing can have changed: nobody has looks in both stretches, or all looks of each
 * player came out the same. Counts that are not whole, and more held than looks, are a RangeError.
 */
export function shareChange(players: readonly Stretches[]): number | undefined {
  let beyond = 0;
  let variance = 0;
  for (const { before, after } of players) {
    for (const { held, looks } of [before, after]) {
      mustCount('held', held);
      mustCount('looks', looks);
      if (held > looks) throw new RangeError(`held must not exceed looks: ${held} of ${looks}`);
    }
    if (before.looks === 0 || after.looks === 0) continue;
    const all = before.looks + after.looks;
    const held = before.held + after.held;
    beyond += after.held - (after.looks * held) / all;
    variance += (after.looks * before.looks * held * (all - held)) / (all * all * (all - 1));
  }
  return variance > 0 ? beyond / Math.sqrt(variance) : undefined;
}

export type ShareWord = 'falling' | 'rising' | 'open';

/**
 * So rarely is a fall called where there is none. A coach is better served by a hint too many than by
 * one too few, as long as they are rare: our choice. With six looks a round, eight rounds, twelve
 * players, three practices a week and one look of ten unseen, a true fall from 80% to 55% between two
 * stretches of four weeks is called of 85 in 100 players, simulated.
 */
const RARELY = 0.07;

/** What a change allows to say. */
export function shareWord(change: number | undefined): ShareWord {
  if (change === undefined || phi(-Math.abs(change)) >= RARELY) return 'open';
  return change < 0 ? 'falling' : 'rising';
}
