import { useEffect } from 'preact/hooks';
import { isPaused } from '../core/round/clock.ts';
import { currentRound, isRunning } from './actions.ts';
import { CourtScreen } from './court/court-screen.tsx';
import { SettleScreen } from './court/settle-screen.tsx';
import { lazyScreen } from './parts/lazy.tsx';
import { openPractice, putAway } from './practices.ts';
import { replace, route } from './route.ts';
import { TodayScreen } from './today/today-screen.tsx';

/*
 * The screens of a practice come with the app; the others when they are first looked at, or in an
 * idle moment before. A round loads nothing: it must be counted whatever became of the files the app
 * came with.
 */
const Squad = lazyScreen(() => import('./squad/squad-screen.tsx').then((file) => file.SquadScreen));
const Players = lazyScreen(() =>
  import('./player/players-screen.tsx').then((file) => file.PlayersScreen),
);
const Player = lazyScreen(() =>
  import('./player/player-screen.tsx').then((file) => file.PlayerScreen),
);
const Week = lazyScreen(() => import('./week/week-screen.tsx').then((file) => file.WeekScreen));
const Practice = lazyScreen(() =>
  import('./practice/practice-screen.tsx').then((file) => file.PracticeScreen),
);
const Tempo = lazyScreen(() => import('./tempo/tempo-screen.tsx').then((file) => file.TempoScreen));
const Settings = lazyScreen(() =>
  import('./settings/settings-screen.tsx').then((file) => file.SettingsScreen),
);
const Pair = lazyScreen(() => import('./court/pair-screen.tsx').then((file) => file.PairScreen));
const Wall = lazyScreen(() => import('./wall/wall-screen.tsx').then((file) => file.WallScreen));
const Block = lazyScreen(() => import('./today/block-screen.tsx').then((file) => file.BlockScreen));
const Coverage = lazyScreen(() =>
  import('./coverage/coverage-screen.tsx').then((file) => file.CoverageScreen),
);
const Propose = lazyScreen(() =>
  import('./propose/propose-screen.tsx').then((file) => file.ProposeScreen),
);
const Sheet = lazyScreen(() => import('./sheet/sheet-screen.tsx').then((file) => file.SheetScreen));
const Help = lazyScreen(() => import('./help/help-screen.tsx').then((file) => file.HelpScreen));
const Drill = lazyScreen(() => import('./drill/drill-screen.tsx').then((file) => file.DrillScreen));
const Handover = lazyScreen(
  () => import('./handover/handover-screen.tsx').then((file) => file.HandoverScreen),
  false,
);
const LookingBack = lazyScreen(() => import('./looking-back.tsx').then((file) => file.LookingBack));

/** The screens on which a running round is seen. */
const COURT_PLACES = ['court', 'pair', 'wall'];

/** The screens on which a practice that is over is put right. */
const PAST_PLACES = ['practice', 'settle'];

export function App() {
  const [place = '', which] = route.value;
  const isPutRight = PAST_PLACES.includes(place);
  useEffect(() => {
    if (!isPutRight) putAway();
  }, [isPutRight]);
  const stays = mustStayOnCourt();
  const elsewhere = !COURT_PLACES.includes(place);
  useEffect(() => {
    if (stays && elsewhere) replace('court');
  }, [stays, elsewhere]);
  if (stays && elsewhere) return <CourtScreen />;
  switch (place) {
    case 'court':
      return <CourtScreen />;
    case 'pair':
      return <Pair letter={which ?? ''} />;
    case 'wall':
      return <Wall />;
    case 'settle':
      return <SettleScreen round={which} />;
    case 'block':
      return <Block />;
    case 'squad':
      return <Squad />;
    case 'players':
      return <Players />;
    case 'player':
      return <Player player={which ?? ''} />;
    case 'week':
      return <Week week={which} />;
    case 'practice':
      return <Practice id={which ?? ''} />;
    case 'tempo':
      return <Tempo drill={which ?? ''} />;
    case 'coverage':
      return <Coverage player={which} />;
    case 'propose':
      return <Propose />;
    case 'sheet':
      return <Sheet />;
    case 'drill':
      return <Drill drill={which} />;
    case 'handover':
      return <Handover what={which} />;
    case 'help':
      return <Help />;
    case 'settings':
      return <Settings />;
    default:
      return route.value.length === 0 ? <TodayScreen /> : <LookingBack />;
  }
}

/** While the clock runs no gesture and no address leads away from the court; a pause lets go. */
function mustStayOnCourt(): boolean {
  const round = currentRound(openPractice.value);
  return isRunning(round) && round?.clock !== undefined && !isPaused(round.clock);
}
