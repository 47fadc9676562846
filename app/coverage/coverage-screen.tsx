import { useState } from 'preact/hooks';
import {
  type Coverage,
  type CoverageCell,
  type CoverageLine,
  coverage,
  OVERDUE,
} from '../../core/figures/coverage.ts';
import { today } from '../device/clock.ts';
import { Button } from '../parts/button.tsx';
import { FiguresPage } from '../parts/figures-page.tsx';
import { playerName } from '../parts/names.ts';
import { summaries } from '../practices.ts';
import { go, href } from '../route.ts';
import { drillName } from '../words/drill-text.ts';
import { planningWords } from '../words/planning-words.ts';
import { words } from '../words/words.ts';
import { Whose } from './whose.tsx';
import './coverage.css';

/** What was practised in the last four weeks and what is overdue, by the squad or one player. */
export function CoverageScreen({ player }: { player?: string | undefined }) {
  return (
    <FiguresPage
      title={planningWords.value.coverage.title}
      beside={<Button onClick={() => go('propose')}>{planningWords.value.propose.title}</Button>}
      above={<Whose place="coverage" player={player} />}
    >
      {() => <Picture key={player} player={player} />}
    </FiguresPage>
  );
}

interface Line extends CoverageLine {
  name: string;
  /** A stroke inside its family. */
  inside?: boolean;
}

/** The families, each with its strokes where it has more than one. */
const linesOf = (shown: Coverage): Line[] =>
  shown.families.flatMap((family) => [
    { ...family, name: words.value.families[family.family] },
    ...(family.strokes.length > 1 ? family.strokes : []).map((stroke) => ({
      ...stroke,
      name: planningWords.value.coverage.strokes[stroke.stroke],
      inside: true,
    })),
  ]);

function Picture({ player }: { player: string | undefined }) {
  const t = planningWords.value.coverage;
  const [chosen, setChosen] = useState<{ line: number; week: number }>();
  const shown = coverage(summaries.value, today(), player === undefined ? {} : { player });
  const lines = linesOf(shown);
  if (lines.every(({ due }) => due === undefined)) return <p>{t.nothing}</p>;
  const most = Math.max(
    ...lines.flatMap(({ weeks }) => weeks.map(({ touches }) => touches ?? 0)),
    1,
  );
  const line = chosen && lines[chosen.line];
  const week = chosen && shown.weeks[chosen.week];
  const cell = line?.weeks[chosen?.week ?? 0];
  return (
    <>
      <div class="coverage-frame">
        <table class="coverage">
          <caption class="small">
            {t.of(player === undefined ? t.ofSquad : playerName(player))}
          </caption>
          <thead>
            <tr>
              <th scope="col">{t.line}</th>
              {shown.weeks.map(({ week }) => (
                <th key={week} scope="col" aria-label={t.weekLong(week)}>
                  {t.week(week)}
                </th>
              ))}
              <th scope="col">{t.days}</th>
            </tr>
          </thead>
          <tbody>
            {lines.map((each, at) => (
              <tr key={each.name} class={each.inside ? 'coverage-inside' : undefined}>
                <th scope="row">{each.name}</th>
                {each.weeks.map((inWeek, number) => (
                  <td key={number}>
                    <Amount
                      cell={inWeek}
                      most={most}
                      label={t.cell(each.name, shown.weeks[number]?.week ?? 0, inWeek.touches ?? 0)}
                      pressed={chosen?.line === at && chosen.week === number}
                      onTouch={() => setChosen({ line: at, week: number })}
                    />
                  </td>
                ))}
                <Since line={each} />
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="small">{t.key(OVERDUE.after, OVERDUE.longAfter)}</p>
      <section class="part" aria-labelledby="behind" aria-live="polite">
        <h2 id="behind">{t.behind}</h2>
        {line && week && cell ? (
          <>
            <p>{t.cell(line.name, week.week, cell.touches ?? 0)}</p>
            <Behind cell={cell} />
          </>
        ) : (
          <p>{t.touch}</p>
        )}
      </section>
    </>
  );
}

/** One week of a line: its touches, on a ground as high as its share of the most in the picture. */
function Amount({
  cell,
  most,
  label,
  pressed,
  onTouch,
}: {
  cell: CoverageCell;
  most: number;
  label: string;
  pressed: boolean;
  onTouch: () => void;
}) {
  if (cell.touches === undefined) {
    return <span class="unseen">{planningWords.value.coverage.noRound}</span>;
  }
  return (
    <button
      type="button"
      class="coverage-amount number"
      aria-label={label}
      aria-pressed={pressed}
      onClick={onTouch}
    >
      <svg aria-hidden="true" viewBox="0 0 1 1" preserveAspectRatio="none">
        <rect y={1 - cell.touches / most} width="1" height={cell.touches / most} />
      </svg>
      <span>{words.value.number(cell.touches)}</span>
    </button>
  );
}

/** Days since it was last practised; what is overdue has a mark, and for long a dark ground too. */
function Since({ line: { days, due = 'no' } }: { line: Line }) {
  const t = planningWords.value.coverage;
  return (
    <td class="coverage-since number" data-due={due}>
      <span aria-hidden="true" class="coverage-flag">
        {{ no: '', overdue: '▲', 'long-overdue': '▲▲' }[due]}
      </span>
      {days === undefined ? t.never : words.value.number(days)}
      <span class="unseen"> {t.due[due]}</span>
    </td>
  );
}

function Behind({ cell }: { cell: CoverageCell }) {
  const t = planningWords.value.coverage;
  if (cell.rounds.length === 0) return <p>{t.none}</p>;
  return (
    <ol class="ruled coverage-behind">
      {cell.rounds.map((round) => (
        <li key={round.round}>
          <a class="grow break" href={href('drill', round.drill)}>
            {drillName(round)}
          </a>
          <span class="small">{words.value.date(round.date)}</span>
          <b class="number">{words.value.number(round.touches)}</b>
        </li>
      ))}
    </ol>
  );
}
