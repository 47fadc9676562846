import type { ComponentChildren } from 'preact';
import './graph.css';

/**
 * A picture in units of its own, as wide as the screen has room: what its upper and its lower edge stand
 * for beside it, what its two ends stand for below.
 */
export function Graph({
  size: [width, height],
  label,
  top,
  bottom,
  ends,
  children,
}: {
  size: readonly [width: number, height: number];
  /** What a person would see. */
  label: string;
  top: string;
  bottom: string;
  ends: ComponentChildren;
  children: ComponentChildren;
}) {
  return (
    <div class="graph">
      <span class="small number">{top}</span>
      <svg
        viewBox={`0 0 ${width} ${height}`}
        preserveAspectRatio="none"
        role="img"
        aria-label={label}
      >
        {children}
      </svg>
      <span class="small number">{bottom}</span>
      <div class="graph-ends small">{ends}</div>
    </div>
  );
}
