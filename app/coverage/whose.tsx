import { squad } from '../ledger.ts';
import { go } from '../route.ts';
import { planningWords } from '../words/planning-words.ts';

/** The choice of a screen that tells of the whole squad or of one player. */
export function Whose({ place, player }: { place: string; player: string | undefined }) {
  const t = planningWords.value.coverage;
  return (
    <label>
      {t.whose}
      <select
        value={player ?? ''}
        onChange={({ currentTarget: { value } }) => (value === '' ? go(place) : go(place, value))}
      >
        <option value="">{t.squad}</option>
        {[...squad.value.values()].map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
