import { countsByPlayer } from '../drill/counting-rules.ts';
import { rolesDiffer, type Terms } from '../drill/drill.ts';

/**
 * Whether each player of a pair begins in a role that is theirs: role 1 the first, role 2 the second
 * of `players`. In a trio everybody turns. Where balls count for whoever struck them and both strike
 * the same stroke, both do the same and neither role has a part of its own.
 */
export const keepsRoles = (
  terms: Pick<Terms, 'rule' | 'shots'>,
  players: readonly string[],
): boolean => players.length === 2 && (!countsByPlayer(terms.rule) || rolesDiffer(terms));
