import { useEffect, useRef, useState } from 'preact/hooks';
import { type Clock, EXTENSION_SECONDS, isOver, isPaused, secondsLeft } from '../../core/clock.ts';
import type { OpenRound } from '../../core/practice.ts';
import { type Sign, signPassed } from '../../core/signs.ts';
import { extend, press } from '../actions.ts';
import { now } from '../device/clock.ts';
import { hush, scheduleSigns, unlockSound } from '../device/sound.ts';
import { buzz } from '../device/vibrate.ts';
import { maySleep } from '../device/wake.ts';
import { trouble } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { Presence } from '../parts/presence.tsx';
import { go } from '../route.ts';
import { words } from '../words/words.ts';
import { Tiles } from './tiles.tsx';
import './running-round.css';

/** How often the clock is looked at; what is shown never runs further behind than this. */
const LOOK_MS = 100;
/** How long a sign stays on the screen. */
const SIGN_MS = 900;

/** The screen that must be right: the clock, and one tile a pair. */
export function RunningRound({ round, clock }: { round: OpenRound; clock: Clock }) {
  const t = words.value.court;
  const [choosing, setChoosing] = useState(false);
  const { digits, sign, over } = useClock(clock);
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
      {trouble.value && <Notice as="fault">{words.value.trouble[trouble.value]}</Notice>}
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
  const pause = () => {
    press('clock-paused', round);
    hush();
  };
  const resume = () => {
    unlockSound();
    press('clock-resumed', round);
    scheduleSigns(secondsLeft(clock, now()));
  };
  const more = () => {
    extend(round, EXTENSION_SECONDS);
    if (!isPaused(clock)) scheduleSigns(secondsLeft(clock, now()) + EXTENSION_SECONDS);
  };
  const stop = () => {
    if (!sure) {
      setSure(true);
      setTimeout(() => setSure(false), 3_000);
      return;
    }
    press('clock-stopped', round);
    hush();
    maySleep();
  };
  return (
    <div class="running-controls">
      {isPaused(clock) ? (
        <Button onClick={resume}>{t.resume}</Button>
      ) : (
        <Button onClick={pause}>{t.pause}</Button>
      )}
      <Button aria-label={t.moreLabel} onClick={more}>
        {t.more}
      </Button>
      <Button onClick={stop} class={sure ? 'running-sure' : ''}>
        {sure ? t.stopSure : t.stop}
      </Button>
    </div>
  );
}

/** Writes the time left to one text node, and tells of signs and of the end as they come. */
function useClock(clock: Clock) {
  const digits = useRef<HTMLSpanElement>(null);
  const [sign, setSign] = useState<Sign>();
  const [over, setOver] = useState(() => isOver(clock, now()));
  useEffect(() => {
    let before = secondsLeft(clock, now());
    let clear: ReturnType<typeof setTimeout> | undefined;
    const look = () => {
      const left = secondsLeft(clock, now());
      if (digits.current) digits.current.textContent = words.value.clock(left);
      const passed = signPassed(before, left);
      before = left;
      if (passed && clock.stopped === undefined) {
        setSign(passed);
        buzz(passed);
        clearTimeout(clear);
        clear = setTimeout(() => setSign(undefined), SIGN_MS);
      }
      if (passed === 'horn') maySleep();
      setOver(isOver(clock, now()));
    };
    look();
    const looking = setInterval(look, LOOK_MS);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(looking);
      clearTimeout(clear);
      document.removeEventListener('visibilitychange', look);
    };
  }, [clock]);
  return { digits, sign, over };
}
