import { useState } from 'preact/hooks';
import { countsByPlayer, takesAdvice } from '../../core/drill/counting-rules.ts';
import { type OpenRound, recordedIn } from '../../core/ledger/practice.ts';
import { endSecond, isOver, isTooShort } from '../../core/round/clock.ts';
import { withPlayer } from '../../core/round/pairs.ts';
import type { Mark, Tally } from '../../core/round/tally.ts';
import {
  bestRun,
  callCount,
  correct,
  correctPairs,
  currentRound,
  judge,
  press,
  roundsLeft,
  showing,
  turnRoles,
  watchStretch,
} from '../actions.ts';
import { now } from '../device/clock.ts';
import { squad } from '../ledger.ts';
import { Button } from '../parts/button.tsx';
import { lazyPart } from '../parts/lazy.tsx';
import { Letter } from '../parts/letter.tsx';
import { Messages } from '../parts/messages.tsx';
import { namesOf, playerName } from '../parts/names.ts';
import { Notice } from '../parts/notice.tsx';
import { Pads } from '../parts/pads.tsx';
import { PairNames } from '../parts/pair-names.tsx';
import { openPractice, roundAt } from '../practices.ts';
import { go } from '../route.ts';
import { drillName } from '../words/drill-text.ts';
import { words } from '../words/words.ts';
import { goOn } from './onward.ts';
import './settle.css';

const SizeOff = lazyPart(() => import('./size-off.tsx').then((file) => file.SizeOff));

/** The short step after the horn, in which counts are put right; open until the practice closes. */
export function SettleScreen({ round: id }: { round: string | undefined }) {
  const t = words.value.settle;
  const found = roundAt(id);
  if (!found?.round.clock) {
    return (
      <main class="page">
        <h1>{t.title}</h1>
        <p>{t.none}</p>
        <Button onClick={() => go()}>{words.value.court.toToday}</Button>
      </main>
    );
  }
  const { practice, round } = found;
  const { clock } = found.round;
  // One of a practice that is over is put right from that practice's own page.
  const isOpen = practice.id === openPractice.value?.id;
  const isLatest = isOpen && currentRound(practice)?.id === round.id;
  const back = () => (isOpen ? go() : go('practice', practice.id));
  const strike = () => {
    press('round-struck', round);
    if (isLatest) goOn();
  };
  const settle = () => {
    press('round-settled', round);
    if (isLatest) goOn();
    else back();
  };
  return (
    <main class="page settle">
      <header>
        <div>
          <p class="faint">
            {words.value.named(
              words.value.today.roundNumber(round.ordinal + 1),
              drillName(round.terms),
            )}
          </p>
          <h1>{t.title}</h1>
        </div>
      </header>
      <Messages />
      <p class="faint">
        {words.value.setCounts(round.terms.rule, round.terms.size)} ·{' '}
        {t.live(recordedIn(round, clock, now()))}
      </p>
      {round.jumped !== undefined && <Notice>{t.clockJumped(round.jumped)}</Notice>}
      {round.struck ? (
        <Notice>
          {t.struck}{' '}
          <Button onClick={() => press('round-restored', round)}>{t.restoreRound}</Button>
        </Notice>
      ) : (
        isOver(clock, now()) &&
        isTooShort(clock) && (
          <Notice>
            {t.tooShort(recordedIn(round, clock, now()))}{' '}
            <Button onClick={strike}>{t.strikeRound}</Button>
          </Notice>
        )
      )}
      <ul class="settle-pairs">
        {doubtfulFirst(round.tallies).map((tally) => (
          <PairRow key={tally.pair.letter} round={round} tally={tally} />
        ))}
      </ul>
      {round.aside && (
        <section class="part">
          <p>{t.aside}</p>
          <ul>
            {round.aside.map(({ pair, sets }) => (
              <li key={pair.letter} class="break">
                {t.asideOf(namesOf(pair.players), sets)}
              </li>
            ))}
          </ul>
        </section>
      )}
      <Turned round={round} />
      <PutRight round={round} onStrike={strike} />
      <div class="before-start">
        <Button as="main" onClick={settle}>
          {isLatest && roundsLeft(practice) > 0 ? t.next : t.finish}
        </Button>
      </div>
      {/* Comes late, below everything that a finger may be on its way to. */}
      {takesAdvice(round.terms.rule) &&
        round.tallies.map((tally) => (
          <SizeOff key={tally.pair.letter} round={round} tally={tally} />
        ))}
      {isLatest && (
        <Button
          as="quiet"
          onClick={() => {
            press('round-skipped', round);
            goOn();
          }}
        >
          {t.skip}
        </Button>
      )}
    </main>
  );
}

