import type { ComponentChild } from 'preact';
import type { Terms } from '../../core/drill/drill.ts';
import { keepsRoles } from '../../core/round/keeps-roles.ts';
import { squad } from '../ledger.ts';
import { words } from '../words/words.ts';
import { partsOf } from './name-parts.ts';
import { playerName } from './names.ts';
import './pair-names.css';

/**
 * The names of a pair or trio, an element each, with the number of the role where each keeps one:
 * it decides whose lob and whose overhead it was.
 *
 * @param terms what is played; left out where that is not known
 * @param turned whether the two have turned their roles since the round began
 * @param each puts a name into what a screen has for it, as a button
 */
export function PairNames({
  players,
  terms,
  turned = false,
  each = (_, name) => name,
}: {
  players: readonly string[];
  terms?: Pick<Terms, 'rule' | 'shots'> | undefined;
  turned?: boolean;
  each?: (player: string, name: ComponentChild) => ComponentChild;
}) {
  const numbered = terms !== undefined && keepsRoles(terms, players);
  return (
    <>
      {players.map((player, place) =>
        each(
          player,
          <span key={player} class="pair-name">
            {numbered && (
              <>
                <b class="pair-role">{words.value.number((turned ? 1 - place : place) + 1)}</b>{' '}
              </>
            )}
            <Name player={player} />
          </span>,
        ),
      )}
    </>
  );
}

/** A name that can be cut where there is no room for it, and is told from the others' even then. */
function Name({ player }: { player: string }) {
  const name = playerName(player);
  const others = [...squad.value].flatMap(([id, other]) => (id === player ? [] : [other.name]));
  const parts = partsOf(name, others);
  return parts ? (
    <span class="pair-call" data-alike>
      <span>{parts.head}</span>
      <b>{parts.apart}</b>
      <span>{parts.rest}</span>
    </span>
  ) : (
    <span class="pair-call">{name}</span>
  );
}
