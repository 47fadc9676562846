import { Bar } from './parts/bar.tsx';
import { Button } from './parts/button.tsx';
import { Messages } from './parts/messages.tsx';
import { go } from './route.ts';
import { deskWords } from './words/desk-words.ts';
import { words } from './words/words.ts';

/** An address at which the app has nothing: mistyped, or of another version. */
export function NowhereScreen() {
  const t = deskWords.value.nowhere;
  return (
    <>
      <main class="page">
        <header>
          <h1>{t.title}</h1>
        </header>
        <Messages />
        <p>{t.means}</p>
        <Button as="main" onClick={() => go()}>
          {words.value.court.toToday}
        </Button>
      </main>
      <Bar />
    </>
  );
}
