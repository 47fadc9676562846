import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { type Clock, isOver, secondsLeft } from '../../core/round/clock.ts';
import { type Sign, signPassed } from '../../core/round/signs.ts';
import { now } from '../device/clock.ts';
import { words } from '../words/words.ts';

/** How often the clock is looked at; what is shown never runs further behind than this. */
const LOOK_MS = 100;
/** How long a sign stays on the screen. */
const SIGN_MS = 900;

/** Somebody who follows the clock: told at each look, and once more with nothing as it ends. */
export type Follower = (
  look: { clock: Clock; left: number; turn: number | undefined; passed?: Sign } | undefined,
) => void;

/**
 * Writes the time left to one text node, and tells of signs and of the end as they come.
 *
 * @param follower must be the same function at every call
 * @param turn seconds left on the clock as roles turn; left out where they do not
 */
export function useClock(
  read: Clock,
  follower?: Follower,
  turn?: number,
): {
  digits: RefObject<HTMLSpanElement | null>;
  sign: Sign | undefined;
  over: boolean;
  turned: boolean;
} {
  const clock = useSame(read);
  const digits = useRef<HTMLSpanElement>(null);
  const [sign, setSign] = useState<Sign>();
  const [over, setOver] = useState(() => isOver(clock, now()));
  const hasTurned = (left: number) => turn !== undefined && left <= turn;
  const [turned, setTurned] = useState(() => hasTurned(secondsLeft(clock, now())));
  useEffect(() => {
    let before = secondsLeft(clock, now());
    let clear: ReturnType<typeof setTimeout> | undefined;
    const look = () => {
      const left = secondsLeft(clock, now());
      const text = words.value.clock(left);
      if (digits.current && digits.current.textContent !== text) digits.current.textContent = text;
      const passed = clock.stopped === undefined ? signPassed(before, left, turn) : undefined;
      before = left;
      if (passed) {
        setSign(passed);
        clearTimeout(clear);
        clear = setTimeout(() => setSign(undefined), SIGN_MS);
      }
      follower?.({ clock, left, turn, ...(passed && { passed }) });
      setOver(isOver(clock, now()));
      setTurned(hasTurned(left));
    };
    look();
    const looking = setInterval(look, LOOK_MS);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(looking);
      clearTimeout(clear);
      document.removeEventListener('visibilitychange', look);
      setSign(undefined);
      follower?.(undefined);
    };
  }, [clock, follower, turn]);
  return { digits, sign, over, turned };
}

/** Every mark folds the practice anew: a clock that stands as it stood is the same one. */
function useSame(clock: Clock): Clock {
  const same = useRef(clock);
  if (JSON.stringify(same.current) !== JSON.stringify(clock)) same.current = clock;
  return same.current;
}
