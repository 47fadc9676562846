import { useRef, useState } from 'preact/hooks';
import { nameFault } from '../../core/ledger/squad.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { deskWords } from '../words/desk-words.ts';
import { addPlayers, namesBeside } from './actions.ts';

/** One nickname after another: the field empties and keeps the focus, so that a squad is typed in one go. */
export function AddPlayer() {
  const t = deskWords.value.squad;
  const field = useRef<HTMLInputElement>(null);
  const [name, setName] = useState('');
  const [said, setSaid] = useState<{ added: string } | { fault: string }>();
  const add = (event: Event) => {
    event.preventDefault();
    field.current?.focus();
    const fault = nameFault(name, namesBeside());
    if (fault) {
      setSaid({ fault: t.nameFaults[fault](name.trim()) });
      return;
    }
    addPlayers([{ name }]);
    setSaid({ added: t.added(name.trim()) });
    setName('');
  };
  const fault = said && 'fault' in said ? said.fault : undefined;
  return (
    <form class="part" onSubmit={add}>
      <label for="nickname">{t.nickname}</label>
      <div class="squad-add">
        <input
          ref={field}
          id="nickname"
          type="text"
          autocomplete="off"
          autocapitalize="words"
          spellcheck={false}
          enterkeyhint="enter"
          aria-describedby="nicknames-only"
          aria-invalid={fault !== undefined}
          value={name}
          onInput={(event) => {
            setName(event.currentTarget.value);
            if (fault !== undefined) setSaid(undefined);
          }}
        />
        <Button type="submit">{t.add}</Button>
      </div>
      <p id="nicknames-only" class="small">
        {t.nicknamesOnly}
      </p>
      {fault !== undefined && <Notice as="fault">{fault}</Notice>}
      <p class={said && 'added' in said ? 'small' : 'unseen'} role="status">
        {said && 'added' in said ? said.added : ''}
      </p>
    </form>
  );
}
