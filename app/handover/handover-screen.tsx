import { useEffect } from 'preact/hooks';
import { Bar } from '../parts/bar.tsx';
import { HandPractice } from '../parts/hand-practice.tsx';
import { Messages } from '../parts/messages.tsx';
import { TakeIn } from '../parts/take-in.tsx';
import { practice, readHistory } from '../practices.ts';
import { handoverWords } from '../words/handover-words.ts';
import { ErasePart } from './erase-part.tsx';
import { TwinsPart } from './twins-part.tsx';

/** What passes between this phone and others, and what goes off it. */
export function HandoverScreen() {
  const t = handoverWords.value;
  useEffect(() => void readHistory().catch(() => {}), []);
  return (
    <>
      <main class="page">
        <header>
          <h1>{t.title}</h1>
        </header>
        <Messages />
        <p>{t.means}</p>
        <section class="part" aria-labelledby="by-file">
          <h2 id="by-file">{t.file.title}</h2>
          <p>{t.file.means}</p>
          {practice.value ? <HandPractice /> : <p class="faint">{t.file.none}</p>}
          <TakeIn />
        </section>
        <TwinsPart />
        <ErasePart />
      </main>
      <Bar />
    </>
  );
}
