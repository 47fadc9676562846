import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type FigureWords, figureWords } from '../words/figure-words.ts';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import './explained.css';

export type Explainable = keyof FigureWords['explanations'];

/** A figure that can be touched: what it means, what it is made from and how it is computed. */
export function Explained({ of, children }: { of: Explainable; children: ComponentChildren }) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" class="explained" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {children}
      </button>
      {open && <Explanation of={of} onClose={() => setOpen(false)} />}
    </>
  );
}

function Explanation({ of, onClose }: { of: Explainable; onClose: () => void }) {
  const t = figureWords.value;
  const { title, means, from, how } = t.explanations[of];
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog class="explanation" ref={dialog} aria-label={title} onClose={onClose}>
      <h2>{title}</h2>
      <p>{means}</p>
      <p>{from}</p>
      <p class="small">{words.value.named(t.forStatisticians, how)}</p>
      <Button onClick={() => dialog.current?.close()}>{t.close}</Button>
    </dialog>
  );
}
