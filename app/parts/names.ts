import { squad } from '../ledger.ts';
import { words } from '../words/words.ts';

/** A player's nickname; one that the squad does not know is said to be unknown. */
export const playerName = (player: string): string =>
  squad.value.get(player)?.name ?? words.value.unknownPlayer;

/** The nicknames of a pair or trio. */
export const namesOf = (players: readonly string[]): string => players.map(playerName).join(' · ');
