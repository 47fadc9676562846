import { PairThem } from '../evening/deeds.tsx';
import { partnersNext } from '../evening/known.ts';
import { Bar } from '../parts/bar.tsx';
import { Messages } from '../parts/messages.tsx';
import { namesOf } from '../parts/names.ts';
import { Reading } from '../parts/reading.tsx';
import { history } from '../practices.ts';
import { lookWords } from '../words/look-words.ts';
import './together.css';

/** Who should play together next, if everybody comes, and why; nobody has to be marked as here. */
export function TogetherScreen() {
  const t = lookWords.value.together;
  const pairs = partnersNext.value;
  return (
    <>
      <main class="page">
        <header>
          <h1>{t.title}</h1>
        </header>
        <Messages />
        {history.value === undefined ? (
          <Reading />
        ) : pairs.length === 0 ? (
          <p>{t.few}</p>
        ) : (
          <>
            <p class="small">{t.means}</p>
            <ul class="ruled together">
              {pairs.map(({ players, days }) => (
                <li key={players.join()}>
                  <div class="stack grow">
                    <p>
                      <b class="break">{namesOf(players)}</b>
                      <br />
                      <span class="small">{days === undefined ? t.never : t.days(days)}</span>
                    </p>
                    <PairThem players={players} named={namesOf(players)} />
                  </div>
                </li>
              ))}
            </ul>
          </>
        )}
      </main>
      <Bar />
    </>
  );
}