/** When the roles turned: by it each player's strokes are told apart. */
function Turned({ round }: { round: OpenRound }) {
  const t = words.value.settle;
  const turned = round.tallies.find((tally) => tally.turned !== undefined)?.turned;
  if (!round.turns) return null;
  return (
    <section class="part">
      <p>{turned === undefined ? t.notTurned : t.turnedAt(words.value.clock(turned))}</p>
      {turned !== undefined && round.called.length > 0 && <p class="small">{t.shared}</p>}
      <Button
        onClick={() => turnRoles(round, turned === undefined ? round.seconds / 2 : undefined)}
      >
        {turned === undefined ? t.didTurn : t.didNotTurn}
      </Button>
    </section>
  );
}

/** Seconds of a round in which nobody watched: what was not counted in them is not none. */
function Unwatched({ round }: { round: OpenRound }) {
  const t = words.value.settle;
  const end = Math.floor(round.clock ? endSecond(round.clock) : 0);
  const [from, setFrom] = useState(0);
  const [to, setTo] = useState(end);
  const seconds = [...Array(Math.ceil(end / STRETCH)).keys()].map((at) => at * STRETCH);
  const choose = (label: string, value: number, all: number[], put: (second: number) => void) => (
    <label>
      {label}{' '}
      <select value={value} onChange={(event) => put(Number(event.currentTarget.value))}>
        {all.map((second) => (
          <option key={second} value={second}>
            {words.value.clock(second)}
          </option>
        ))}
      </select>
    </label>
  );
  return (
    <>
      <p>{t.unwatched}</p>
      {round.unwatched?.map((stretch) => (
        <div key={stretch.from} class="row">
          <span class="grow">
            {words.value.clock(stretch.from)} – {words.value.clock(stretch.to)}
          </span>
          <Button onClick={() => watchStretch(round, stretch, true)}>{t.wasWatched}</Button>
        </div>
      ))}
      <div class="row">
        {choose(t.from, from, seconds, setFrom)}
        {choose(t.to, to, [...seconds.filter((second) => second > from), end], setTo)}
        <Button disabled={to <= from} onClick={() => watchStretch(round, { from, to }, false)}>
          {t.strikeStretch}
        </Button>
      </div>
    </>
  );
}

/** Stretches are told in steps of so many seconds: nobody knows it better. */
const STRETCH = 10;

/** What is rarely wrong: who played, and whether the round should count at all. */
function PutRight({ round, onStrike }: { round: OpenRound; onStrike: () => void }) {
  const t = words.value.settle;
  const pairs = round.tallies.map(({ pair }) => pair);
  const inPairs = pairs.flatMap(({ players }) => players);
  const others = [...squad.value.keys()].filter((player) => !inPairs.includes(player));
  return (
    <details class="part">
      <summary>{t.putRight}</summary>
      <div class="stack">
        <p>{t.wrongNames}</p>
        {pairs.map(({ letter, players }) => (
          <div key={letter} class="settle-names">
            <Letter letter={letter} />
            {players.map((player, place) => (
              <select
                key={player}
                aria-label={t.plays(letter, place + 1)}
                value={player}
                onChange={(event) =>
                  correctPairs(round, withPlayer(pairs, player, event.currentTarget.value))
                }
              >
                {[...inPairs, ...others].map((each) => (
                  <option key={each} value={each}>
                    {playerName(each)}
                  </option>
                ))}
              </select>
            ))}
          </div>
        ))}
        <Unwatched round={round} />
        {!round.struck && <Button onClick={onStrike}>{t.strikeRound}</Button>}
      </div>
    </details>
  );
}

