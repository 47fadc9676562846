import { come, leave } from '../actions.ts';
import { squad } from '../ledger.ts';
import { openPractice } from '../practices.ts';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import './presence.css';

/**
 * Who is here: one tap a player, at any time of the practice.
 *
 * @param onChange is told of everyone who came or left, once it was said
 */
export function Presence({ onChange }: { onChange?: (player: string, here: boolean) => void }) {
  const t = words.value.today;
  const here = new Set(openPractice.value?.here);
  const players = [...squad.value.values()].filter(
    (player) => !player.resting || here.has(player.id),
  );
  const away = players.filter((player) => !here.has(player.id));
  return (
    <div class="stack">
      <ul class="presence">
        {players.map(({ id, name }) => (
          <li key={id}>
            <button
              type="button"
              class="choice"
              aria-pressed={here.has(id)}
              onClick={() => {
                if (here.has(id)) leave(id);
                else come(id);
                onChange?.(id, !here.has(id));
              }}
            >
              <span class="grow break">{name}</span>
            </button>
          </li>
        ))}
      </ul>
      {away.length > 1 && (
        <Button onClick={() => come(...away.map((player) => player.id))}>{t.allHere}</Button>
      )}
    </div>
  );
}
