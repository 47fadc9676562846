import type { JSX } from 'preact';

/**
 * Acts for every finger as it comes down: where two fingers overlap there are two pointerdowns and no
 * click at all. A keyboard or a screen reader has no pointer; its click has no detail.
 */
export const onTouch = (act: (event: Event) => void): JSX.IntrinsicElements['button'] => ({
  onPointerDown: (event) => {
    if (event.button === 0) act(event);
  },
  onClick: (event) => {
    if (event.detail === 0) act(event);
  },
  onKeyDown: (event) => {
    if (event.repeat) event.preventDefault(); // A key that is held down counts once.
  },
  onContextMenu: (event) => event.preventDefault(),
});
