import { PairThem } from '../evening/deeds.tsx';
import { partnersNext } from '../evening/known.ts';
import { FiguresPage } from '../parts/figures-page.tsx';
import { namesOf } from '../parts/names.ts';
import { lookWords } from '../words/look-words.ts';
import './together.css';

/** Who should play together next, if everybody comes, and why; nobody has to be marked as here. */
export function TogetherScreen() {
  return <FiguresPage title={lookWords.value.together.title}>{() => <Pairs />}</FiguresPage>;
}

function Pairs() {
  const t = lookWords.value.together;
  const pairs = partnersNext.value;
  if (pairs.length === 0) return <p>{t.few}</p>;
  return (
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
  );
}
