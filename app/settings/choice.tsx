import { useId } from 'preact/hooks';

/** One of a few, each said in full. */
export function Choice<Value extends string>({
  legend,
  values,
  value,
  names,
  onChange,
}: {
  legend: string;
  values: readonly Value[];
  value: Value;
  names: Readonly<Record<Value, string>>;
  onChange: (value: Value) => void;
}) {
  const group = useId();
  return (
    <fieldset class="settings-choices">
      <legend>{legend}</legend>
      {values.map((each) => (
        <label key={each}>
          <input
            type="radio"
            name={group}
            checked={value === each}
            onChange={() => onChange(each)}
          />
          {names[each]}
        </label>
      ))}
    </fieldset>
  );
}
