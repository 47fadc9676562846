import { attendance } from '../../core/figures/attendance.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { squad } from '../ledger.ts';
import { playerName } from '../parts/names.ts';
import { href } from '../route.ts';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';

/** Who was there, day by day, and who was on none of them. */
export function Attendance({ practices }: { practices: Summary[] }) {
  const t = deskWords.value.week;
  const days = [...attendance(practices)];
  const struck = practices.filter((each) => each.struck);
  const away = [...squad.value.values()].filter(
    ({ id, resting }) => !resting && !days.some(([, there]) => there.has(id)),
  );
  return (
    <section class="part" aria-labelledby="there">
      <h2 id="there">{t.there}</h2>
      <ul class="week-days">
        {days.map(([date, there]) => (
          <li key={date}>
            <header>
              <h3>{words.value.date(date)}</h3>
              {practices
                .filter((each) => each.date === date)
                .map((each, at) => (
                  <a
                    key={each.practice}
                    class="button button-quiet no-print"
                    href={href('practice', each.practice)}
                    aria-label={t.putRightOf(words.value.date(date), at + 1)}
                  >
                    {t.putRight}
                  </a>
                ))}
            </header>
            <p class="break">
              {there.size === 0
                ? t.nobody
                : t.thereNames(there.size, words.value.list([...there].map(playerName)))}
            </p>
          </li>
        ))}
      </ul>
      {struck.map(({ practice, date }) => (
        <p key={practice} class="no-print">
          <a href={href('practice', practice)}>
            {words.value.named(words.value.date(date), deskWords.value.practice.struck)}
          </a>
        </p>
      ))}
      {away.length > 0 && (
        <p class="faint break">{t.away(words.value.list(away.map(({ name }) => name)))}</p>
      )}
    </section>
  );
}
