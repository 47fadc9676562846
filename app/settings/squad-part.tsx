import { courtSizeNames } from '../../core/court/court.ts';
import { MOST_COURTS, type SquadSettings, units } from '../../core/ledger/squad-settings.ts';
import { append, squadSettings } from '../ledger.ts';
import { planningWords } from '../words/planning-words.ts';
import { words } from '../words/words.ts';
import { Choice } from './choice.tsx';

/** The courts that the squad plays on. */
export function SquadPart() {
  const t = planningWords.value.courts;
  const { courts, size, units: unit } = squadSettings.value;
  const set = (change: Partial<SquadSettings>) =>
    append({ kind: 'squad-set', ...squadSettings.value, ...change });
  const setCourts = (chosen: number) => {
    const { courts: _, ...others } = squadSettings.value;
    append({ kind: 'squad-set', ...others, ...(chosen > 0 && { courts: chosen }) });
  };
  return (
    <section class="part" aria-labelledby="courts">
      <h2 id="courts">{t.title}</h2>
      <label>
        {t.count}
        <select
          value={courts ?? 0}
          aria-describedby="court-count-means"
          onChange={(event) => setCourts(Number(event.currentTarget.value))}
        >
          <option value={0}>{t.notSet}</option>
          {Array.from({ length: MOST_COURTS }, (_, at) => (
            <option key={at} value={at + 1}>
              {words.value.number(at + 1)}
            </option>
          ))}
        </select>
      </label>
      <p id="court-count-means" class="small">
        {t.countMeans}
      </p>
      <Choice
        legend={t.size}
        values={courtSizeNames}
        value={size}
        names={t.sizes}
        onChange={(chosen) => set({ size: chosen })}
      />
      <p class="small">{t.sizeMeans}</p>
      <Choice
        legend={t.units}
        values={units}
        value={unit}
        names={t.unitNames}
        onChange={(chosen) => set({ units: chosen })}
      />
    </section>
  );
}
