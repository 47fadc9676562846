import { dueAfter, OVERDUE } from '../../core/figures/coverage.ts';
import type { Missed } from '../../core/planning/left-out.ts';
import { asking, strokesLeftOut } from '../evening/known.ts';
import { FiguresPage } from '../parts/figures-page.tsx';
import { playerName } from '../parts/names.ts';
import { href } from '../route.ts';
import { lookWords } from '../words/look-words.ts';
import { planningWords } from '../words/planning-words.ts';
import { words } from '../words/words.ts';
import './neglected.css';

/** What was left out by whom: players down, strokes across, the days since in each cell. */
export function NeglectedScreen() {
  return (
    <FiguresPage title={lookWords.value.neglected.title}>{() => <LeftOutByWhom />}</FiguresPage>
  );
}

function LeftOutByWhom() {
  const t = lookWords.value.neglected;
  const lines = strokesLeftOut.value;
  const { strokes } = planningWords.value.coverage;
  const seen = asking.value.filter((player) =>
    lines.some(({ players }) => players.some((each) => each.player === player)),
  );
  if (seen.length === 0) return <p>{planningWords.value.coverage.nothing}</p>;
  return (
    <>
      <p class="small">{t.means(OVERDUE.after)}</p>
      <table class="neglected">
        <thead>
          <tr>
            <th scope="col">{lookWords.value.glance.player}</th>
            {lines.map(({ stroke }) => (
              <th key={stroke} scope="col">
                <span>{strokes[stroke]}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {seen.map((player) => (
            <tr key={player}>
              <th scope="row">
                <a href={href('coverage', player)}>{playerName(player)}</a>
              </th>
              {lines.map(({ stroke, players }) => (
                <td key={stroke}>
                  <Since
                    missed={players.find((each) => each.player === player)}
                    name={playerName(player)}
                    stroke={strokes[stroke]}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <a class="button" href={href('coverage')}>
        {words.value.today.coverage}
      </a>
    </>
  );
}

function Since({
  missed,
  name,
  stroke,
}: {
  missed: Missed | undefined;
  name: string;
  stroke: string;
}) {
  const t = lookWords.value.neglected;
  if (!missed) return null;
  const { days, overdue } = missed;
  const due = overdue ? dueAfter(days ?? Number.POSITIVE_INFINITY) : 'no';
  return (
    <span class="neglected-days number" data-due={due}>
      <span aria-hidden="true">{days === undefined ? '—' : words.value.number(days)}</span>
      <span class="unseen">
        {t.cell(name, stroke, days)} {planningWords.value.coverage.due[due]}
      </span>
    </span>
  );
}
