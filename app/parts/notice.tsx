import type { ComponentChildren } from 'preact';
import './notice.css';

/** What went wrong or wants a look, said in the place where it happened. */
export function Notice({
  children,
  as = 'note',
}: {
  children: ComponentChildren;
  as?: 'note' | 'fault';
}) {
  return (
    <div class={`notice notice-${as}`} role={as === 'fault' ? 'alert' : 'status'}>
      {children}
    </div>
  );
}
