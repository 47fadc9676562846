import { estimated, waiting } from '../estimates.ts';
import { squad } from '../ledger.ts';
import { FiguresPage } from '../parts/figures-page.tsx';
import { Notice } from '../parts/notice.tsx';
import { href } from '../route.ts';
import { figureWords } from '../words/figure-words.ts';
import { lookWords } from '../words/look-words.ts';
import { words } from '../words/words.ts';
import { FindingRow } from './finding-row.tsx';
import { evening } from './known.ts';
import './evening.css';

/**
 * The coach's evening: at most five findings, each a sentence and a picture, what can be done a touch
 * away and what it rests on behind it. Nobody is ranked.
 */
export function EveningScreen() {
  const t = lookWords.value.evening;
  const played = estimated.value.some(({ rounds }) => rounds.length > 0);
  return (
    <FiguresPage title={words.value.today.evening} class="evening">
      {() =>
        played ? (
          <>
            {waiting.value > 0 && (
              <Notice>{figureWords.value.beingWorkedOut(waiting.value)}</Notice>
            )}
            <Findings />
            <Behind />
          </>
        ) : (
          <p>{t.nothing}</p>
        )
      }
    </FiguresPage>
  );
}

function Findings() {
  const t = lookWords.value.evening;
  const { found, silent } = evening.value;
  return (
    <>
      <ul class="findings">
        {found.map((finding) => (
          <FindingRow key={finding.about} finding={finding} />
        ))}
      </ul>
      {silent.length > 0 && <p>{t.silent(silent.map((question) => t.questions[question]))}</p>}
    </>
  );
}

/** The ways to everything that the findings are made of. */
function Behind() {
  const look = lookWords.value;
  const ways = [
    ['glance', look.glance.title],
    ['numbers', figureWords.value.review.title],
    ['neglected', look.neglected.title],
    ['together', look.together.title],
    ['sizes', look.sizes.title],
    ['season', look.season.title],
  ] as const;
  return (
    <>
      <section class="part no-print" aria-labelledby="behind">
        <h2 id="behind">{look.evening.more}</h2>
        <ul class="ruled">
          {ways.map(([place, name]) => (
            <li key={place}>
              <a class="grow break evening-way" href={href(place)}>
                {name}
              </a>
            </li>
          ))}
        </ul>
      </section>
      <section class="part no-print" aria-labelledby="players">
        <h2 id="players">{look.evening.players}</h2>
        <p class="small faint">{figureWords.value.review.squadNote}</p>
        <div class="row">
          {[...squad.value.values()].map(({ id, name }) => (
            <a key={id} class="button break" href={href('review', id)}>
              {name}
            </a>
          ))}
        </div>
      </section>
    </>
  );
}
