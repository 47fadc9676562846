import { effect, untracked } from '@preact/signals';
import { practisedIn } from '../core/figures/last-practised.ts';
import type { Summary } from '../core/ledger/summary.ts';
import { roundRuns } from './actions.ts';
import { idle } from './device/idle.ts';
import { newVersion, outOfDate } from './device/worker.ts';
import { loadAhead } from './parts/lazy.tsx';
import { history } from './practices.ts';

/*
 * What is made ready in idle moments, and never in a round. The screens that are not looked at yet:
 * they are there at once when they are, and are there at all where a newer version has taken the
 * files of this one away. And what figures keep with each practice: of many seasons it takes a phone
 * a while, which nobody should wait for.
 */

/** So many milliseconds of an idle moment are taken, for a touch that comes meanwhile. */
const SLICE_MS = 5;

/** Makes ready from now on whatever is not. */
export function workAhead(): void {
  effect(() => {
    void history.value;
    if (!roundRuns()) untracked(() => void makeReady());
  });
}

let until = 0;

async function isTime(): Promise<boolean> {
  if (performance.now() >= until) {
    await idle();
    until = performance.now() + SLICE_MS;
  }
  return !roundRuns();
}

/**
 * From the phone itself only, for what a network refuses once a browser may not ask for again; and not
 * once a newer version waits there, which takes away what is half on its way as it takes over.
 */
async function isTimeToLoad(): Promise<boolean> {
  if (!navigator.serviceWorker?.controller) return false;
  return (await isTime()) && !newVersion.value && !outOfDate.value;
}

let working = false;
const ready = new WeakSet<Summary>();

/** The newest of the packed practices that nothing is kept with yet. */
const notReady = () => history.value?.findLast((summary) => !ready.has(summary));

async function makeReady(): Promise<void> {
  if (working) return;
  working = true;
  try {
    await loadAhead(isTimeToLoad);
    for (let next = notReady(); next && (await isTime()); next = notReady()) {
      practisedIn(next);
      ready.add(next);
    }
  } finally {
    working = false;
  }
}
