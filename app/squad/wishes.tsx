import { useState } from 'preact/hooks';
import type { Player } from '../../core/ledger/squad.ts';
import type { Wish } from '../../core/ledger/wishes.ts';
import { append, wishes } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { playerName } from '../parts/names.ts';
import { planningWords } from '../words/planning-words.ts';
import { words } from '../words/words.ts';

/** Whom the coach wants together, and whom apart, when pairs are proposed. */
export function Wishes({ players }: { players: readonly Player[] }) {
  const t = planningWords.value.wishes;
  const [one, setOne] = useState('');
  const [other, setOther] = useState('');
  const set = (wish: Wish['wish']) => {
    append({ kind: 'wish-set', a: one, b: other, wish });
    setOne('');
    setOther('');
  };
  const ready = one !== '' && other !== '' && one !== other;
  return (
    <section class="part" aria-labelledby="wishes">
      <h2 id="wishes">{t.title}</h2>
      <p class="small">{t.means}</p>
      {wishes.value.length > 0 && (
        <ul class="ruled">
          {wishes.value.map(({ a, b, wish }) => (
            <li key={`${a} ${b}`}>
              <span class="grow break">
                {words.value.named(words.value.list([playerName(a), playerName(b)]), t.is[wish])}
              </span>
              <Button
                aria-label={t.takeBack(playerName(a), playerName(b))}
                onClick={() => append({ kind: 'wish-set', a, b, wish: 'none' })}
              >
                ×
              </Button>
            </li>
          ))}
        </ul>
      )}
      <div class="squad-facts">
        <Choose label={t.one} players={players} value={one} onChange={setOne} />
        <Choose
          label={t.other}
          players={players.filter(({ id }) => id !== one)}
          value={other}
          onChange={setOther}
        />
      </div>
      <div class="row">
        <Button disabled={!ready} onClick={() => set('together')}>
          {t.together}
        </Button>
        <Button disabled={!ready} onClick={() => set('apart')}>
          {t.apart}
        </Button>
      </div>
    </section>
  );
}

function Choose({
  label,
  players,
  value,
  onChange,
}: {
  label: string;
  players: readonly Player[];
  value: string;
  onChange: (player: string) => void;
}) {
  return (
    <label>
      {label}
      <select value={value} onChange={(event) => onChange(event.currentTarget.value)}>
        <option value="">{planningWords.value.wishes.choose}</option>
        {players.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
