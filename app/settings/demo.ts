import { signal } from '@preact/signals';
import { addDays } from '../../core/calendar.ts';
import { foldPractice } from '../../core/ledger/practice.ts';
import { summarise } from '../../core/ledger/summary.ts';
import { now, today } from '../device/clock.ts';
import { DEMO_DATABASE } from '../device/database.ts';
import { setPrefs } from '../device/prefs.ts';
import { Store } from '../device/store.ts';
import { unsaved } from '../ledger.ts';
import { replace as goTo } from '../route.ts';

/** What there is to say of the demo while it comes or goes. */
export const demoState = signal<'coming' | 'unsaved' | 'failed' | 'stays' | undefined>(undefined);

/** Invents a season that ended yesterday, and shows it in place of the coach's own ledger. */
export async function startDemo(): Promise<void> {
  if (demoState.value === 'coming') return;
  if (unsaved.value.size > 0) {
    demoState.value = 'unsaved'; // They are held in this page only, and it is about to be left.
    return;
  }
  demoState.value = 'coming';
  try {
    const { DEMO_SEED, season } = await import('../../demo-data/season.ts');
    const { standing, practices } = season({
      seed: DEMO_SEED,
      lastDate: addDays(today(), -1),
    });
    const packed = practices.flatMap(({ entries }) => {
      const practice = foldPractice(entries);
      return practice ? [{ summary: summarise(practice, now()), entries }] : [];
    });
    const { replace } = await import('../device/take.ts');
    await replace(new Store(DEMO_DATABASE), standing, packed);
  } catch {
    demoState.value = 'failed';
    return;
  }
  show(true);
}

/** Removes the invented ledger and shows the coach's own again. */
export async function removeDemo(): Promise<void> {
  try {
    await new Store(DEMO_DATABASE).clear();
  } catch {
    demoState.value = 'stays';
    return;
  }
  show(false);
}

/** The ledger is opened at start-up, so the page starts anew, at Today. */
function show(demo: boolean): void {
  setPrefs({ demo });
  goTo();
  location.reload();
}
