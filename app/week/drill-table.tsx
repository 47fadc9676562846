import { sumTouches } from '../../core/figures/counted.ts';
import { byDrill } from '../../core/figures/totals.ts';
import type { Summary } from '../../core/summary.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import { BookTable } from './book-table.tsx';

/** What the squad did at each drill, in the order in which the drills were first played. */
export function DrillTable({ practices }: { practices: Summary[] }) {
  const t = words.value.week;
  const { number } = words.value;
  const rows = [...byDrill(practices)].map(([id, { terms, rounds, sets, touches, seconds }]) => ({
    id,
    name: drillName(terms),
    numbers: [number(rounds), number(sets), number(sumTouches(touches)), t.inMinutes(seconds)],
  }));
  return (
    <section class="part" aria-labelledby="by-drill">
      <h2 id="by-drill">{t.byDrill}</h2>
      <BookTable
        label="by-drill"
        of={t.drill}
        columns={[t.rounds, t.sets, t.touches, t.minutes]}
        rows={rows}
      />
      <p class="small faint">{t.byDrillNote}</p>
    </section>
  );
}