/** Pairs with late or doubtful marks come first, decided or not, so that no row moves under a finger. */
const doubtfulFirst = (tallies: readonly Tally[]): Tally[] =>
  tallies.toSorted((a, b) => Number(isInDoubt(b)) - Number(isInDoubt(a)));

const isInDoubt = ({ late, doubtful }: Tally): boolean => late + doubtful > 0;

function PairRow({ round, tally }: { round: OpenRound; tally: Tally }) {
  const t = words.value.settle;
  const { letter, players } = tally.pair;
  const { rule, size } = round.terms;
  const names = namesOf(players);
  const doubts = (round.marks[letter] ?? []).filter(
    (mark) => !mark.takenBack && (mark.late || mark.doubtful),
  );
  return (
    <li class="part">
      <header>
        <Letter letter={letter} />
        <h2 class="grow break pair-list">
          <PairNames players={players} terms={round.terms} />
        </h2>
        {!countsByPlayer(rule) && (
          <output class="number settle-sets">
            {tally.unheard ? words.value.court.notHeard : words.value.number(tally.sets)}
          </output>
        )}
      </header>
      {doubts.map((mark) => (
        <Doubt key={mark.id} round={round} mark={mark} />
      ))}
      {tally.also?.map(({ phone, sets }) => (
        <Notice key={phone}>{t.also(sets)}</Notice>
      ))}
      {countsByPlayer(rule) ? (
        players.map((player) => (
          <Count
            key={player}
            names={namesOf([player])}
            shown
            sets={tally.byPlayer?.[player] ?? 0}
            onChange={(by) => correct(round, letter, by, player)}
          />
        ))
      ) : (
        <details class="settle-more" open={tally.sets === 0 && takesAdvice(rule)}>
          <summary aria-label={t.changeOf(names)}>{t.change}</summary>
          <div class="stack">
            {round.called.includes(letter) ? (
              <Pads
                label={names}
                value={tally.unheard ? undefined : tally.sets}
                none={words.value.court.notHeard}
                onPick={(sets) => callCount(round, letter, sets)}
              />
            ) : (
              <Count
                names={names}
                sets={tally.sets}
                onChange={(by) => correct(round, letter, by)}
              />
            )}
            {takesAdvice(rule) && tally.sets === 0 && (
              <>
                <p>{t.best}</p>
                <Pads
                  label={t.bestOf(names)}
                  value={tally.best}
                  most={size - 1}
                  none={t.notSeen}
                  onPick={(shots) => bestRun(round, letter, shots)}
                />
              </>
            )}
          </div>
        </details>
      )}
      {!countsByPlayer(rule) && size > 1 && (
        <>
          <p class="small">{t.showing}</p>
          <Pads
            label={t.showingOf(names)}
            value={tally.showing}
            most={size - 1}
            none={t.notSeen}
            onPick={(shots) => showing(round, letter, shots)}
          />
        </>
      )}
    </li>
  );
}

function Count({
  names,
  sets,
  shown = false,
  onChange,
}: {
  names: string;
  sets: number;
  shown?: boolean;
  onChange: (by: number) => void;
}) {
  const t = words.value.settle;
  return (
    <div class="settle-count">
      <span class="grow break">{shown ? names : t.sets}</span>
      <Button aria-label={t.fewer(names)} disabled={sets === 0} onClick={() => onChange(-1)}>
        −
      </Button>
      <output class="number">{sets}</output>
      <Button aria-label={t.more(names)} onClick={() => onChange(1)}>
        +
      </Button>
    </div>
  );
}

/** A late or doubtful mark, for the coach to decide. */
function Doubt({ round, mark }: { round: OpenRound; mark: Mark }) {
  const t = words.value.settle;
  const at = words.value.clock(mark.second);
  const stands = mark.judged ?? !mark.late;
  return (
    <div class="settle-doubt">
      <span class="grow">
        {mark.late ? t.late(at) : t.doubtful(at)}
        {mark.player !== undefined && ` · ${namesOf([mark.player])}`}
      </span>
      <Button aria-pressed={stands} onClick={() => judge(round, mark.id, true)}>
        {t.keep}
      </Button>
      <Button aria-pressed={!stands} onClick={() => judge(round, mark.id, false)}>
        {t.strike}
      </Button>
    </div>
  );
}
