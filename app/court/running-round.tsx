import { useEffect, useState } from 'preact/hooks';
import { type Clock, isPaused } from '../../core/clock.ts';
import type { OpenRound } from '../../core/practice.ts';
import type { Sign } from '../../core/signs.ts';
import { unlockSound } from '../device/sound.ts';
import { Button } from '../parts/button.tsx';
import { Presence } from '../parts/presence.tsx';
import { Trouble } from '../parts/trouble.tsx';
import { go } from '../route.ts';
import { words } from '../words/words.ts';
import { attend } from './attend.ts';
import { giveMoreTime, pauseRound, resumeRound, stopRound } from './clock-deeds.ts';
import { Tiles } from './tiles.tsx';
import { useClock } from './use-clock.ts';
import './running-round.css';

/** The screen that must be right: the clock, and one tile a pair. */
export function RunningRound({ round, clock }: { round: OpenRound; clock: Clock }) {
  const t = words.value.court;
  const [choosing, setChoosing] = useState(false);
  const { digits, sign, over } = useClock(clock, attend);
  useEffect(() => {
    // After a reload, or where the phone took the sound away, the next touch gives it back.
    addEventListener('click', unlockSound);
    return () => removeEventListener('click', unlockSound);
  }, []);
  return (
    <main class="running" data-sign={sign} data-over={over || undefined}>
      <header class="running-head">
        <p class="running-clock number" role="timer" aria-label={t.left}>
          <span ref={digits} />
        </p>
        <div class="running-state">
          <p role="status">{stateOf(clock, over, sign)}</p>
          {isPaused(clock) ? (
            <Button as="quiet" onClick={() => go()}>
              {t.toToday}
            </Button>
          ) : (
            <Button as="quiet" aria-expanded={choosing} onClick={() => setChoosing(!choosing)}>
              {t.here}
            </Button>
          )}
        </div>
        {over ? (
          <Button as="main" onClick={() => go('settle', round.id)}>
            {t.settle}
          </Button>
        ) : (
          <Controls round={round} clock={clock} />
        )}
      </header>
      <Trouble />
      <Tiles round={round} clock={clock} />
      {choosing && (
        <div class="running-here">
          <Presence />
          <p class="small">{t.hereLater}</p>
          <Button onClick={() => setChoosing(false)}>{words.value.done}</Button>
        </div>
      )}
    </main>
  );
}

function stateOf(clock: Clock, over: boolean, sign: Sign | undefined): string {
  const t = words.value.court;
  if (clock.stopped !== undefined) return t.stopped;
  if (over) return t.over;
  if (isPaused(clock)) return t.paused;
  return sign === 'half-minute' ? t.sign30 : '';
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
  return (
    <div class="running-controls">
      {isPaused(clock) ? (
        <Button onClick={() => resumeRound(round)}>{t.resume}</Button>
      ) : (
        <Button onClick={() => pauseRound(round)}>{t.pause}</Button>
      )}
      <Button aria-label={t.moreLabel} onClick={() => giveMoreTime(round)}>
        {t.more}
      </Button>
      <Button onClick={stop} class={sure ? 'running-sure' : ''}>
        {sure ? t.stopSure : t.stop}
      </Button>
    </div>
  );
}
