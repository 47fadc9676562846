import { useState } from 'preact/hooks';
import { plannedMinutes, plannedRounds, standsToUsual } from '../../core/round/block.ts';
import {
  currentPlan,
  currentRound,
  isRunning,
  newPractice,
  obstacle,
  reopenPractice,
} from '../actions.ts';
import { comingRound, setRound } from '../coming-round.ts';
import { today } from '../device/clock.ts';
import { mayBeEvicted } from '../device/eviction.ts';
import { library, squad } from '../ledger.ts';
import { Bar } from '../parts/bar.tsx';
import { Button } from '../parts/button.tsx';
import { CourtsAsked } from '../parts/courts-asked.tsx';
import { lazyPart } from '../parts/lazy.tsx';
import { Messages } from '../parts/messages.tsx';
import { playerName } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { Pairs } from '../parts/pairs.tsx';
import { Presence } from '../parts/presence.tsx';
import { Waiting } from '../parts/waiting.tsx';
import { openPractice, practice } from '../practices.ts';
import { go, href } from '../route.ts';
import { startDemo } from '../settings/demo.ts';
import { DemoState } from '../settings/demo-state.tsx';
import { drillName, textOf } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import { ClosePractice } from './close-practice.tsx';

/** The practice of the day from top to bottom: who is here, the block, the pairs, the court. */
export function TodayScreen() {
  const t = words.value.today;
  return (
    <>
      <main class="page">
        <header>
          <h1>{t.title}</h1>
          <p class="faint">{words.value.date(today())}</p>
        </header>
        <Messages />
        {squad.value.size === 0 ? <FirstSteps /> : <Practice />}
        {/* Comes late: nothing stands below it that a finger may be on its way to. */}
        <CopyReminder />
      </main>
      <Bar />
    </>
  );
}

/** Loaded when it is asked for: few phones begin with a backup. */
const TakeIn = lazyPart(() => import('../parts/take-in.tsx').then((file) => file.TakeIn));

const CopyReminder = lazyPart(() =>
  import('../handover/copy-reminder.tsx').then((file) => file.CopyReminder),
);
const NextAsked = lazyPart(() => import('./next-asked.tsx').then((file) => file.NextAsked));

function FirstSteps() {
  const t = words.value.today;
  const [brings, setBrings] = useState(false);
  return (
    <section class="part">
      <p>{t.noSquad}</p>
      {mayBeEvicted.value && <Notice>{t.mayBeEvicted}</Notice>}
      <Button as="main" onClick={() => go('squad')}>
        {t.addPlayers}
      </Button>
      <Button onClick={startDemo}>{t.tryDemo}</Button>
      <DemoState />
      {brings ? <TakeIn /> : <Button onClick={() => setBrings(true)}>{t.takeIn}</Button>}
      <Button as="quiet" onClick={() => go('help')}>
        {words.value.help}
      </Button>
    </section>
  );
}

function Practice() {
  const t = words.value.today;
  const open = openPractice.value;
  const closed = practice.value?.closed && practice.value.date === today();
  if (!open && closed) return <Closed />;
  return (
    <>
      <section class="part" aria-labelledby="here">
        <header>
          <h2 id="here">{t.here}</h2>
          <span class="number">{t.hereCount(open?.here.length ?? 0, squad.value.size)}</span>
        </header>
        {(open?.here.length ?? 0) === 0 && <p>{t.hereNext}</p>}
        <Presence />
        {open?.here.length === 1 && <p>{t.onePlayer}</p>}
        {obstacle(open) === 'too-many' && <p>{t.tooMany}</p>}
      </section>
      <BlockPart />
      {(open?.here.length ?? 0) >= 4 && <CourtsAsked />}
      <PairsPart />
      <ToCourt />
      <PlayedPart />
    </>
  );
}

