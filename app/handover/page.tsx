import type { ComponentChildren } from 'preact';
import { Bar } from '../parts/bar.tsx';
import { Messages } from '../parts/messages.tsx';
import { href } from '../route.ts';
import { handoverWords } from '../words/handover-words.ts';

/** A page beside the one on other phones, with the way back to it. */
export function Page({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <>
      <main class="page">
        <header>
          <h1>{title}</h1>
          <a class="button" href={href('handover')}>
            {handoverWords.value.back}
          </a>
        </header>
        <Messages />
        {children}
      </main>
      <Bar />
    </>
  );
}
