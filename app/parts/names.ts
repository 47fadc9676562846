import type { Terms } from '../../core/drill/drill.ts';
import { keepsRoles } from '../../core/round/keeps-roles.ts';
import { squad } from '../ledger.ts';
import { words } from '../words/words.ts';

/** A player's nickname; one that the squad does not know is said to be unknown. */
export const playerName = (player: string): string =>
  squad.value.get(player)?.name ?? words.value.unknownPlayer;

/** The nicknames of a pair or trio. */
export const namesOf = (players: readonly string[]): string => players.map(playerName).join(' · ');

/** The same, with the number of the role where each keeps one at what is played: "1 Pip, 2 Juno". */
export const namesInRoles = (
  players: readonly string[],
  terms: Pick<Terms, 'rule' | 'shots'>,
): string =>
  keepsRoles(terms, players)
    ? players.map((player, place) => `${place + 1} ${playerName(player)}`).join(', ')
    : namesOf(players);
