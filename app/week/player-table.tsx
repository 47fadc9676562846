import { sumEstimates } from '../../core/figures/all-touches.ts';
import { daysThere } from '../../core/figures/attendance.ts';
import { sumTouches } from '../../core/figures/counted.ts';
import { playerStints } from '../../core/figures/stints.ts';
import { byPlayer } from '../../core/figures/totals.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { squad } from '../ledger.ts';
import { playerName } from '../parts/names.ts';
import { deskWords } from '../words/desk-words.ts';
import { words } from '../words/words.ts';
import { allTouches } from './all-touches.ts';
import { BookTable } from './book-table.tsx';

/** Everyone who was there, in the squad's order: this is no ranking. */
export function PlayerTable({ practices }: { practices: Summary[] }) {
  const t = deskWords.value.week;
  const { number } = words.value;
  const days = daysThere(practices);
  const totals = byPlayer(practices);
  const stints = playerStints(practices);
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
          ? [
              number(total.sets),
              number(sumTouches(total.touches)),
              t.inMinutes(total.seconds),
              allTouches(sumEstimates(stints.get(player) ?? [])),
            ]
          : []),
      ],
    };
  });
  return (
    <section class="part" aria-labelledby="by-player">
      <h2 id="by-player">{t.byPlayer}</h2>
      <BookTable
        label="by-player"
        of={t.player}
        columns={[
          { name: t.days, of: 'days' },
          { name: t.sets, of: 'sets' },
          { name: t.touches, of: 'counted' },
          { name: t.minutes, of: 'minutes' },
          { name: t.allTouches, of: 'touches', wide: true },
        ]}
        rows={rows}
      />
      <p class="small faint">{t.byPlayerNote}</p>
    </section>
  );
}
