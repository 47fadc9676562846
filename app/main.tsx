import { effect, untracked } from '@preact/signals';
import { render } from 'preact';
import { currentRound, roundRuns } from './actions.ts';
import { App } from './app.tsx';
import { noteJump, noteStoredJump } from './court/clock-jump.ts';
import { onJump, watchClock } from './device/clock.ts';
import { database } from './device/database.ts';
import { listenForInstall } from './device/install.ts';
import { askToPersist } from './device/persist.ts';
import { prefs } from './device/prefs.ts';
import { leads } from './device/windows.ts';
import { followWorker, outOfDate, registerWorker } from './device/worker.ts';
import { isRead, openLedger, unsaved } from './ledger.ts';
import {
  history,
  lookOver,
  openPractice,
  packPast,
  practice,
  readHistory,
  startPacking,
} from './practices.ts';
import { replace, route } from './route.ts';
import { loadWords } from './words/words.ts';
import './style.css';

void start();

/**
 * Start-up, in the order in which it happens. Nothing is awaited while this file is evaluated: a
 * language's own file shares code with this one, and each would wait for the other for ever.
 */
async function start(): Promise<void> {
  listenForInstall();
  followWorker();
  followTheme();
  await Promise.all([loadWords(), openLedger(database)]);
  followClock();
  returnToRound();
  render(<App />, document.getElementById('app') as HTMLElement);
  registerWorker().catch(() => {}); // Not to be had: the app works with a network.
  renew();
  keepLedger();
  // What opening does not need comes once the screen stands.
  setTimeout(tidy, 300);
}

function followTheme(): void {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const put = () => {
    const { theme } = prefs.value;
    document.documentElement.dataset.theme =
      theme === 'dark' || (theme === 'phone' && dark.matches) ? 'dark' : 'light';
  };
  dark.addEventListener('change', put);
  effect(put);
}

/** A phone whose clock is set in mid-round, or was set back while the app was gone, is found out. */
function followClock(): void {
  onJump(noteJump);
  watchClock();
  effect(() => {
    if (isRead.value) untracked(noteStoredJump);
  });
}

/** After a reload or a kill in mid-round the app opens on that round, also where its horn has gone since. */
function returnToRound(): void {
  if (currentRound(openPractice.value)?.clock && route.value.length === 0) replace('court');
}

/** How often a window that another one has outdated looks whether it may start anew. */
const RENEW_MS = 500;

/** A newer version in charge starts this page anew, but never in a round and with nothing unsaved. */
function renew(): void {
  effect(() => {
    if (!outOfDate.value) return;
    const looking = setInterval(() => {
      if (roundRuns() || unsaved.value.size > 0) return;
      clearInterval(looking);
      location.reload();
    }, RENEW_MS);
  });
}

/** Once there is a practice to lose, the browser is asked to keep it; and nobody leaves unsaved marks by mistake. */
function keepLedger(): void {
  let asked = prefs.value.demo;
  effect(() => {
    const { closed, rounds } = practice.value ?? {};
    const practised = closed || rounds?.some(({ settled }) => settled);
    if (asked || !(practised || (history.value?.length ?? 0) > 0)) return;
    asked = true;
    void askToPersist();
  });
  addEventListener('beforeunload', (event) => {
    if (unsaved.value.size > 0) event.preventDefault();
  });
}

/** Whether this phone meets others at a place of their club (see club/memory.ts). */
function sharesPlace(): boolean {
  try {
    return !prefs.value.demo && localStorage.getItem('rally-ledger-place') !== null;
  } catch {
    return false;
  }
}

/**
 * The window that leads packs what is past and looks after the packs; figures get their history,
 * and what takes long to work out begins.
 */
function tidy(): void {
  startPacking();
  effect(() => {
    if (!leads.value) return;
    untracked(
      () =>
        void packPast()
          .then(() => (roundRuns() ? undefined : lookOver())) // It takes a slow phone a while.
          .catch(() => {}),
    );
  });
  void readHistory()
    .then(() => Promise.all([import('./estimates.ts'), import('./ahead.ts')]))
    .then(([{ startEstimating }, { workAhead }]) => {
      startEstimating();
      workAhead();
    })
    .catch(() => {});
  if (sharesPlace()) {
    import('./club/meet.ts').then(({ keepMeeting }) => keepMeeting()).catch(() => {});
  }
}
