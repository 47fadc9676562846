import { signal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { prefs } from '../device/prefs.ts';
import { type Deed, deedOf } from './keys.ts';
import type { Side } from './sides.ts';

/** Whether a key has done something at the court: from then on tiles show theirs. */
export const keysUsed = signal(false);

const FIELDS = 'input:not([type=checkbox], [type=radio]), textarea, select, [contenteditable]';
const CONTROLS = 'button, a, input, summary';

/** Lets a keyboard or a clicker work these tiles and the clock, whatever has the focus. */
export function useKeys(sides: readonly Side[], act: (deed: Deed) => void): void {
  const latest = useRef({ sides, act });
  latest.current = { sides, act };
  // Before the screen is seen: whoever sees it may press.
  useLayoutEffect(() => {
    const down = (event: KeyboardEvent) => {
      if (!prefs.value.keys || event.defaultPrevented || isIn(FIELDS, event)) return;
      const deed = deedOf(event, latest.current.sides);
      // On a control that was gone to by keyboard, the space bar works that control.
      if (!deed || (deed.do === 'clock' && isIn(CONTROLS, event))) return;
      event.preventDefault();
      keysUsed.value = true;
      latest.current.act(deed);
    };
    addEventListener('keydown', down);
    return () => removeEventListener('keydown', down);
  }, []);
}

const isIn = (selector: string, { target }: Event): boolean =>
  target instanceof Element && target.closest(selector) !== null;

/**
 * For a screen whose space bar runs the clock: a finger or a mouse leaves the focus where it is, or
 * the space bar would work whatever was touched last.
 */
export const leavesFocus = {
  onMouseDown: (event: Event) => {
    if (!isIn(FIELDS, event)) event.preventDefault();
  },
};
