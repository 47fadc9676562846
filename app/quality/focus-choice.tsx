import { focusNames } from '../../core/drill/focus.ts';
import { library } from '../ledger.ts';
import { focusQuestion } from '../words/focus-question.ts';
import { qualityWords } from '../words/quality-words.ts';
import { FocusLines } from './focus-lines.tsx';

/** The choice of a focus, with what yes looks like and how the player is told. */
export function FocusChoice({
  label,
  value,
  onChange,
}: {
  label: string;
  value: string | undefined;
  onChange: (focus: string | undefined) => void;
}) {
  const t = qualityWords.value.focus;
  const own = [...library.value.foci.values()].filter(({ dropped }) => !dropped);
  const foci = [...new Set([...focusNames, ...own.map(({ id }) => id), ...(value ? [value] : [])])];
  return (
    <>
      <label class="stack">
        <b>{label}</b>
        <select
          value={value ?? ''}
          onChange={(event) => onChange(event.currentTarget.value || undefined)}
        >
          <option value="">{t.none}</option>
          {foci.map((focus) => (
            <option key={focus} value={focus}>
              {focusQuestion(focus)}
            </option>
          ))}
        </select>
      </label>
      {value !== undefined && (
        <dl class="before-facts">
          <FocusLines focus={value} />
        </dl>
      )}
    </>
  );
}
