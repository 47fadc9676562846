import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { words } from '../words/words.ts';
import { type Hold, heldPart, press, release } from './hold.ts';
import './hold-button.css';

/**
 * A control that acts only once it was held for two seconds, by a finger, a mouse or a key. How
 * long it was held is seen; let go early, it starts again.
 */
export function HoldButton({
  children,
  hint,
  onHeld,
}: {
  children: ComponentChildren;
  hint: string;
  onHeld: () => void;
}) {
  const t = words.value.hold;
  const told = useId();
  const [hold, setHold] = useState<Hold>();
  const [early, setEarly] = useState(false);
  const fill = useRef<HTMLSpanElement>(null);
  const held = useRef(onHeld);
  held.current = onHeld;

  const down = (by: string) => {
    setHold((before) => press(before, by, performance.now()));
  };
  const up = (by: string) => {
    if (hold?.by === by) setEarly(true);
    setHold((before) => release(before, by));
  };

  useEffect(() => {
    if (!hold) return;
    let frame = 0;
    const look = () => {
      const part = heldPart(hold, performance.now());
      if (fill.current) fill.current.style.inlineSize = `${100 * part}%`;
      if (part === 1) held.current();
      else frame = requestAnimationFrame(look);
    };
    look();
    return () => cancelAnimationFrame(frame);
  }, [hold]);

  return (
    <div class="stack">
      <button
        type="button"
        class="button hold"
        aria-describedby={told}
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
      <p id={told} class="small" role="status">
        {hold ? t.holding : early ? t.early : hint}
      </p>
    </div>
  );
}
