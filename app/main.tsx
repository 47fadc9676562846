import { effect } from '@preact/signals';
import { render } from 'preact';
import { currentRound } from './actions.ts';
import { App } from './app.tsx';
import { checkClock } from './device/clock.ts';
import { listenForInstall } from './device/install.ts';
import { askToKeep } from './device/keep.ts';
import { prefs } from './device/prefs.ts';
import { registerWorker } from './device/worker.ts';
import { history, openLedger, openPractice, packClosed, practice, readHistory } from './ledger.ts';
import { replace, route } from './route.ts';
import { DEMO_DATABASE } from './settings/demo.ts';
import { loadWords } from './words/words.ts';
import './style.css';

/** The coach's own ledger and the invented one never share a database. */
const database = prefs.value.demo ? DEMO_DATABASE : 'rally-ledger';

// Start-up, in the order in which it happens.
listenForInstall();
followTheme();
await Promise.all([loadWords(), openLedger(database)]);
returnToRound();
render(<App />, document.getElementById('app') as HTMLElement);
registerWorker();
watchClock();
keepLedger();
// What opening does not need comes once the screen stands.
setTimeout(() => void packClosed().then(readHistory), 300);

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

/** After a reload or a kill in mid-round the app opens on that round, also where its horn has gone since. */
function returnToRound(): void {
  if (currentRound(openPractice.value)?.clock && route.value.length === 0) replace('court');
}

/** Once there is a practice to lose, the browser is asked to keep it. */
function keepLedger(): void {
  let asked = prefs.value.demo;
  effect(() => {
    const practised = practice.value?.closed || (history.value?.length ?? 0) > 0;
    if (asked || !practised) return;
    asked = true;
    void askToKeep();
  });
}

function watchClock(): void {
  setInterval(checkClock, 1_000);
  document.addEventListener('visibilitychange', checkClock);
  addEventListener('pageshow', checkClock);
}
