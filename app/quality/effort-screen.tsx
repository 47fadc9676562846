import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { Messages } from '../parts/messages.tsx';
import { practice } from '../practices.ts';
import { go } from '../route.ts';
import { qualityWords } from '../words/quality-words.ts';
import { words } from '../words/words.ts';
import { EffortRows } from './effort-rows.tsx';

/** After practice: effort and minutes of everyone; an earlier day's stand on that practice's page. */
export function EffortScreen() {
  const t = qualityWords.value.effort;
  return (
    <>
      <main class="page">
        <header>
          <h1>{practice.value ? words.value.date(practice.value.date) : t.title}</h1>
          <Button onClick={() => go('quality')}>{words.value.back}</Button>
        </header>
        <Messages />
        {practice.value ? <EffortRows practice={practice.value} /> : <p>{t.none}</p>}
      </main>
      <Bar />
    </>
  );
}
