import type { Terms } from '../drill/drill.ts';

/**
 * Whether each player of a pair keeps one role through the round: role 1 the first, role 2 the
 * second of `players`. A trio turns, so nobody in it does. Where balls on target count for whoever
 * struck them and both strike the same stroke, both do the same and neither role has a part of its
 * own.
 */
export function keepsRoles(
  { rule, shots }: Pick<Terms, 'rule' | 'shots'>,
  players: readonly string[],
): boolean {
  if (players.length !== 2) return false;
  return rule !== 'on-target' || new Set(shots.map(({ stroke }) => stroke)).size > 1;
}
