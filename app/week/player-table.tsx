import { daysThere } from '../../core/figures/attendance.ts';
import { sumTouches } from '../../core/figures/counted.ts';
import { byPlayer } from '../../core/figures/totals.ts';
import type { Summary } from '../../core/summary.ts';
import { squad } from '../ledger.ts';
import { playerName } from '../parts/names.ts';
import { words } from '../words/words.ts';
import { BookTable } from './book-table.tsx';

/** Everyone who was there, in the squad's order: this is no ranking. */
export function PlayerTable({ practices }: { practices: Summary[] }) {
  const t = words.value.week;
  const { number } = words.value;
  const days = daysThere(practices);
  const totals = byPlayer(practices);
  const players = [...new Set([...squad.value.keys(), ...days.keys(), ...totals.keys()])].filter(
    (player) => days.has(player) || totals.has(player),
  );
  const rows = players.map((player) => {
    const there = days.get(player);
    const total = totals.get(player);
    return {
      id: player,
      name: playerName(player),
      numbers: [
        there === undefined ? undefined : number(there),
        ...(total
          ? [number(total.sets), number(sumTouches(total.touches)), t.inMinutes(total.seconds)]
          : [undefined, undefined, undefined]),
      ],
    };
  });
  return (
    <section class="part" aria-labelledby="by-player">
      <h2 id="by-player">{t.byPlayer}</h2>
      <BookTable
        label="by-player"
        of={t.player}
        columns={[t.days, t.sets, t.touches, t.minutes]}
        rows={rows}
      />
      <p class="small faint">{t.byPlayerNote}</p>
    </section>
  );
}
