import { seasonWork, TERM_WEEKS, termTouches } from '../../core/figures/season-work.ts';
import { Whose } from '../coverage/whose.tsx';
import { estimated } from '../estimates.ts';
import { FiguresPage } from '../parts/figures-page.tsx';
import { playerName } from '../parts/names.ts';
import { lookWords } from '../words/look-words.ts';
import { planningWords } from '../words/planning-words.ts';
import { words } from '../words/words.ts';
import './season.css';

/** How work and level went over the months, and what a term adds up to; of the squad or one player. */
export function SeasonScreen({ player }: { player?: string | undefined }) {
  return (
    <FiguresPage
      title={lookWords.value.season.title}
      above={<Whose place="season" player={player} />}
    >
      {() => <Season player={player} />}
    </FiguresPage>
  );
}

/** A year. */
const MONTHS = 12;

function Season({ player }: { player: string | undefined }) {
  const t = lookWords.value.season;
  const work = seasonWork(estimated.value, MONTHS, player);
  const term = termTouches(estimated.value, player);
  if (work.every(({ months }) => months.length === 0)) return <p>{t.nothing}</p>;
  const most = Math.max(1, ...work.flatMap(({ months }) => months.map(({ balls }) => balls)));
  return (
    <>
      <section class="part" aria-labelledby="term">
        <h2 id="term">{t.term(TERM_WEEKS)}</h2>
        <dl class="season-term">
          {term.map(({ stroke, touches }) => (
            <div key={stroke}>
              <dt>{planningWords.value.coverage.strokes[stroke]}</dt>
              <dd class="number">{words.value.number(touches)}</dd>
            </div>
          ))}
        </dl>
        <p class="small faint">{t.termMeans}</p>
      </section>
      <section class="part" aria-labelledby="months">
        <h2 id="months">{t.months(player === undefined ? '' : playerName(player))}</h2>
        <p class="small">{t.monthsMean}</p>
        {work.map(({ family, months }) => (
          <div key={family}>
            <h3>{words.value.families[family]}</h3>
            <ul>
              {months.map(({ month, balls, share }) => (
                <li key={month} class="season-month">
                  <span class="season-name">{t.month(`${month}-01`)}</span>
                  <span class="season-bar" aria-hidden="true">
                    <i style={{ inlineSize: `${(100 * balls) / most}%` }} />
                  </span>
                  <span class="season-balls number">{t.balls(balls)}</span>
                  <span class="season-share number">
                    {share === undefined ? '' : lookWords.value.percent(share)}
                  </span>
                </li>
              ))}
            </ul>
          </div>
        ))}
      </section>
    </>
  );
}
