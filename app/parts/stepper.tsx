import { Button } from './button.tsx';
import './stepper.css';

/** A number with a button on either side of it. */
export function Stepper({
  label,
  value,
  shown,
  least,
  most,
  by = 1,
  onChange,
}: {
  /** What the number is, for a person who does not see it stand beside its name. */
  label: string;
  value: number;
  /** How the number is written, where its digits alone do not say it. */
  shown?: string;
  least: number;
  most: number;
  by?: number;
  onChange: (value: number) => void;
}) {
  const put = (next: number) => onChange(Math.min(most, Math.max(least, next)));
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw a box and a legend
    <div class="stepper" role="group" aria-label={label}>
      <Button aria-label={`${label} −`} disabled={value <= least} onClick={() => put(value - by)}>
        −
      </Button>
      <output class="number">{shown ?? value}</output>
      <Button aria-label={`${label} +`} disabled={value >= most} onClick={() => put(value + by)}>
        +
      </Button>
    </div>
  );
}
