import { sumEstimates } from '../../core/figures/all-touches.ts';
import { sumTouches } from '../../core/figures/counted.ts';
import { pairStints } from '../../core/figures/stints.ts';
import { byDrill } from '../../core/figures/totals.ts';
import type { Summary } from '../../core/ledger/summary.ts';
import { deskWords } from '../words/desk-words.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import { allTouches } from './all-touches.ts';
import { BookTable } from './book-table.tsx';

/** What the squad did at each drill, in the order in which the drills were first played. */
export function DrillTable({ practices }: { practices: Summary[] }) {
  const t = deskWords.value.week;
  const { number } = words.value;
  const stints = pairStints(practices);
  const drills = byDrill(practices);
  const unheard = [...drills.values()].reduce((sum, drill) => sum + drill.unheard, 0);
  const rows = [...drills].map(([id, { terms, rounds, sets, touches, seconds }]) => ({
    id,
    name: drillName(terms),
    numbers: [
      number(rounds),
      number(sets),
      number(sumTouches(touches)),
      t.inMinutes(seconds),
      allTouches(sumEstimates(stints.filter((stint) => stint.terms.drill === id))),
    ],
  }));
  return (
    <section class="part" aria-labelledby="by-drill">
      <h2 id="by-drill">{t.byDrill}</h2>
      <BookTable
        label="by-drill"
        of={t.drill}
        columns={[
          { name: t.rounds, of: 'rounds' },
          { name: t.sets, of: 'sets' },
          { name: t.touches, of: 'counted' },
          { name: t.minutes, of: 'minutes' },
          { name: t.allTouches, of: 'touches', wide: true },
        ]}
        rows={rows}
      />
      {unheard > 0 && <p>{t.unheard(unheard)}</p>}
      <p class="small faint">{t.byDrillNote}</p>
    </section>
  );
}
