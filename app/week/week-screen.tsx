import { signal } from '@preact/signals';
import {
  isoWeek,
  readWeekName,
  type Week,
  weekDays,
  weekName,
  weekStep,
} from '../../core/calendar.ts';
import { wasHeld } from '../../core/figures/attendance.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { today } from '../device/clock.ts';
import { estimated } from '../estimates.ts';
import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { Fold } from '../parts/fold.tsx';
import { Messages } from '../parts/messages.tsx';
import { Reading } from '../parts/reading.tsx';
import { history, summaries } from '../practices.ts';
import { go, href } from '../route.ts';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';
import { Attendance } from './attendance.tsx';
import { DrillTable } from './drill-table.tsx';
import { HandOver } from './hand-over.tsx';
import { PlayerTable } from './player-table.tsx';
import { WeekAtOnce } from './week-at-once.tsx';
import './week.css';
import './print.css';

/** A week of practices on one page; an address that names no week shows the present one. */
export function WeekScreen({ week }: { week?: string | undefined }) {
  const t = deskWords.value.week;
  const shown = readWeekName(week ?? '') ?? isoWeek(today());
  const days = weekDays(shown.year, shown.week);
  const practices = estimated.value.filter(
    (each) => days.includes(each.date) && (wasHeld(each) || each.struck),
  );
  return (
    <>
      <main class="page week">
        <header class="week-head">
          <h1>{t.title(shown.week)}</h1>
          <p class="faint">{t.span(days[0] ?? '', days[6] ?? '')}</p>
        </header>
        <Ways from={shown} />
        <Messages />
        {history.value === undefined ? (
          <Reading />
        ) : practices.length === 0 ? (
          <Empty now={days.includes(today())} />
        ) : (
          <Sheet key={weekName(shown)} practices={practices} week={shown} />
        )}
      </main>
      <Bar />
    </>
  );
}

function Ways({ from }: { from: Week }) {
  const t = deskWords.value.week;
  const to = (by: number) => href('week', weekName(weekStep(from, by)));
  const isNow = weekName(from) === weekName(isoWeek(today()));
  return (
    <nav class="week-ways no-print" aria-label={t.weeks}>
      <a class="button" href={to(-1)} aria-label={t.before}>
        ←
      </a>
      {isNow ? (
        <span class="week-now">{t.now}</span>
      ) : (
        <a class="button week-now" href={href('week')}>
          {t.now}
        </a>
      )}
      <a class="button" href={to(1)} aria-label={t.after}>
        →
      </a>
    </nav>
  );
}

function Empty({ now }: { now: boolean }) {
  const t = deskWords.value.week;
  const last = summaries.value.at(-1);
  return (
    <section class="part">
      <p>{now ? t.emptyNow : t.empty}</p>
      {now && (
        <Button as="main" onClick={() => go()}>
          {words.value.court.toToday}
        </Button>
      )}
      {last && <Button onClick={() => go('week', weekName(isoWeek(last.date)))}>{t.toLast}</Button>}
    </section>
  );
}

/** Stays as it was left from one week to the next. */
const open = signal(false);

function Sheet({ practices, week }: { practices: Summary[]; week: Week }) {
  const t = deskWords.value.week;
  const played = practices.some(({ rounds }) => rounds.length > 0);
  return (
    <>
      <WeekAtOnce practices={practices} week={week} />
      {played && <HandOver practices={practices} name={weekName(week)} />}
      <Fold title={t.everything} open={open}>
        <a class="button button-quiet" href={href('coverage')}>
          {words.value.today.coverage}
        </a>
        <Attendance practices={practices} />
        {played ? (
          <>
            <PlayerTable practices={practices} />
            <DrillTable practices={practices} />
            <Button onClick={() => go('review')}>{words.value.today.evening}</Button>
          </>
        ) : (
          <section class="part">
            <p>{t.noRounds}</p>
          </section>
        )}
      </Fold>
    </>
  );
}
