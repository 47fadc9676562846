import { useId } from 'preact/hooks';

/** Something that is on or off, with what it means where its name does not say it all. */
export function Switch({
  label,
  means,
  on,
  onChange,
}: {
  label: string;
  means?: string;
  on: boolean;
  onChange: (on: boolean) => void;
}) {
  const id = useId();
  return (
    <>
      <label class="settings-switch">
        <input
          type="checkbox"
          checked={on}
          aria-describedby={means === undefined ? undefined : id}
          onChange={() => onChange(!on)}
        />
        {label}
      </label>
      {means !== undefined && (
        <p id={id} class="small">
          {means}
        </p>
      )}
    </>
  );
}
