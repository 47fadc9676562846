import { nanoid } from 'nanoid';
import { useState } from 'preact/hooks';
import { Focus } from '../../core/drill/focus.ts';
import { append, library } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { qualityWords } from '../words/quality-words.ts';

const empty = { question: '', yes: '', told: '' };

/** The coach's own foci, and a form for one more. */
export function OwnFoci() {
  const t = qualityWords.value.focus;
  const [draft, setDraft] = useState(empty);
  const [faulty, setFaulty] = useState(false);
  const own = [...library.value.foci.values()].filter(({ dropped }) => !dropped);
  const keep = (event: Event) => {
    event.preventDefault();
    const read = Focus.safeParse({ id: nanoid(10), ...draft });
    setFaulty(!read.success);
    if (!read.success) return;
    append({ kind: 'focus-written', focus: read.data });
    setDraft(empty);
  };
  const field = (name: keyof typeof empty, label: string, longest: number) => (
    <label>
      {label}
      <input
        value={draft[name]}
        maxLength={longest}
        autocomplete="off"
        onInput={(event) => setDraft({ ...draft, [name]: event.currentTarget.value })}
      />
    </label>
  );
  return (
    <details class="quality-more">
      <summary>{t.own}</summary>
      {own.length > 0 && (
        <ul class="ruled">
          {own.map(({ id, question }) => (
            <li key={id}>
              <span class="grow break">{question}</span>
              <Button
                aria-label={t.drop(question)}
                onClick={() => append({ kind: 'focus-dropped', focus: id })}
              >
                ×
              </Button>
            </li>
          ))}
        </ul>
      )}
      <form class="stack" onSubmit={keep}>
        {field('question', t.question, 40)}
        {field('yes', t.yesField, 160)}
        {field('told', t.toldField, 160)}
        {faulty && <Notice as="fault">{t.faulty}</Notice>}
        <Button type="submit">{t.keep}</Button>
      </form>
    </details>
  );
}
