import { attendance } from '../../core/figures/attendance.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { squad } from '../ledger.ts';
import { playerName } from '../parts/names.ts';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';

/** Who was there, day by day, and who was on none of them. */
export function Attendance({ practices }: { practices: Summary[] }) {
  const t = deskWords.value.week;
  const days = [...attendance(practices)];
  const away = [...squad.value.values()].filter(
    ({ id, resting }) => !resting && !days.some(([, there]) => there.has(id)),
  );
  return (
    <section class="part" aria-labelledby="there">
      <h2 id="there">{t.there}</h2>
      <ul class="week-days">
        {days.map(([date, there]) => (
          <li key={date}>
            <h3>{words.value.date(date)}</h3>
            <p class="break">
              {there.size === 0
                ? t.nobody
                : t.thereNames(there.size, words.value.list([...there].map(playerName)))}
            </p>
          </li>
        ))}
      </ul>
      {away.length > 0 && (
        <p class="faint break">{t.away(words.value.list(away.map(({ name }) => name)))}</p>
      )}
    </section>
  );
}
