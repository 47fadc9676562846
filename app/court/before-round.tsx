import { useEffect, useState } from 'preact/hooks';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { plannedRounds } from '../../core/round/block.ts';
import { currentPlan, obstacle } from '../actions.ts';
import { comingRound, playingPairs, setRound } from '../coming-round.ts';
import { sleeps, tryToStayAwake } from '../device/wake.ts';
import { library } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { BlockCautions, DrillCautions } from '../parts/cautions.tsx';
import { Messages } from '../parts/messages.tsx';
import { Notice } from '../parts/notice.tsx';
import { Pairs } from '../parts/pairs.tsx';
import { Presence } from '../parts/presence.tsx';
import { SquadCourt, setupOf } from '../parts/squad-court.tsx';
import { openPractice } from '../practices.ts';
import { go } from '../route.ts';
import { drillName, textOf } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import { startRound } from './clock-deeds.ts';
import { OtherScreens } from './other-screens.tsx';
import { SayPairs } from './say-pairs.tsx';
import { leavesFocus, useKeys } from './use-keys.ts';
import './before-round.css';

/** The drill's card and the pairs, until Start. */
export function BeforeRound({ round }: { round: OpenRound }) {
  const t = words.value.court;
  const [choosing, setChoosing] = useState(false);
  useEffect(() => void tryToStayAwake(), []);
  const practice = openPractice.value;
  const drill = library.value.drills.get(round.terms.drill);
  const text = drill && textOf(drill);
  const lacking = obstacle(practice);
  const coming = lacking === undefined ? comingRound.value : undefined;
  const pairs = coming?.pairs ?? [];
  const playing = coming ? playingPairs() : [];
  const setup = drill ? setupOf(drill) : [];
  useKeys([], () => {
    if (pairs.length > 0) startRound(round);
  });
  return (
    <main class="page before" {...leavesFocus}>
      <header>
        <div>
          <p class="faint">
            {[
              t.before,
              ...(coming?.number ? [t.of(coming.number, plannedRounds(currentPlan()))] : []),
            ].join(' · ')}
          </p>
          <h1 class="break">{drillName(round.terms)}</h1>
        </div>
        <Button onClick={() => go()}>{words.value.back}</Button>
      </header>
      <Messages />
      <div class="before-card">
        {drill && <SquadCourt drill={drill} />}
        <dl class="before-facts">
          <dt>{t.counting}</dt>
          <dd>
            <b>{words.value.setCounts(round.terms.rule, round.terms.size)}</b>
          </dd>
          {text && (
            <>
              <dt>{t.cue}</dt>
              <dd>{text.cue}</dd>
              {setup.length > 0 && <dt>{t.markers}</dt>}
              {setup.map((line, index) => (
                <dd key={index}>{line}</dd>
              ))}
              <dt>{t.roles}</dt>
              <dd>{text.roles.map((role, number) => `${number + 1} ${role}`).join(' · ')}</dd>
            </>
          )}
        </dl>
      </div>
      <DrillCautions shots={round.terms.shots} />
      {coming?.number === 1 && <BlockCautions />}
      <section class="part" aria-labelledby="round-pairs">
        <header>
          <h2 id="round-pairs">{words.value.today.pairs}</h2>
          <Button as="quiet" aria-expanded={choosing} onClick={() => setChoosing(!choosing)}>
            {t.here}
          </Button>
        </header>
        {choosing && <Presence />}
        {pairs.length === 0 ? (
          <Notice>
            {lacking === 'too-many' ? words.value.today.tooMany : words.value.today.onePlayer}
          </Notice>
        ) : (
          <Pairs pairs={pairs} courts={coming?.courts} onSwap={setRound} />
        )}
        <SayPairs round={round.id} pairs={playing} />
      </section>
      {pairs.length > 0 && (
        <details class="part other-screens">
          <summary>{t.otherScreens}</summary>
          <div class="stack">
            <OtherScreens pairs={playing} />
            <Button onClick={() => go('tempo', round.terms.drill)}>{t.tempoCheck}</Button>
          </div>
        </details>
      )}
      <div class="before-start">
        {sleeps.value && <p class="small">{t.sleeps[sleeps.value]}</p>}
        <Button as="main" disabled={pairs.length === 0} onClick={() => startRound(round)}>
          {t.start} · {words.value.clock(round.seconds)}
        </Button>
      </div>
    </main>
  );
}
