import { useState } from 'preact/hooks';
import { countsByPlayer } from '../../core/drill/counting-rules.ts';
import { rolesDiffer, type Terms } from '../../core/drill/drill.ts';
import type { OnCourt } from '../../core/planning/assign-courts.ts';
import { keepsRoles } from '../../core/round/keeps-roles.ts';
import type { Pair } from '../../core/round/pair.ts';
import { swap } from '../../core/round/pairs.ts';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import { Letter } from './letter.tsx';
import { playerName } from './names.ts';
import { PairNames } from './pair-names.tsx';
import { RolesLine } from './roles-line.tsx';
import './pairs.css';

interface Courts {
  playing: readonly OnCourt[];
  waiting: readonly Pair[];
  /** How many lanes a court has. */
  lanes: number;
}

/**
 * Who plays with whom, and where, as far as that is known. Two taps swap two players, where
 * `onSwap` is given.
 */
export function Pairs({
  pairs,
  terms,
  courts,
  onSwap,
}: {
  pairs: readonly Pair[];
  /** Of the round that they play; left out where that is not known. */
  terms?: Pick<Terms, 'rule' | 'shots'> | undefined;
  courts?: Courts | undefined;
  onSwap?: ((pairs: Pair[]) => void) | undefined;
}) {
  const t = words.value.today;
  const [chosen, setChosen] = useState<string>();
  const trio = pairs.find((pair) => pair.players.length === 3);
  const tap = (player: string) => {
    if (chosen === undefined) setChosen(player);
    else {
      if (chosen !== player) onSwap?.(swap(pairs, chosen, player));
      setChosen(undefined);
    }
  };
  const turnable = ({ players }: Pair) =>
    terms !== undefined && rolesDiffer(terms) && keepsRoles(terms, players);
  const turn = (pair: Pair): Pair => ({ ...pair, players: pair.players.toReversed() });
  const row = (pair: Pair, place?: string, waits = false) => (
    <li key={pair.letter}>
      <Letter letter={pair.letter} />
      <div class="pair-players">
        <PairNames
          players={pair.players}
          terms={waits ? undefined : terms}
          each={(player, name) => (
            <button
              key={player}
              type="button"
              class="pair-player break"
              aria-pressed={chosen === player}
              disabled={!onSwap}
              onClick={() => tap(player)}
            >
              {name}
            </button>
          )}
        />
      </div>
      {onSwap && !waits && turnable(pair) && (
        <Button
          class="pair-turn"
          aria-label={t.turnPair(pair.letter)}
          onClick={() => onSwap(pairs.map((each) => (each === pair ? turn(pair) : each)))}
        >
          ⇄
        </Button>
      )}
      {place !== undefined && <span class="pair-place small">{place}</span>}
    </li>
  );
  return (
    <div class="stack">
      {terms && <RolesLine terms={terms} />}
      <ul class="pairs">
        {courts
          ? courts.playing.map((at) => row(at.pair, placeOf(at, courts.lanes)))
          : pairs.map((pair) => row(pair))}
      </ul>
      {courts && courts.waiting.length > 0 && (
        <>
          <h3>{words.value.courts.turnIn}</h3>
          <ul class="pairs">{courts.waiting.map((pair) => row(pair, undefined, true))}</ul>
          <p class="small">{words.value.courts.turnInMeans}</p>
        </>
      )}
      {onSwap && pairs.filter(turnable).length > 1 && (
        <Button
          as="quiet"
          onClick={() => onSwap(pairs.map((pair) => (turnable(pair) ? turn(pair) : pair)))}
        >
          {t.turnAll}
        </Button>
      )}
      {trio && (
        <p class="small break">
          {(terms && countsByPlayer(terms.rule) ? t.trioOnTarget : t.trio)(
            playerName(trio.players[2] ?? ''),
          )}
        </p>
      )}
      {onSwap && (
        <p class="small faint break" role="status">
          {chosen === undefined ? t.swapHint : t.swapWith(playerName(chosen))}
        </p>
      )}
    </div>
  );
}

function placeOf({ court, lane }: OnCourt, lanes: number): string {
  const t = words.value.courts;
  return lanes === 1 ? t.at(court) : `${t.at(court)}, ${t.lane(lane, lanes)}`;
}
