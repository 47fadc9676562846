import { computed } from '@preact/signals';
import { type KindTrend, playerTrends } from '../core/figures/player-trends.ts';
import type { KindOfWork } from '../core/figures/review.ts';
import { estimated, waiting } from './estimates.ts';

/**
 * What every screen says of a player's change at each kind of work. Undefined while practices are
 * still being worked out: a word of the rest might be another one.
 */
export const trends = computed(() =>
  waiting.value > 0 ? undefined : playerTrends(estimated.value),
);

/** A player's trend at one kind of work; undefined where nothing was seen of it, or not yet. */
export const trendOf = (
  player: string,
  { family, onTarget }: KindOfWork,
): KindTrend['trend'] | undefined =>
  trends.value?.get(player)?.find((kind) => kind.family === family && kind.onTarget === onTarget)
    ?.trend;
