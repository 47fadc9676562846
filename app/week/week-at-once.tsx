import type { Week } from '../../core/calendar.ts';
import { attendance } from '../../core/figures/attendance.ts';
import { weekWork } from '../../core/figures/week-work.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { estimated } from '../estimates.ts';
import { squad } from '../ledger.ts';
import { playerName } from '../parts/names.ts';
import { href } from '../route.ts';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';
import { WorkBar } from './work-bar.tsx';
import './week-at-once.css';

/** The week on one screen: its days and who was away, the work by family, and a row for each player. */
export function WeekAtOnce({ practices, week }: { practices: Summary[]; week: Week }) {
  const t = deskWords.value.week;
  const days = [...attendance(practices)];
  const asked = [...squad.value.values()].filter(({ resting }) => !resting);
  const work = weekWork(estimated.value, week);
  const players = [...squad.value.keys()].filter(
    (player) => work.players.has(player) || days.some(([, there]) => there.has(player)),
  );
  const mostOf = (all: readonly { balls: number; usual?: number }[]) =>
    Math.max(1, ...all.flatMap(({ balls, usual = 0 }) => [balls, usual]));
  const mostByFamily = mostOf(work.families);
  const mostByPlayer = mostOf([...work.players.values()]);
  return (
    <div class="at-once no-print">
      <ul class="at-once-days">
        {days.map(([date, there]) => {
          const away = asked.filter(({ id }) => !there.has(id)).map(({ name }) => name);
          const said = t.dayAtOnce(there.size, away);
          const on = practices.filter((each) => each.date === date);
          return (
            <li key={date}>
              {on.map((each, at) => (
                <a key={each.practice} class="at-once-day" href={href('practice', each.practice)}>
                  {t.day(date)}
                  <span class="unseen"> · {t.putRightOf(words.value.date(date), at + 1)}</span>
                </a>
              ))}
              <span class="break">{said}</span>
            </li>
          );
        })}
      </ul>
      <section aria-labelledby="work">
        <h2 id="work" class="at-once-title">
          {t.workAtOnce}
        </h2>
        <ul>
          {work.families.map(({ family, ...own }) => (
            <li key={family} class="at-once-row at-once-family">
              <span class="at-once-name">{words.value.families[family]}</span>
              <WorkBar work={own} most={mostByFamily} />
            </li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="players-at-once">
        <h2 id="players-at-once" class="at-once-title">
          {t.playersAtOnce}
        </h2>
        <ul>
          {players.map((player) => (
            <li key={player} class="at-once-row">
              <span class="at-once-name break">{playerName(player)}</span>
              <Days days={days.map(([, there]) => there.has(player))} />
              <WorkBar work={work.players.get(player) ?? { balls: 0 }} most={mostByPlayer} />
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
}

/** A box a day: full where the player was there. */
function Days({ days }: { days: boolean[] }) {
  const t = deskWords.value.week;
  const there = days.filter(Boolean).length;
  return (
    <span class="at-once-presence">
      <span class="unseen">{t.thereOf(there, days.length)}</span>
      {days.map((was, at) => (
        <i key={at} aria-hidden="true" class={was ? 'was-there' : undefined} />
      ))}
    </span>
  );
}
