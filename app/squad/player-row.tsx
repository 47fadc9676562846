import { useRef, useState } from 'preact/hooks';
import { clearable, hands, nameFault, type Player } from '../../core/ledger/squad.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';
import { bringBack, changePlayer, namesBeside, restPlayer } from './actions.ts';

const LEVELS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

/** A player in the book; a tap opens what can be changed. */
export function PlayerRow({ player }: { player: Player }) {
  const t = deskWords.value.squad;
  const [open, setOpen] = useState(false);
  const row = useRef<HTMLButtonElement>(null);
  const close = () => {
    setOpen(false);
    row.current?.focus();
  };
  const facts = [
    ...(player.level === undefined ? [] : [t.levelIs(player.level)]),
    ...(player.hand ? [t.handIs[player.hand]] : []),
  ];
  return (
    <li>
      <button
        ref={row}
        type="button"
        class="squad-row"
        aria-expanded={open}
        onClick={() => setOpen(!open)}
      >
        <span class="squad-who">
          <b>{player.name}</b>
          <span class="faint small">{facts.join(', ')}</span>
        </span>
      </button>
      {open && <Editor player={player} onDone={close} />}
    </li>
  );
}

function Editor({ player, onDone }: { player: Player; onDone: () => void }) {
  const t = deskWords.value.squad;
  const [name, setName] = useState(player.name);
  const [level, setLevel] = useState(player.level);
  const [hand, setHand] = useState(player.hand);
  const [fault, setFault] = useState<string>();
  const save = (event: Event) => {
    event.preventDefault();
    const wrong = nameFault(name, namesBeside(player.id));
    if (wrong) {
      setFault(t.nameFaults[wrong](name.trim()));
      return;
    }
    const now = { level, hand };
    const cleared = clearable.filter((fact) => now[fact] === undefined && player[fact]);
    changePlayer(player.id, {
      ...(name.trim() !== player.name && { name }),
      ...(level !== undefined && level !== player.level && { level }),
      ...(hand !== undefined && hand !== player.hand && { hand }),
      ...(cleared.length > 0 && { cleared }),
    });
    onDone();
  };
  // A file may have given half a level; it stays to be chosen beside the whole ones.
  const levels = [...new Set([...LEVELS, ...(level === undefined ? [] : [level])])].sort(
    (a, b) => a - b,
  );
  return (
    <form class="squad-editor" onSubmit={save}>
      <label>
        {t.nickname}
        <input
          type="text"
          autocomplete="off"
          autocapitalize="words"
          spellcheck={false}
          aria-invalid={fault !== undefined}
          value={name}
          onInput={(event) => {
            setName(event.currentTarget.value);
            setFault(undefined);
          }}
        />
      </label>
      {fault !== undefined && <Notice as="fault">{fault}</Notice>}
      <div class="squad-facts">
        <label>
          {t.level}
          <select
            value={level ?? ''}
            onChange={(event) => setLevel(Number(event.currentTarget.value) || undefined)}
          >
            <option value="">{t.notGiven}</option>
            {levels.map((each) => (
              <option key={each} value={each}>
                {words.value.decimal(each)}
              </option>
            ))}
          </select>
        </label>
        <label>
          {t.hand}
          <select
            value={hand ?? ''}
            onChange={(event) => setHand(hands.find((each) => each === event.currentTarget.value))}
          >
            <option value="">{t.notGiven}</option>
            {hands.map((each) => (
              <option key={each} value={each}>
                {t.hands[each]}
              </option>
            ))}
          </select>
        </label>
      </div>
      <p class="small">{t.levelMeans}</p>
      <div class="row">
        <Button type="submit">{t.save}</Button>
        <Button onClick={onDone}>{words.value.cancel}</Button>
        {player.resting ? (
          <Button onClick={() => bringBack(player.id)}>{t.bringBack}</Button>
        ) : (
          <Button onClick={() => restPlayer(player.id)}>{t.rest}</Button>
        )}
      </div>
      {!player.resting && <p class="small">{t.restMeans}</p>}
    </form>
  );
}
