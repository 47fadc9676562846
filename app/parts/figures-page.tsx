import type { ComponentChild, ComponentChildren } from 'preact';
import { history } from '../practices.ts';
import { Bar } from './bar.tsx';
import { Messages } from './messages.tsx';
import { Reading } from './reading.tsx';

/**
 * The page of a screen of figures: its title with what leads on beside it, what the app has to say of
 * itself, and the figures once the earlier practices, which they are made of, were read.
 */
export function FiguresPage({
  title,
  class: named = '',
  beside,
  above,
  children,
}: {
  title: string;
  class?: string;
  beside?: ComponentChildren;
  /** What stands there at once. */
  above?: ComponentChildren;
  /** Draws the figures; not asked before they are there. */
  children: () => ComponentChild;
}) {
  return (
    <>
      <main class={`page ${named}`.trim()}>
        <header>
          <h1 class="break">{title}</h1>
          {beside}
        </header>
        <Messages />
        {above}
        {history.value === undefined ? <Reading /> : children()}
      </main>
      <Bar />
    </>
  );
}
