/** What a finger, a mouse button or a key sets off as it is let go, or held down for longer. */
const SET_OFF = ['pointerup', 'mouseup', 'touchend', 'click', 'auxclick', 'contextmenu', 'keyup'];
const ANEW = ['pointerdown', 'keydown'];

/**
 * A press has done its work while it is still held: from now until something is pressed anew,
 * nothing that its lift or its repetition sets off reaches the page, which may have changed under
 * it. Some phones send the click long after the lift, so it is not the lift that ends this.
 */
export function swallowLift(): void {
  const swallow = (event: Event) => {
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  const look = (event: Event) => {
    if (event instanceof KeyboardEvent && event.repeat) swallow(event);
    else if (!(event instanceof PointerEvent) || event.isPrimary) end(); // A second finger is no new press.
  };
  const end = () => {
    for (const kind of SET_OFF) removeEventListener(kind, swallow, true);
    for (const kind of ANEW) removeEventListener(kind, look, true);
  };
  for (const kind of SET_OFF) addEventListener(kind, swallow, { capture: true, passive: false });
  for (const kind of ANEW) addEventListener(kind, look, true);
}
