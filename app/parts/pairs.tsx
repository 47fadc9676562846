import { useState } from 'preact/hooks';
import type { Pair } from '../../core/entry.ts';
import { swap } from '../../core/pairs.ts';
import { words } from '../words/words.ts';
import { Letter } from './letter.tsx';
import { playerName } from './names.ts';
import './pairs.css';

/** Who plays with whom. Two taps swap two players, where `onSwap` is given. */
export function Pairs({
  pairs,
  onSwap,
}: {
  pairs: readonly Pair[];
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
  return (
    <div class="stack">
      <ul class="pairs">
        {pairs.map((pair) => (
          <li key={pair.letter}>
            <Letter letter={pair.letter} />
            <div class="pair-players">
              {pair.players.map((player) => (
                <button
                  key={player}
                  type="button"
                  class="pair-player"
                  aria-pressed={chosen === player}
                  disabled={!onSwap}
                  onClick={() => tap(player)}
                >
                  <span class="cut">{playerName(player)}</span>
                </button>
              ))}
            </div>
          </li>
        ))}
      </ul>
      {trio && <p class="small">{t.trio(playerName(trio.players[2] ?? ''))}</p>}
      {onSwap && (
        <p class="small faint" role="status">
          {chosen === undefined ? t.swapHint : t.swapWith(playerName(chosen))}
        </p>
      )}
    </div>
  );
}
