import { useEffect } from 'preact/hooks';
import { maySleep, stayAwake } from '../device/wake.ts';

/** Keeps the screen on as long as the screen that says so is shown and wants it. */
export function useAwake(wanted: boolean): void {
  useEffect(() => {
    if (!wanted) return;
    void stayAwake();
    return maySleep;
  }, [wanted]);
}
