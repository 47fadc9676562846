import type { ComponentChildren, JSX } from 'preact';
import './button.css';

type Props = {
  children: ComponentChildren;
  /** `main` is the one thing to do next on a screen; `quiet` stands in a line of text. */
  as?: 'main' | 'quiet' | undefined;
} & Omit<JSX.IntrinsicElements['button'], 'as'>;

export function Button({ as, class: more, ...props }: Props) {
  return (
    <button
      type="button"
      class={['button', as && `button-${as}`, more].filter(Boolean).join(' ')}
      {...props}
    />
  );
}
