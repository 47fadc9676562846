import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { Button } from './button.tsx';
import './fold.css';

/** What is folded away on a screen until it is touched; on paper it is always there. */
export function Fold({
  title,
  open,
  children,
}: {
  title: string;
  open: Signal<boolean>;
  children: ComponentChildren;
}) {
  return (
    <>
      <Button
        class="fold"
        aria-expanded={open.value}
        onClick={() => {
          open.value = !open.value;
        }}
      >
        {title}
      </Button>
      <div class={open.value ? 'unfolded' : 'folded unfolded'}>{children}</div>
    </>
  );
}
