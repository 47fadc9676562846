import type { SizeFit } from '../../core/figures/size-fit.ts';
import { append, library } from '../ledger.ts';
import { asked } from '../next-asks.ts';
import { Button } from '../parts/button.tsx';
import { textOf } from '../words/drill-text.ts';
import { lookWords } from '../words/look-words.ts';

/*
 * What a coach can do about a finding, one touch each. Done, the button says so and a further touch
 * takes it back.
 */

/** Puts a drill into the next block. */
export function PutIn({ drill }: { drill: string }) {
  const t = lookWords.value.evening;
  const known = library.value.drills.get(drill);
  if (!known) return null;
  const on = asked.value.drills.includes(drill);
  const { name } = textOf(known);
  return (
    <Deed done={on} onClick={() => append({ kind: 'next-asked', drill, on: !on })}>
      {on ? t.inNext(name) : t.putIn(name)}
    </Deed>
  );
}

/** Asks for two as a pair at the next practice; a trio comes together by the odd number alone. */
export function PairThem({ players, named }: { players: readonly string[]; named?: string }) {
  const [a, b, third] = players;
  const t = lookWords.value.evening;
  if (a === undefined || b === undefined || third !== undefined) return null;
  const on = asked.value.pairs.some((pair) => pair.includes(a) && pair.includes(b));
  const said = on ? t.paired : t.pairThem;
  return (
    <Deed
      done={on}
      label={named === undefined ? undefined : `${said}: ${named}`}
      onClick={() => append({ kind: 'next-asked', a, b, on: !on })}
    >
      {said}
    </Deed>
  );
}

/** Sets the drill's own size from now on to the one that fits. */
export function SetSize({ fit: { terms, size } }: { fit: SizeFit }) {
  const t = lookWords.value.evening;
  const drill = library.value.drills.get(terms.drill);
  if (!drill || (drill.size === size && terms.size === size)) return null;
  const done = drill.size === size;
  const set = (to: number) => append({ kind: 'drill-written', drill: { ...drill, size: to } });
  return (
    <Deed
      done={done}
      label={`${textOf(drill).name}: ${done ? t.sizeIsSet(size) : t.setSize(size, terms.size)}`}
      onClick={() => set(done ? terms.size : size)}
    >
      {done ? t.sizeIsSet(size) : t.setSize(size, terms.size)}
    </Deed>
  );
}

function Deed({
  done,
  label,
  onClick,
  children,
}: {
  done: boolean;
  label?: string | undefined;
  onClick: () => void;
  children: string;
}) {
  return (
    <Button
      class="deed"
      aria-pressed={done}
      {...(label !== undefined && { 'aria-label': label })}
      onClick={onClick}
    >
      {children}
    </Button>
  );
}
