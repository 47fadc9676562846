import { computed } from '@preact/signals';
import { fitLevels, type LevelFit } from '../core/figures/level-fit.ts';
import { levelTallies } from '../core/figures/level-tallies.ts';
import { estimated } from './estimates.ts';
import { history } from './practices.ts';

/*
 * The one model of level and change, from every estimate that is there: each screen that says what a
 * player or a pair can do asks it, so that none contradicts another. It is worked out when a screen
 * first asks, in some hundredths of a second, and again when an estimate changes.
 */

const fitOf = (onTarget: boolean) =>
  computed<LevelFit | undefined>(() => {
    const data = levelTallies(estimated.value, onTarget);
    return data && fitLevels(data);
  });

/** Of balls that come back. */
export const levels = fitOf(false);

/** Of balls that meet a target. */
export const targetLevels = fitOf(true);

/**
 * The same of packed practices only: for what a running round must not wait for, since it stays as it
 * is while marks come in.
 */
export const pastLevels = computed<LevelFit | undefined>(() => {
  const data = levelTallies(history.value ?? [], false);
  return data && fitLevels(data);
});
