import { takesAdvice } from '../drill/counting-rules.ts';
import type { Drill } from '../drill/drill.ts';
import { carriedOver } from '../figures/consistency.ts';
import { groupShare } from '../figures/group-share.ts';
import type { LevelFit } from '../figures/level-fit.ts';
import { paceMedians } from '../figures/pace-known.ts';
import { adviseSize, setsBySize } from '../figures/setsize.ts';
import { FITTING_SETS } from '../figures/size-fit.ts';
import type { Pace } from '../round/tempo.ts';

/**
 * The size to play a drill in where its own does not suit these players: where fewer than two or more
 * than six sets are to be expected of a pair of them in a round. Undefined where it suits them, where
 * nothing is known, and for a drill whose sets are not in a row.
 *
 * @param fit of balls that come back; undefined where there is none
 * @param seconds live clock of the round to come
 */
export function fittingSize(
  fit: LevelFit | undefined,
  { id: drill, family, rule, size }: Pick<Drill, 'id' | 'family' | 'rule' | 'size'>,
  players: readonly string[],
  seconds: number,
  pace?: Pace,
): number | undefined {
  const share = takesAdvice(rule) && fit && groupShare(fit, { drill, family, rule }, players);
  if (!share) return undefined;
  const pair = { ...carriedOver(share), seconds, ...paceMedians(pace) };
  const expected = setsBySize(pair)(size);
  return expected < FITTING_SETS.least || expected > FITTING_SETS.most
    ? adviseSize(pair).size
    : undefined;
}
