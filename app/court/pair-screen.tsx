import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { type Clock, isPaused } from '../../core/round/clock.ts';
import { currentRound, obstacle } from '../actions.ts';
import { playingPairs } from '../coming-round.ts';
import { HoldButton } from '../parts/hold-button.tsx';
import { Letter } from '../parts/letter.tsx';
import { PairNames } from '../parts/pair-names.tsx';
import { Trouble } from '../parts/trouble.tsx';
import { useAwake } from '../parts/use-awake.ts';
import { openPractice } from '../practices.ts';
import { replace, stay } from '../route.ts';
import { words } from '../words/words.ts';
import { attend } from './attend.ts';
import { resumeRound, startRound } from './clock-deeds.ts';
import { roundState } from './round-state.ts';
import { countOn, shownTallies, sidesOf, takeBackOn } from './sides.ts';
import { Tiles } from './tiles.tsx';
import { turnLeft } from './turn.ts';
import { useClock } from './use-clock.ts';
import { leavesFocus, useKeys } from './use-keys.ts';
import { useTouched } from './use-touched.ts';
import './running-round.css';
import './pair-screen.css';

/**
 * One pair's own tile over the whole phone, for a phone at the fence on which the pair counts
 * itself. It counts for that pair only, and what belongs to the coach wants a press of two seconds.
 */
export function PairScreen({ letter }: { letter: string }) {
  useAwake(true);
  useTouched();
  useEffect(stay, [letter]);
  const round = currentRound(openPractice.value);
  return round?.clock ? (
    <Playing key={round.id} letter={letter} round={round} clock={round.clock} />
  ) : (
    <Waiting letter={letter} round={round} />
  );
}

function Playing({ letter, round, clock }: { letter: string; round: OpenRound; clock: Clock }) {
  const { digits, sign, over, turned } = useClock(clock, attend, turnLeft(round, clock));
  const tallies = shownTallies(round, [letter]);
  useKeys(
    tallies.flatMap((tally) => sidesOf(round, tally)),
    (deed) => {
      if (deed.do === 'count') countOn(round, deed.side);
      else if (deed.do === 'take-back') takeBackOn(round, deed.side);
    },
  );
  return (
    <Frame
      letter={letter}
      sign={sign}
      over={over}
      clock={<span ref={digits} />}
      state={roundState(clock, over, sign)}
      goOn={
        isPaused(clock) && (
          <HoldButton onHeld={() => resumeRound(round)}>{words.value.court.resume}</HoldButton>
        )
      }
    >
      {tallies.length > 0 ? (
        <Tiles round={round} clock={clock} turned={turned} only={[letter]} />
      ) : (
        <p class="pair-said">{words.value.pair.notIn(letter)}</p>
      )}
    </Frame>
  );
}

function Waiting({ letter, round }: { letter: string; round: OpenRound | undefined }) {
  const t = words.value.pair;
  const canStart = obstacle(openPractice.value) === undefined;
  const own = canStart ? playingPairs().find((pair) => pair.letter === letter) : undefined;
  return (
    <Frame
      letter={letter}
      clock={round && words.value.clock(round.seconds)}
      state={round ? t.waits : ''}
      goOn={
        round &&
        own && <HoldButton onHeld={() => startRound(round)}>{words.value.court.start}</HoldButton>
      }
    >
      <div class="pair-said">
        {!round ? (
          <p>{t.nothing}</p>
        ) : own ? (
          <>
            <Letter letter={letter} />
            <p class="pair-list break">
              <PairNames players={own.players} terms={round.terms} />
            </p>
          </>
        ) : (
          <p>{t.notIn(letter)}</p>
        )}
      </div>
    </Frame>
  );
}

function Frame({
  letter,
  clock,
  state,
  sign,
  over,
  goOn,
  children,
}: {
  letter: string;
  clock: ComponentChildren;
  state: string;
  sign?: string | undefined;
  over?: boolean;
  goOn: ComponentChildren;
  children: ComponentChildren;
}) {
  const t = words.value;
  return (
    <main
      class="running pair-screen"
      data-sign={sign}
      data-over={over || undefined}
      {...leavesFocus}
    >
      <h1 class="unseen">{t.pair.title(letter)}</h1>
      <header class="running-head">
        <p class="running-clock number" role="timer" aria-label={t.court.left}>
          {clock}
        </p>
        <div class="running-state">
          <p role="status">{state}</p>
        </div>
      </header>
      <Trouble />
      {children}
      <footer class="pair-coach">
        {goOn}
        <HoldButton onHeld={() => replace('court')}>{t.forCoach}</HoldButton>
      </footer>
    </main>
  );
}
