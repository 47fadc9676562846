import { useEffect, useState } from 'preact/hooks';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { type Clock, isOver, isPaused, liveSeconds } from '../../core/round/clock.ts';
import { roundsLeft, turnRoles } from '../actions.ts';
import { now } from '../device/clock.ts';
import { prefs } from '../device/prefs.ts';
import { leads } from '../device/windows.ts';
import { Button } from '../parts/button.tsx';
import { RolesLine } from '../parts/roles-line.tsx';
import { Trouble } from '../parts/trouble.tsx';
import { useAwake } from '../parts/use-awake.ts';
import { openPractice } from '../practices.ts';
import { go } from '../route.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import { attend } from './attend.ts';
import { CallIn } from './call-in.tsx';
import { CalledPairs } from './called-pairs.tsx';
import { giveMoreTime, pauseRound, resumeRound, stopRound } from './clock-deeds.ts';
import { MidRound } from './mid-round.tsx';
import { marksToDecide, settleAndGoOn } from './onward.ts';
import { OtherScreens } from './other-screens.tsx';
import { roundState } from './round-state.ts';
import { countOn, shownTallies, sidesOf, takeBackOn } from './sides.ts';
import { SpotCheck } from './spot-check.tsx';
import { Tiles } from './tiles.tsx';
import { turnLeft } from './turn.ts';
import { useClock } from './use-clock.ts';
import { leavesFocus, useKeys } from './use-keys.ts';
import { useTouched } from './use-touched.ts';
import './running-round.css';

/** The screen that must be right: the clock, and one tile a pair. */
export function RunningRound({ round, clock }: { round: OpenRound; clock: Clock }) {
  const t = words.value.court;
  const [sheet, setSheet] = useState<'here' | 'screens'>();
  const [allTiles, setAllTiles] = useState(false);
  const { digits, sign, over, turned } = useClock(clock, attend, turnLeft(round, clock));
  useTurn(round, turned);
  const paused = isPaused(clock);
  const tapped = tappedIn(round);
  const tiled = allTiles ? undefined : tapped;
  const calls = round.called.length > 0;
  useAwake(!over);
  useTouched();
  useKeys(
    shownTallies(round, tiled).flatMap((tally) => sidesOf(round, tally)),
    (deed) => {
      if (deed.do === 'count') countOn(round, deed.side);
      else if (deed.do === 'take-back') takeBackOn(round, deed.side);
      else if (paused) resumeRound(round);
      else if (!over) pauseRound(round);
    },
  );
  const toggle = (which: 'here' | 'screens') => ({
    'aria-expanded': sheet === which,
    onClick: () => setSheet(sheet === which ? undefined : which),
  });
  return (
    <main
      class="running"
      data-sign={sign}
      data-over={over || undefined}
      data-hand={prefs.value.hand}
      {...leavesFocus}
    >
      <h1 class="unseen">{drillName(round.terms)}</h1>
      <header class="running-head">
        <p class="running-clock number" role="timer" aria-label={t.left}>
          <span ref={digits} />
        </p>
        <div class="running-state">
          <p role="status">{roundState(clock, over, sign)}</p>
          {paused ? (
            <Button as="quiet" {...toggle('screens')}>
              {t.otherScreens}
            </Button>
          ) : (
            <Button as="quiet" {...toggle('here')}>
              {t.here}
            </Button>
          )}
        </div>
        {!over ? <Controls round={round} clock={clock} /> : !calls && <Over round={round} />}
      </header>
      <Trouble />
      <RolesLine terms={round.terms} />
      {(calls ? !over : round.checks > 0) && <SpotCheck round={round} clock={clock} />}
      {over && calls ? (
        <CallIn round={round} />
      ) : (
        <>
          {(allTiles || tapped.length > 0) && (
            <Tiles round={round} clock={clock} turned={turned} only={tiled} />
          )}
          {calls && (
            <>
              {!allTiles && (
                <CalledPairs round={round} turned={turned} whole={tapped.length === 0} />
              )}
              <Button as="quiet" onClick={() => setAllTiles(!allTiles)}>
                {allTiles ? t.calledOnly : t.allTiles}
              </Button>
            </>
          )}
        </>
      )}
      {sheet && (
        <div class="running-sheet">
          {sheet === 'here' ? (
            <MidRound round={round} />
          ) : (
            <>
              <Button onClick={() => go()}>{t.toToday}</Button>
              <Button onClick={() => go('tempo', round.terms.drill)}>{t.tempoCheck}</Button>
              <OtherScreens pairs={round.tallies.map(({ pair }) => pair)} />
            </>
          )}
          <Button onClick={() => setSheet(undefined)}>{words.value.done}</Button>
        </div>
      )}
    </main>
  );
}

/** The pairs that are counted by taps. */
const tappedIn = ({ tallies, called }: OpenRound): string[] =>
  tallies.map(({ pair }) => pair.letter).filter((letter) => !called.includes(letter));

/** Says in the ledger when the roles turned, once they have; the window that leads says it. */
function useTurn(round: OpenRound, turned: boolean): void {
  useEffect(() => {
    if (turned && !round.turnSaid && leads.value && round.clock && !isOver(round.clock, now())) {
      turnRoles(round, liveSeconds(round.clock, now()));
    }
  }, [turned, round.id]);
}

/** After the horn: a round in which nothing is in doubt is settled by one touch. */
function Over({ round }: { round: OpenRound }) {
  const t = words.value;
  const settle = (
    <Button
      as={marksToDecide(round) > 0 ? 'main' : undefined}
      onClick={() => go('settle', round.id)}
    >
      {t.court.settle}
    </Button>
  );
  if (marksToDecide(round) > 0) return settle;
  return (
    <div class="running-over">
      <Button as="main" onClick={() => settleAndGoOn(round)}>
        {roundsLeft(openPractice.value) > 0 ? t.settle.next : t.settle.finish}
      </Button>
      {settle}
    </div>
  );
}

function Controls({ round, clock }: { round: OpenRound; clock: Clock }) {
  const t = words.value.court;
  const [sure, setSure] = useState(false);
  const stop = () => {
    if (!sure) {
      setSure(true);
      setTimeout(() => setSure(false), 3_000);
      return;
    }
    stopRound(round);
  };
  const controls = [
    isPaused(clock) ? (
      <Button key="run" onClick={() => resumeRound(round)}>
        {t.resume}
      </Button>
    ) : (
      <Button key="run" onClick={() => pauseRound(round)}>
        {t.pause}
      </Button>
    ),
    <Button key="more" aria-label={t.moreLabel} onClick={() => giveMoreTime(round)}>
      {t.more}
    </Button>,
    <Button key="stop" onClick={stop} class={sure ? 'running-sure' : ''}>
      {sure ? t.stopSure : t.stop}
    </Button>,
  ];
  return (
    <div class="running-controls">
      {prefs.value.hand === 'left' ? controls.toReversed() : controls}
    </div>
  );
}
