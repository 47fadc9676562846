import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type Hold, heldPart, press, release } from './hold.ts';
import { swallowLift } from './swallow-lift.ts';
import './hold-button.css';

/**
 * A control that acts only once it was held for two seconds, by a finger, a mouse or a key. How
 * long it was held is seen; let go early, it starts again. It stands where children read, so how it
 * is worked is said elsewhere: to the coach, before the phone is handed over.
 */
export function HoldButton({
  children,
  onHeld,
}: {
  children: ComponentChildren;
  onHeld: () => void;
}) {
  const [hold, setHold] = useState<Hold>();
  const fill = useRef<HTMLSpanElement>(null);
  const held = useRef(onHeld);
  held.current = onHeld;

  const down = (by: string) => setHold((before) => press(before, by, performance.now()));
  const up = (by: string) => setHold((before) => release(before, by));

  useEffect(() => {
    if (!hold) return;
    let frame = 0;
    const look = () => {
      const part = heldPart(hold, performance.now());
      if (fill.current) fill.current.style.inlineSize = `${100 * part}%`;
      if (part < 1) {
        frame = requestAnimationFrame(look);
        return;
      }
      setHold(undefined);
      swallowLift();
      held.current();
    };
    look();
    return () => cancelAnimationFrame(frame);
  }, [hold]);

  return (
    <button
      type="button"
      class="button hold"
      onPointerDown={(event) => {
        if (event.button === 0) down(`pointer ${event.pointerId}`);
      }}
      onPointerUp={(event) => up(`pointer ${event.pointerId}`)}
      onPointerCancel={(event) => up(`pointer ${event.pointerId}`)}
      onPointerLeave={(event) => up(`pointer ${event.pointerId}`)}
      onKeyDown={(event) => {
        if (event.key === 'Enter' || event.key === ' ') {
          event.preventDefault();
          down(event.key);
        }
      }}
      onKeyUp={(event) => up(event.key)}
      onBlur={() => setHold(undefined)}
      onContextMenu={(event) => event.preventDefault()}
    >
      {hold && <span class="hold-fill" ref={fill} />}
      <span class="hold-words">{children}</span>
    </button>
  );
}
