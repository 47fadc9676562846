import { useEffect, useState } from 'preact/hooks';
import type { OpenRound } from '../../core/ledger/practice.ts';
import { plannedRounds } from '../../core/round/block.ts';
import { type CountingWay, countingWays } from '../../core/round/tally.ts';
import { countDrill, currentPlan, obstacle } from '../actions.ts';
import { type Coming, comingRound, mayTurn, playingPairs, setRound } from '../coming-round.ts';
import { sleeps, tryToStayAwake } from '../device/wake.ts';
import { library } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { BlockCautions, DrillCautions } from '../parts/cautions.tsx';
import { CourtsAsked } from '../parts/courts-asked.tsx';
import { lazyPart } from '../parts/lazy.tsx';
import { Messages } from '../parts/messages.tsx';
import { Notice } from '../parts/notice.tsx';
import { Pairs } from '../parts/pairs.tsx';
import { Presence } from '../parts/presence.tsx';
import { SteppedCourt } from '../parts/squad-court.tsx';
import { openPractice } from '../practices.ts';
import { go } from '../route.ts';
import { drillName, textOf } from '../words/drill-text.ts';
import { focusQuestion } from '../words/focus-question.ts';
import { words } from '../words/words.ts';
import { startRound } from './clock-deeds.ts';
import { OtherScreens } from './other-screens.tsx';
import { SayPairs } from './say-pairs.tsx';
import { leavesFocus, useKeys } from './use-keys.ts';
import './before-round.css';

/** What the card says to somebody who never saw the drill. */
const DrillRun = lazyPart(
  () => import('../parts/drill-run.tsx').then((file) => file.DrillRun),
  () => <dd>{words.value.notLoaded}</dd>,
);

/** What yes looks like in the focus of the round, and how the player is told. */
const FocusLines = lazyPart(() =>
  import('../quality/focus-lines.tsx').then((file) => file.FocusLines),
);

/** How the sets of the round are counted, pair by pair where wanted, and whether roles turn in it. */
function CountedHow({ round, coming }: { round: OpenRound; coming: Coming }) {
  const t = words.value.court;
  const letters = playingPairs().map(({ letter }) => letter);
  const { called, turns, drill } = coming;
  const choose = (way: CountingWay) => {
    countDrill(round.terms.drill, way);
    setRound({ called: way === 'called' ? letters : [] });
  };
  return (
    <section class="part" aria-labelledby="counted">
      <h2 id="counted">{t.counted}</h2>
      <div class="before-ways">
        {countingWays.map((way) => (
          <Button
            key={way}
            aria-pressed={called.length > 0 === (way === 'called')}
            onClick={() => choose(way)}
          >
            {t.ways[way]}
          </Button>
        ))}
      </div>
      {called.length > 0 && (
        <>
          <p class="small">{t.someTapped}</p>
          <div class="row">
            {letters.map((letter) => (
              <button
                key={letter}
                type="button"
                class="choice before-calls"
                aria-label={t.callsOf(letter)}
                aria-pressed={called.includes(letter)}
                onClick={() =>
                  setRound({
                    called: called.includes(letter)
                      ? called.filter((each) => each !== letter)
                      : [...called, letter],
                  })
                }
              >
                <span>{letter}</span>
              </button>
            ))}
          </div>
        </>
      )}
      {drill && mayTurn(drill) && (
        <button
          type="button"
          class="choice"
          aria-pressed={turns}
          onClick={() => setRound({ turns: !turns })}
        >
          <span>{t.turns}</span>
        </button>
      )}
    </section>
  );
}

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
        {drill && <SteppedCourt key={drill.id} drill={drill} />}
        <dl class="before-facts">
          {text?.intention && (
            <>
              <dt>{t.intention}</dt>
              <dd>{text.intention}</dd>
            </>
          )}
          {text?.cue && (
            <>
              <dt>{t.cue}</dt>
              <dd>
                <b>{text.cue}</b>
              </dd>
            </>
          )}
          {coming?.focus !== undefined && (
            <>
              <dt>{words.value.looks.title}</dt>
              <dd>
                <b>{focusQuestion(coming.focus)}</b>
              </dd>
            </>
          )}
          <dt>{t.counting}</dt>
          <dd>
            <b>{words.value.setCounts(round.terms.rule, round.terms.size)}</b>
          </dd>
        </dl>
      </div>
      <dl class="before-facts">
        {coming?.focus !== undefined && <FocusLines focus={coming.focus} />}
        {drill && <DrillRun drill={drill} />}
      </dl>
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
          <Pairs
            pairs={pairs}
            terms={round.terms}
            courts={coming?.courts}
            onSwap={(pairs) => setRound({ pairs })}
          />
        )}
        <SayPairs round={round.id} pairs={playing} />
      </section>
      {drill && pairs.length > drill.perCourt && <CourtsAsked />}
      {coming && pairs.length > 0 && <CountedHow round={round} coming={coming} />}
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
