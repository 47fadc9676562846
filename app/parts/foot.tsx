import type { ComponentChildren } from 'preact';
import './foot.css';

/** The way back from a long page, in reach wherever one has scrolled; a page with it has no bar. */
export function Foot({ children }: { children: ComponentChildren }) {
  return <div class="foot">{children}</div>;
}
