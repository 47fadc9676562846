import { useState } from 'preact/hooks';
import { words } from '../words/words.ts';
import { Button } from './button.tsx';
import './pads.css';

const TEN = 10;

/** A number by one touch: pads from 0 to 9, and by one touch more the tens above. */
export function Pads({
  label,
  value,
  most,
  none,
  short = false,
  onPick,
}: {
  /** What the number is of. */
  label: string;
  value: number | undefined;
  /** The largest number there is; none where any may be. */
  most?: number;
  /** What it is called that there is no number. */
  none: string;
  /** Whether a dash stands for that: where what it means is seen elsewhere on the screen. */
  short?: boolean;
  onPick: (value: number | undefined) => void;
}) {
  const t = words.value.pads;
  const [tens, setTens] = useState(0);
  const first = tens * TEN;
  const last = Math.min(most ?? Number.POSITIVE_INFINITY, first + TEN - 1);
  const pick = (number: number | undefined) => {
    setTens(0);
    onPick(number);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would draw a box and a legend
    <div class="pads" role="group" aria-label={label}>
      {Array.from({ length: last - first + 1 }, (_, at) => first + at).map((number) => (
        <Button
          key={number}
          class="number"
          aria-label={words.value.named(label, words.value.number(number))}
          aria-pressed={value === number}
          onClick={() => pick(number)}
        >
          {words.value.number(number)}
        </Button>
      ))}
      {(most === undefined || last < most) && (
        <Button aria-label={t.more} onClick={() => setTens(tens + 1)}>
          {words.value.number(last + 1)}+
        </Button>
      )}
      {tens > 0 && (
        <Button aria-label={t.fewer} onClick={() => setTens(0)}>
          ←
        </Button>
      )}
      <Button
        class={short ? undefined : 'pads-word'}
        aria-label={words.value.named(label, none)}
        aria-pressed={value === undefined}
        onClick={() => pick(undefined)}
      >
        {short ? '—' : none}
      </Button>
    </div>
  );
}
