import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { afterFrame } from '../parts/after-frame.ts';

/** How long a tile shows that it was struck. */
const STRUCK_MS = 120;

/**
 * What makes a tile answer at once. A touch is sent to the disk and writes the new number into one text
 * node, nothing else: what is folded, drawn and sounded of it comes once that frame is seen.
 *
 * @param sets what the ledger holds
 * @param countsNow whether a stroke of this moment is a set without anybody's decision; after the horn it is not
 */
export function useStrike(
  sets: number,
  countsNow: () => boolean,
): {
  /** The number, a stroke ahead of the ledger for as long as a frame. */
  shown: ReadonlySignal<number>;
  struck: boolean;
  /** @param show what shows the stroke everywhere else */
  strike: (show: () => void) => void;
} {
  const shown = useSignal(sets);
  const ahead = useRef(0);
  const [struck, setStruck] = useState(0);
  useLayoutEffect(() => {
    shown.value = sets + ahead.current;
  });
  useEffect(() => {
    if (struck === 0) return;
    const clear = setTimeout(() => setStruck(0), STRUCK_MS);
    return () => clearTimeout(clear);
  }, [struck]);
  const strike = (show: () => void) => {
    const counts = countsNow();
    if (counts) {
      ahead.current += 1;
      shown.value += 1;
    }
    afterFrame(() => {
      if (counts) ahead.current -= 1;
      setStruck((before) => before + 1);
      show();
    });
  };
  return { shown, struck: struck > 0, strike };
}
