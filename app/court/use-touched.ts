import { useEffect } from 'preact/hooks';
import { unlockSound } from '../device/sound.ts';
import { takeLead } from '../device/windows.ts';

/**
 * Lets the window that a person touches give the signs. After a reload, or where the phone took the
 * sound away, the next touch or key gives it back.
 */
export function useTouched(): void {
  useEffect(() => {
    const touched = () => {
      unlockSound();
      takeLead();
    };
    addEventListener('click', touched);
    addEventListener('keydown', touched);
    return () => {
      removeEventListener('click', touched);
      removeEventListener('keydown', touched);
    };
  }, []);
}