function BlockPart() {
  const t = words.value.today;
  const plan = currentPlan();
  const minutes = plannedMinutes(plan);
  return (
    <section class="part" aria-labelledby="block">
      <header>
        <h2 id="block">{t.block}</h2>
        {plan.steps.length > 0 && <span class="number">{words.value.minutes(minutes)}</span>}
      </header>
      {plan.steps.length === 0 ? (
        <p>{t.blockNext}</p>
      ) : (
        <>
          <ol class="ruled">
            {plan.steps.map((step, index) => {
              const drill = library.value.drills.get(step.drill);
              return (
                <li key={`${index}-${step.drill}`}>
                  <span class="grow break">{drill ? textOf(drill).name : step.drill}</span>
                  {drill && <Waiting drill={drill} />}
                  <span class="number">× {step.rounds}</span>
                </li>
              );
            })}
          </ol>
          <p class="faint">
            {t.rounds(plannedRounds(plan))}, {t.usualLength[standsToUsual(minutes)]}
          </p>
        </>
      )}
      <NextAsked />
      <div class="row">
        <Button onClick={() => go('propose')}>{t.propose}</Button>
        <Button onClick={() => go('block')}>
          {plan.steps.length === 0 ? t.chooseDrills : t.changeBlock}
        </Button>
      </div>
      <div class="row">
        <a class="button button-quiet" href={href('coverage')}>
          {t.coverage}
        </a>
        {plan.steps.length > 0 && (
          <a class="button button-quiet" href={href('sheet')}>
            {t.sheet}
          </a>
        )}
      </div>
    </section>
  );
}

/** The pairs of the coming round, until it has begun. */
function PairsPart() {
  const t = words.value.today;
  const open = openPractice.value;
  const round = currentRound(open);
  if (!open || round?.clock) return null;
  const coming = comingRound.value;
  if (!coming) return null;
  return (
    <section class="part" aria-labelledby="pairs">
      <header>
        <h2 id="pairs">{t.pairs}</h2>
      </header>
      <Pairs
        pairs={coming.pairs}
        terms={coming.drill}
        courts={coming.courts}
        onSwap={obstacle(open) === undefined ? (pairs) => setRound({ pairs }) : undefined}
      />
      {coming.broken.map(({ a, b, wish }) => (
        <Notice key={`${a} ${b}`}>{t.notKept[wish](playerName(a), playerName(b))}</Notice>
      ))}
    </section>
  );
}

function ToCourt() {
  const t = words.value.today;
  const open = openPractice.value;
  const round = currentRound(open);
  const started = round?.clock !== undefined;
  if (!started && obstacle(open)) return null;
  return (
    <Button
      as="main"
      onClick={() => {
        if (!started) setRound();
        go('court');
      }}
    >
      {isRunning(round) ? t.backToCourt : t.toCourt}
    </Button>
  );
}

function PlayedPart() {
  const t = words.value.today;
  const played = openPractice.value?.rounds.filter((round) => round.clock) ?? [];
  if (played.length === 0) return null;
  return (
    <section class="part" aria-labelledby="played">
      <header>
        <h2 id="played">{t.played}</h2>
      </header>
      <ol class="ruled">
        {played.map((round) => (
          <li key={round.id}>
            <a class="grow break" href={href('settle', round.id)}>
              {words.value.named(t.roundNumber(round.ordinal + 1), drillName(round.terms))}
            </a>
            <span class={round.settled ? 'faint' : ''}>
              {round.struck ? t.struck : round.settled ? t.settled : t.toSettle}
            </span>
          </li>
        ))}
      </ol>
      <ClosePractice />
    </section>
  );
}

function Closed() {
  const t = words.value.today;
  return (
    <section class="part">
      <p>{t.closed}</p>
      <Button as="main" onClick={() => go('review')}>
        {t.evening}
      </Button>
      <Button onClick={() => go('players')}>{words.value.court.players}</Button>
      <Button onClick={reopenPractice}>{t.reopen}</Button>
      <Button onClick={newPractice}>{t.newPractice}</Button>
    </section>
  );
}
