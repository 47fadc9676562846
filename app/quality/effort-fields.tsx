import { HARDEST, LONGEST_MINUTES } from '../../core/ledger/entry.ts';
import { qualityWords } from '../words/quality-words.ts';
import { words } from '../words/words.ts';

/** The scale of effort. */
export const efforts = Array.from({ length: HARDEST + 1 }, (_, effort) => effort);

/** The choice of an effort from 0 to 10, or none. */
export function EffortField({
  label,
  value,
  onChange,
}: {
  label: string;
  value: number | undefined;
  onChange: (effort: number | undefined) => void;
}) {
  const t = qualityWords.value.effort;
  return (
    <select
      aria-label={label}
      value={value ?? ''}
      onChange={({ currentTarget: { value: chosen } }) =>
        onChange(chosen === '' ? undefined : Number(chosen))
      }
    >
      <option value="">{t.notSaid}</option>
      {efforts.map((effort) => (
        <option key={effort} value={effort}>
          {words.value.number(effort)}
        </option>
      ))}
    </select>
  );
}

/** Minutes as they are written; what is no length of a practice is left as it was. */
export function MinutesField({
  label,
  value,
  onChange,
}: {
  label: string;
  value: number | undefined;
  onChange: (minutes: number | undefined) => void;
}) {
  return (
    <input
      type="number"
      inputMode="numeric"
      min={0}
      max={LONGEST_MINUTES}
      aria-label={label}
      value={value ?? ''}
      onChange={(event) => {
        const { value: written, valueAsNumber, validity } = event.currentTarget;
        if (written === '' && !validity.badInput) onChange(undefined);
        else if (validity.valid) onChange(valueAsNumber);
        else event.currentTarget.value = String(value ?? '');
      }}
    />
  );
}
