import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Terms } from '../../core/drill/drill.ts';
import type { OpenRound } from '../../core/ledger/practice.ts';
import type { Clock } from '../../core/round/clock.ts';
import type { Pair } from '../../core/round/pair.ts';
import { currentRound, obstacle } from '../actions.ts';
import { playingPairs } from '../coming-round.ts';
import { roundState } from '../court/round-state.ts';
import { turnLeft } from '../court/turn.ts';
import { useClock } from '../court/use-clock.ts';
import { Button } from '../parts/button.tsx';
import { Letter } from '../parts/letter.tsx';
import { PairNames } from '../parts/pair-names.tsx';
import { useAwake } from '../parts/use-awake.ts';
import { openPractice } from '../practices.ts';
import { go } from '../route.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import './wall.css';

/**
 * What a hall looks at: clock, pairs and counts over the whole of a second screen. It follows the
 * ledger like every screen, and nothing on it counts.
 */
export function WallScreen() {
  useAwake(true);
  const practice = openPractice.value;
  const round = currentRound(practice);
  if (!round) {
    return (
      <Wall title={words.value.wall.title} state="">
        <p class="wall-waits">{words.value.wall.waits}</p>
      </Wall>
    );
  }
  if (round.clock) return <Played key={round.id} round={round} clock={round.clock} />;
  return (
    <Wall
      title={drillName(round.terms)}
      clock={words.value.clock(round.seconds)}
      state={words.value.court.before}
    >
      <Pairs pairs={obstacle(practice) === undefined ? playingPairs() : []} terms={round.terms} />
    </Wall>
  );
}

function Played({ round, clock }: { round: OpenRound; clock: Clock }) {
  const { digits, sign, over, turned } = useClock(clock, undefined, turnLeft(round, clock));
  return (
    <Wall
      title={drillName(round.terms)}
      clock={<span ref={digits} />}
      state={roundState(clock, over, sign)}
      sign={sign}
    >
      <Pairs
        pairs={round.tallies.map(({ pair }) => pair)}
        terms={round.terms}
        turned={turned}
        sets={new Map(round.tallies.map(({ pair, sets }) => [pair.letter, sets]))}
      />
    </Wall>
  );
}

function Pairs({
  pairs,
  terms,
  turned = false,
  sets,
}: {
  pairs: readonly Pair[];
  terms: Terms;
  turned?: boolean;
  sets?: ReadonlyMap<string, number>;
}) {
  const t = words.value.court;
  return (
    <ul class="wall-pairs" data-pairs={pairs.length} data-waits={sets === undefined || undefined}>
      {pairs.map(({ letter, players }) => {
        const count = sets?.get(letter);
        return (
          <li key={letter} class="wall-pair">
            <div class="wall-inside">
              <Letter letter={letter} />
              <span class="wall-names">
                <PairNames players={players} terms={terms} turned={turned} />
              </span>
              {count !== undefined && (
                <b class="wall-sets number">
                  {words.value.number(count)}
                  <span class="unseen"> {t.sets(count)}</span>
                </b>
              )}
            </div>
          </li>
        );
      })}
    </ul>
  );
}

function Wall({
  title,
  clock,
  state,
  sign,
  children,
}: {
  title: string;
  clock?: ComponentChildren;
  state: string;
  sign?: string | undefined;
  children: ComponentChildren;
}) {
  const t = words.value;
  return (
    <main class="wall" data-sign={sign}>
      <header class="wall-head">
        {clock !== undefined && (
          <p class="wall-clock number" role="timer" aria-label={t.court.left}>
            {clock}
          </p>
        )}
        <div class="wall-told">
          <h1 class="wall-title">{title}</h1>
          <p class="wall-state" role="status">
            {state}
          </p>
        </div>
        <Ways />
      </header>
      {children}
    </main>
  );
}

/** Small beside the rest: for whoever sets the screen up. On a full screen nothing is in the way. */
function Ways() {
  const t = words.value.wall;
  const [full, setFull] = useState(document.fullscreenElement !== null);
  useEffect(() => {
    const look = () => setFull(document.fullscreenElement !== null);
    document.addEventListener('fullscreenchange', look);
    return () => document.removeEventListener('fullscreenchange', look);
  }, []);
  if (full) return null;
  // Refused, it stays as large as its window.
  const fill = () => document.documentElement.requestFullscreen().catch(() => {});
  return (
    <div class="wall-ways">
      {document.fullscreenEnabled && <Button onClick={() => void fill()}>{t.fullScreen}</Button>}
      <Button onClick={() => go('court')}>{t.leave}</Button>
    </div>
  );
}
